namespace StrutLessons.Sections;

/// <summary>
/// Elastic section moduli: W = I/distance of a corner from the axis, mm³. A corner on the axis itself carries no stress
/// from bending about it; its modulus is infinite.
/// </summary>
public sealed record AngleModuli
{
    internal AngleModuli(AngleSection section)
    {
        HeelSideY = section.SecondMomentY / section.CentroidZ;
        ToeSideY = section.SecondMomentY / (section.OutstandingLength - section.CentroidZ);
        HeelSideZ = section.SecondMomentZ / section.CentroidY;
        ToeSideZ = section.SecondMomentZ / (section.ConnectedLength - section.CentroidY);
        Corners = [.. section.Corners.Select(c => new CornerModuli(
            c.Corner,
            AboutU: Modulus(section.SecondMomentU, section.AlongV(c.Position), section.Angle.LongLeg),
            AboutV: Modulus(section.SecondMomentV, section.AlongU(c.Position), section.Angle.LongLeg)))];
    }

    /// <summary>W_y at the outer face of the connected leg, I_y/c_z.</summary>
    public double HeelSideY { get; }

    /// <summary>W_y at the toe of the outstanding leg, I_y/(b_o − c_z): the value printed in tables.</summary>
    public double ToeSideY { get; }

    /// <summary>W_z at the outer face of the outstanding leg, I_z/c_y.</summary>
    public double HeelSideZ { get; }

    /// <summary>W_z at the toe of the connected leg, I_z/(b_c − c_y): the value printed in tables.</summary>
    public double ToeSideZ { get; }

    /// <summary>W_u and W_v at every corner, in the order of <see cref="AngleSection.Corners"/>.</summary>
    public IReadOnlyList<CornerModuli> Corners { get; }

    /// <summary>The smallest W_u of the five corners.</summary>
    public double LeastU => Corners.Min(c => c.AboutU);

    /// <summary>The smallest W_v of the five corners.</summary>
    public double LeastV => Corners.Min(c => c.AboutV);

    /// <summary>W_u and W_v at one corner.</summary>
    /// <exception cref="InputException">Not a named corner.</exception>
    public CornerModuli At(Corner corner) => Corners[(int)Guard.Named(corner, "corner")];

    // The heel of an equal angle lies on u–u up to rounding.
    private static double Modulus(double moment, double distance, double size) =>
        Math.Abs(distance) > 1e-12 * size ? moment / Math.Abs(distance) : double.PositiveInfinity;
}

/// <summary>Elastic moduli of one corner about the principal axes, mm³.</summary>
/// <param name="Corner">Which corner.</param>
/// <param name="AboutU">W_u = I_u/|distance from u–u|; infinite on the axis.</param>
/// <param name="AboutV">W_v = I_v/|distance from v–v|; infinite on the axis.</param>
public readonly record struct CornerModuli(Corner Corner, double AboutU, double AboutV);
