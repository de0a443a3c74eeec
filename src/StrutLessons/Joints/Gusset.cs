namespace StrutLessons.Joints;

/// <summary>
/// A gusset plate seen along the strut: n runs across the plate from the bolt line, s along the strut from the support. Immutable; mm.
/// </summary>
/// <remarks>
/// The bolt line meets the support line at the origin. The leg is taken as a rigid patch of its own width, centred on the bolt line,
/// from the first bolt (s = g) to the last. For an inclined gusset the right side is the near side: there the support comes closer.
/// </remarks>
public sealed record Gusset
{
    /// <summary>A gusset plate.</summary>
    /// <param name="thickness">Plate thickness t, mm.</param>
    /// <param name="widthLeft">Plate beside the bolt line on the left (far) side, at the first bolt, mm.</param>
    /// <param name="widthRight">Plate beside the bolt line on the right (near) side, at the first bolt, mm.</param>
    /// <param name="freeLength">Free length g from the support to the first bolt, along the strut, mm.</param>
    /// <param name="endDistance">From the last bolt to the free end of the plate, mm.</param>
    /// <param name="taper">How much each side opens towards the support: mm of width per mm of length; 0 for parallel sides.</param>
    /// <param name="inclinationDegrees">Angle α between strut and support line, 30 to 90 degrees; 90 is a square gusset.</param>
    /// <exception cref="InputException">A number outside its range.</exception>
    public Gusset(
        double thickness,
        double widthLeft,
        double widthRight,
        double freeLength,
        double endDistance,
        double taper = 0,
        double inclinationDegrees = 90)
    {
        Thickness = Guard.Positive(thickness, "gusset thickness", "mm", "Give the thickness of the gusset plate, usually 6 to 25 mm.");
        WidthLeft = Guard.Positive(widthLeft, "gusset width left", "mm", "Measure from the bolt line to the edge of the plate, not the full width.");
        WidthRight = Guard.Positive(widthRight, "gusset width right", "mm", "Measure from the bolt line to the edge of the plate, not the full width.");
        FreeLength = Guard.Positive(freeLength, "free length g", "mm", "Measure along the strut from the support to the first bolt.");
        EndDistance = Guard.NotNegative(endDistance, "gusset end distance", "mm", "Measure from the last bolt to the free end of the plate.");
        Taper = Guard.Within(taper, 0, 2, "taper", "", "Give mm of width per mm of length on each side; 0 for parallel sides.");
        InclinationDegrees = Guard.Within(inclinationDegrees, 30, 90, "inclination", "degrees",
            inclinationDegrees is > 0 and < 1.6
                ? "This looks like radians: multiply by 180/π."
                : "Give the acute angle between the strut and the support line; 90 is a square gusset.");
    }

    /// <summary>Thickness t, mm.</summary>
    public double Thickness { get; }

    /// <summary>Plate to the left of the bolt line (far side), mm.</summary>
    public double WidthLeft { get; }

    /// <summary>Plate to the right of the bolt line (near side), mm.</summary>
    public double WidthRight { get; }

    /// <summary>Free length g to the first bolt, mm.</summary>
    public double FreeLength { get; }

    /// <summary>From the last bolt to the free end, mm.</summary>
    public double EndDistance { get; }

    /// <summary>Opening of each side towards the support, mm per mm.</summary>
    public double Taper { get; }

    /// <summary>Angle α between strut and support line, degrees.</summary>
    public double InclinationDegrees { get; }

    /// <summary>Angle α, rad.</summary>
    public double Inclination => InclinationDegrees * Math.PI / 180;

    /// <summary>True for α = 90 degrees.</summary>
    public bool IsSquare => InclinationDegrees == 90;

    /// <summary>Length of the gusset's foot on the support, mm: the width there divided by sin α.</summary>
    public double FootLength => (WidthLeft + WidthRight + 2 * Taper * FreeLength) / Math.Sin(Inclination);

    /// <summary>A gusset with the bolt line in its middle.</summary>
    /// <param name="thickness">Plate thickness, mm.</param>
    /// <param name="width">Full width at the first bolt, mm.</param>
    /// <param name="freeLength">Free length g, mm.</param>
    /// <param name="endDistance">From the last bolt to the free end, mm.</param>
    /// <param name="taper">Opening of each side, mm per mm.</param>
    /// <param name="inclinationDegrees">α, degrees.</param>
    /// <exception cref="InputException">A number outside its range.</exception>
    public static Gusset Symmetric(
        double thickness, double width, double freeLength, double endDistance, double taper = 0, double inclinationDegrees = 90)
    {
        Guard.Positive(width, "gusset width", "mm", "Give the full width of the plate.");
        return new(thickness, width / 2, width / 2, freeLength, endDistance, taper, inclinationDegrees);
    }
}
