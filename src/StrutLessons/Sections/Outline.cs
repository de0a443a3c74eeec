namespace StrutLessons.Sections;

/// <summary>Area, first and second moments of an area about the axes in which its outline is given.</summary>
/// <param name="Area">A = ∫dA in mm².</param>
/// <param name="FirstY">∫Y dA in mm³.</param>
/// <param name="FirstZ">∫Z dA in mm³.</param>
/// <param name="SecondYY">∫Y² dA in mm⁴.</param>
/// <param name="SecondZZ">∫Z² dA in mm⁴.</param>
/// <param name="SecondYZ">∫YZ dA in mm⁴.</param>
public readonly record struct AreaMoments(
    double Area, double FirstY, double FirstZ, double SecondYY, double SecondZZ, double SecondYZ)
{
    /// <summary>Moments of two areas taken together.</summary>
    public static AreaMoments operator +(AreaMoments a, AreaMoments b) => new(
        a.Area + b.Area, a.FirstY + b.FirstY, a.FirstZ + b.FirstZ,
        a.SecondYY + b.SecondYY, a.SecondZZ + b.SecondZZ, a.SecondYZ + b.SecondYZ);
}

/// <summary>One piece of a closed outline that runs counter-clockwise: a straight line or a circular arc.</summary>
/// <remarks>
/// Green's theorem turns each area integral into an integral along the outline (any calculus book):
/// A = ∮Y dZ, ∫Y dA = ½∮Y² dZ, ∫Z dA = −½∮Z² dY, ∫Y² dA = ⅓∮Y³ dZ, ∫Z² dA = −⅓∮Z³ dY, ∫YZ dA = ½∮Y²Z dZ.
/// Both kinds of piece are integrated in closed form, so the moments carry rounding error only.
/// </remarks>
internal abstract record OutlinePiece
{
    internal abstract AreaMoments Moments();
}

/// <summary>A straight line from one corner to the next.</summary>
internal sealed record LinePiece(double Y0, double Z0, double Y1, double Z1) : OutlinePiece
{
    internal override AreaMoments Moments()
    {
        double dy = Y1 - Y0, dz = Z1 - Z0;
        double yy = Y0 * Y0 + Y0 * Y1 + Y1 * Y1;
        double zz = Z0 * Z0 + Z0 * Z1 + Z1 * Z1;
        return new(
            Area: 0.5 * (Y0 + Y1) * dz,
            FirstY: yy * dz / 6,
            FirstZ: -zz * dy / 6,
            SecondYY: (Y0 + Y1) * (Y0 * Y0 + Y1 * Y1) * dz / 12,
            SecondZZ: -(Z0 + Z1) * (Z0 * Z0 + Z1 * Z1) * dy / 12,
            SecondYZ: dz / 24 * (Y0 * Y0 * (3 * Z0 + Z1) + 2 * Y0 * Y1 * (Z0 + Z1) + Y1 * Y1 * (Z0 + 3 * Z1)));
    }
}

/// <summary>A circular arc about (<c>Yc</c>, <c>Zc</c>) from angle <c>From</c> to <c>To</c> (rad, from +Y towards +Z).</summary>
internal sealed record ArcPiece(double Yc, double Zc, double Radius, double From, double To) : OutlinePiece
{
    internal override AreaMoments Moments()
    {
        double r = Radius;
        // Powers of cosine and sine integrated over the arc.
        double c1 = Over(Math.Sin);
        double c2 = Over(p => p / 2 + Math.Sin(2 * p) / 4);
        double c3 = Over(p => Math.Sin(p) - Math.Pow(Math.Sin(p), 3) / 3);
        double c4 = Over(p => 3 * p / 8 + Math.Sin(2 * p) / 4 + Math.Sin(4 * p) / 32);
        double s1 = Over(p => -Math.Cos(p));
        double s2 = Over(p => p / 2 - Math.Sin(2 * p) / 4);
        double s3 = Over(p => -Math.Cos(p) + Math.Pow(Math.Cos(p), 3) / 3);
        double s4 = Over(p => 3 * p / 8 - Math.Sin(2 * p) / 4 + Math.Sin(4 * p) / 32);
        double sc = Over(p => Math.Pow(Math.Sin(p), 2) / 2);
        double scc = Over(p => -Math.Pow(Math.Cos(p), 3) / 3);
        double sccc = Over(p => -Math.Pow(Math.Cos(p), 4) / 4);
        double squareY = Yc * Yc * c1 + 2 * Yc * r * c2 + r * r * c3;
        double squareZ = Zc * Zc * s1 + 2 * Zc * r * s2 + r * r * s3;
        return new(
            Area: r * (Yc * c1 + r * c2),
            FirstY: r / 2 * squareY,
            FirstZ: r / 2 * squareZ,
            SecondYY: r / 3 * (Yc * Yc * Yc * c1 + 3 * Yc * Yc * r * c2 + 3 * Yc * r * r * c3 + r * r * r * c4),
            SecondZZ: r / 3 * (Zc * Zc * Zc * s1 + 3 * Zc * Zc * r * s2 + 3 * Zc * r * r * s3 + r * r * r * s4),
            SecondYZ: r / 2 * (Zc * squareY + r * (Yc * Yc * sc + 2 * Yc * r * scc + r * r * sccc)));
    }

    private double Over(Func<double, double> antiderivative) => antiderivative(To) - antiderivative(From);
}
