using StrutLessons.Sections;

namespace StrutLessons.Eccentricity;

/// <summary>
/// Where the force enters one end of the strut, measured from the centroid: along the leg to the bolt line,
/// across it to the plane of the gusset. Immutable; mm.
/// </summary>
/// <remarks>
/// The offset is given in the axes of <see cref="AngleSection"/>: y from the heel to the toe of the connected leg,
/// z towards a gusset on the outer face. The gusset is drawn at z &gt; 0 for <see cref="GussetFace.Outer"/>.
/// </remarks>
public sealed partial record LoadPoint
{
    private LoadPoint(
        AngleSection section, BoltLine bolts, double gussetThickness, GussetFace face, LoadPlane plane, bool otherLeg, Planar offset)
    {
        Section = section;
        Bolts = bolts;
        GussetThickness = gussetThickness;
        Face = face;
        Plane = plane;
        ThroughOtherLeg = otherLeg;
        Offset = offset;
    }

    /// <summary>The section with the leg that gives the axes.</summary>
    public AngleSection Section { get; }

    /// <summary>The bolts of this end.</summary>
    public BoltLine Bolts { get; }

    /// <summary>Gusset thickness t_g, mm.</summary>
    public double GussetThickness { get; }

    /// <summary>On which face of the bolted leg the gusset lies.</summary>
    public GussetFace Face { get; }

    /// <summary>In which plane the force is taken to act.</summary>
    public LoadPlane Plane { get; }

    /// <summary>True if this end is bolted through the outstanding leg of <see cref="Section"/> (the strut changes its leg).</summary>
    public bool ThroughOtherLeg { get; }

    /// <summary>Eccentricity (y_e, z_e) of the force from the centroid, mm.</summary>
    public Planar Offset { get; }

    /// <summary>Component e_u of the eccentricity along the axis u–u, mm: it bends the strut about its weak axis v–v.</summary>
    public double AlongU => Section.AlongU(Offset);

    /// <summary>Component e_v of the eccentricity along the axis v–v, mm: it bends the strut about its strong axis u–u.</summary>
    public double AlongV => Section.AlongV(Offset);

    /// <summary>The load point of an end bolted through the connected leg of the section.</summary>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="gussetThickness">t_g, mm.</param>
    /// <param name="face">Which face of the leg the gusset touches.</param>
    /// <param name="plane">In which plane the force acts.</param>
    /// <exception cref="InputException">The bolts do not fit on the leg, or the thickness is not positive.</exception>
    public static LoadPoint Of(
        AngleSection section,
        BoltLine bolts,
        double gussetThickness,
        GussetFace face = GussetFace.Outer,
        LoadPlane plane = LoadPlane.GussetMidPlane)
    {
        return Bolted(section, bolts, gussetThickness, face, plane, otherLeg: false);
    }

    /// <summary>
    /// The load point of an end bolted through the other leg, for a strut that changes the leg from one end to the other.
    /// The axes stay those of <paramref name="section"/>; the gauge runs from the heel along the outstanding leg.
    /// </summary>
    /// <param name="section">The angle with the leg connected at the other end, which gives the axes.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="gussetThickness">t_g, mm.</param>
    /// <param name="face">Which face of the leg the gusset touches.</param>
    /// <param name="plane">In which plane the force acts.</param>
    /// <exception cref="InputException">The bolts do not fit on the leg, or the thickness is not positive.</exception>
    public static LoadPoint OfOtherLeg(
        AngleSection section,
        BoltLine bolts,
        double gussetThickness,
        GussetFace face = GussetFace.Outer,
        LoadPlane plane = LoadPlane.GussetMidPlane)
    {
        return Bolted(section, bolts, gussetThickness, face, plane, otherLeg: true);
    }

    /// <summary>
    /// Both ends of a strut bolted through the same leg: gussets on the same face, or on opposite faces
    /// (outer face at end 1, inner face at end 2).
    /// </summary>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts1">Bolts of end 1.</param>
    /// <param name="gussetThickness1">Gusset thickness of end 1, mm.</param>
    /// <param name="bolts2">Bolts of end 2.</param>
    /// <param name="gussetThickness2">Gusset thickness of end 2, mm.</param>
    /// <param name="sides">Same face or opposite faces.</param>
    /// <param name="plane">In which plane the force acts, at both ends.</param>
    /// <exception cref="InputException">As for <see cref="Of"/>, at either end.</exception>
    public static EndLoadPoints BothEnds(
        AngleSection section,
        BoltLine bolts1,
        double gussetThickness1,
        BoltLine bolts2,
        double gussetThickness2,
        GussetSides sides = GussetSides.Same,
        LoadPlane plane = LoadPlane.GussetMidPlane)
    {
        GussetFace second = Guard.Named(sides, "gusset sides") == GussetSides.Same ? GussetFace.Outer : GussetFace.Inner;
        return new(
            Of(section, bolts1, gussetThickness1, GussetFace.Outer, plane),
            Of(section, bolts2, gussetThickness2, second, plane));
    }

    private static LoadPoint Bolted(
        AngleSection section, BoltLine bolts, double gussetThickness, GussetFace face, LoadPlane plane, bool otherLeg)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(bolts);
        BoltFit.Check(section.Angle, otherLeg ? section.OutstandingLength : section.ConnectedLength, bolts);
        double depth = Depth(section.Thickness, CheckedThickness(gussetThickness), face, plane);
        Planar offset = otherLeg ? section.FromHeel(depth, bolts.Gauge) : section.FromHeel(bolts.Gauge, depth);
        return new(section, bolts, gussetThickness, face, plane, otherLeg, offset);
    }

    /// <summary>Distance of the load plane from the outer face of the bolted leg, mm, positive into the leg.</summary>
    private static double Depth(double t, double gussetThickness, GussetFace face, LoadPlane plane)
    {
        bool outer = Guard.Named(face, "gusset face") == GussetFace.Outer;
        return Guard.Named(plane, "load plane") switch
        {
            LoadPlane.GussetMidPlane => outer ? -gussetThickness / 2 : t + gussetThickness / 2,
            LoadPlane.Interface => outer ? 0 : t,
            _ => t / 2,
        };
    }

    private static double CheckedThickness(double gussetThickness) =>
        Guard.Positive(gussetThickness, "gusset thickness", "mm", "Give the thickness of the gusset plate, usually 6 to 25 mm.");
}
