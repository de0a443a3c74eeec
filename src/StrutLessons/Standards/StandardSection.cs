using StrutLessons.Sections;

namespace StrutLessons.Standards;

/// <summary>
/// The properties of an angle that the rules use, from the exact geometry or, where somebody prefers them, from a printed table.
/// Immutable; mm.
/// </summary>
public sealed record StandardSection
{
    private StandardSection(AngleSection section)
    {
        Section = section;
        Area = section.Area;
        RadiusParallel = section.RadiusY;
        RadiusNormal = section.RadiusZ;
        RadiusV = section.RadiusV;
        AngleModuli moduli = section.Moduli();
        ModulusU = moduli.LeastU;
        ModulusV = moduli.LeastV;
    }

    /// <summary>The angle with its connected leg.</summary>
    public AngleSection Section { get; }

    /// <summary>Area A, mm².</summary>
    public double Area { get; private init; }

    /// <summary>Radius of gyration about the axis parallel to the connected leg, mm: i_y here, r_a or r_x in other standards.</summary>
    public double RadiusParallel { get; private init; }

    /// <summary>Radius of gyration about the axis perpendicular to the connected leg, mm: i_z here, r_b in BS 5950.</summary>
    public double RadiusNormal { get; private init; }

    /// <summary>Radius of gyration about the minor principal axis, mm: i_v here, r_z in AISC 360, r_vv in IS 800.</summary>
    public double RadiusV { get; private init; }

    /// <summary>Least elastic modulus about the major principal axis, mm³.</summary>
    public double ModulusU { get; }

    /// <summary>Least elastic modulus about the minor principal axis, mm³.</summary>
    public double ModulusV { get; }

    /// <summary>Longer leg, mm.</summary>
    public double LongLeg => Section.Angle.LongLeg;

    /// <summary>Shorter leg, mm.</summary>
    public double ShortLeg => Section.Angle.ShortLeg;

    /// <summary>Thickness, mm.</summary>
    public double Thickness => Section.Thickness;

    /// <summary>Longer over shorter leg.</summary>
    public double LegRatio => LongLeg / ShortLeg;

    /// <summary>True if an unequal angle is connected by its shorter leg.</summary>
    public bool ByShortLeg => !Section.Angle.IsEqual && Section.Leg == ConnectedLeg.Short;

    /// <summary>Properties integrated from the geometry.</summary>
    public static StandardSection Of(AngleSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return new(section);
    }

    /// <summary>The same section with values of a printed table in place of the integrated ones, for checks against hand calculations.</summary>
    /// <param name="area">A, mm².</param>
    /// <param name="radiusV">About v–v, mm.</param>
    /// <param name="radiusParallel">About the axis parallel to the connected leg, mm.</param>
    /// <param name="radiusNormal">About the axis perpendicular to it, mm.</param>
    /// <exception cref="InputException">A value more than 10 % away from the geometry.</exception>
    public StandardSection WithPrinted(double? area = null, double? radiusV = null, double? radiusParallel = null, double? radiusNormal = null) =>
        this with
        {
            Area = Near(area, Area, "printed area A", "mm²"),
            RadiusV = Near(radiusV, RadiusV, "printed radius i_v", "mm"),
            RadiusParallel = Near(radiusParallel, RadiusParallel, "printed radius parallel to the connected leg", "mm"),
            RadiusNormal = Near(radiusNormal, RadiusNormal, "printed radius perpendicular to the connected leg", "mm"),
        };

    private static double Near(double? printed, double own, string field, string unit) => printed is { } value
        ? Guard.Within(value, 0.9 * own, 1.1 * own, field, unit, "Printed values lie within some per cent of the geometry; check the unit and the axis.")
        : own;
}
