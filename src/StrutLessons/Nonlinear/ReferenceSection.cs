namespace StrutLessons.Nonlinear;

/// <summary>
/// A section for the reference analysis: a set of rectangles in axes parallel to y and z. The origin is free; for an angle it is the heel.
/// Second moments are taken about axes through the centroid.
/// </summary>
public sealed record ReferenceSection
{
    private readonly Func<Planar, double> residualPattern;

    private ReferenceSection(
        IReadOnlyList<SectionRectangle> rectangles, Planar shearCentre, double torsionConstant,
        IReadOnlyList<Planar> corners, Func<Planar, double> residualPattern)
    {
        Rectangles = rectangles;
        ShearCentre = shearCentre;
        TorsionConstant = torsionConstant;
        Corners = corners;
        this.residualPattern = residualPattern;
        Area = rectangles.Sum(r => r.Area);
        Centroid = (1 / Area) * rectangles.Aggregate(Planar.Zero, (sum, r) => sum + r.Area * r.Middle);
        foreach (SectionRectangle r in rectangles)
        {
            Planar d = r.Middle - Centroid;
            Iy += r.Area * (r.Height * r.Height / 12 + d.Z * d.Z);
            Iz += r.Area * (r.Width * r.Width / 12 + d.Y * d.Y);
            Iyz += r.Area * d.Y * d.Z;
        }
        double mean = 0.5 * (Iy + Iz), spread = Math.Sqrt(0.25 * (Iy - Iz) * (Iy - Iz) + Iyz * Iyz);
        (Iu, Iv) = (mean + spread, mean - spread);
    }

    /// <summary>The rectangles; they must not overlap.</summary>
    public IReadOnlyList<SectionRectangle> Rectangles { get; }

    /// <summary>Shear centre S, mm, from the section's origin.</summary>
    public Planar ShearCentre { get; }

    /// <summary>St Venant torsion constant J, mm⁴.</summary>
    public double TorsionConstant { get; }

    /// <summary>Corners where elastic stress is looked at, mm, from the section's origin.</summary>
    public IReadOnlyList<Planar> Corners { get; }

    /// <summary>A, mm².</summary>
    public double Area { get; }

    /// <summary>Centroid C, mm, from the section's origin.</summary>
    public Planar Centroid { get; }

    /// <summary>I_y = ∫z² dA about the centroid, mm⁴.</summary>
    public double Iy { get; }

    /// <summary>I_z = ∫y² dA about the centroid, mm⁴.</summary>
    public double Iz { get; }

    /// <summary>I_yz = ∫yz dA about the centroid, mm⁴.</summary>
    public double Iyz { get; }

    /// <summary>Largest second moment of area, mm⁴.</summary>
    public double Iu { get; }

    /// <summary>Smallest second moment of area, mm⁴.</summary>
    public double Iv { get; }

    /// <summary>Unit vector of a displacement that bends the bar about its minor axis v-v; y component not negative.</summary>
    public Planar MinorDirection
    {
        get
        {
            // The direction d with ∫(r·d)² dA = I_v solves (J − I_v) d = 0 with J = [[I_z, I_yz], [I_yz, I_y]].
            double angle = 0.5 * Math.Atan2(2 * Iyz, Iz - Iy) + Math.PI / 2;
            var d = new Planar(Math.Cos(angle), Math.Sin(angle));
            return d.Y < 0 ? -d : d;
        }
    }

    /// <summary>
    /// An angle. The heel is the origin, the outer face of the connected leg lies against the gusset (z = 0), the outstanding leg points to z &lt; 0.
    /// S is where the mid-lines of the legs meet. Roundings are made of slivers with the exact area; the corners for elastic stress stay the sharp ones.
    /// </summary>
    /// <param name="connectedLeg">Length of the connected leg over the heel, mm.</param>
    /// <param name="outstandingLeg">Length of the outstanding leg over the heel, mm.</param>
    /// <param name="thickness">t, mm.</param>
    /// <param name="rootRadius">Fillet between the legs, mm; 0 leaves it sharp.</param>
    /// <param name="toeRadius">Rounding of the inner corner of each toe, mm; 0 leaves it sharp.</param>
    /// <param name="torsionConstant">J, mm⁴; left out it is Σ b t³/3 along the mid-lines, some 8 % low for usual fillets.</param>
    /// <exception cref="InputException">A length is not positive, the thickness is not small against both legs, or a radius does not fit.</exception>
    public static ReferenceSection Angle(
        double connectedLeg, double outstandingLeg, double thickness, double rootRadius = 0, double toeRadius = 0, double? torsionConstant = null)
    {
        double b1 = Guard.Positive(connectedLeg, "connected leg", "mm", "Measure it over the heel.");
        double b2 = Guard.Positive(outstandingLeg, "outstanding leg", "mm", "Measure it over the heel.");
        double t = Guard.Positive(thickness, "thickness", "mm", "Give the thickness of the legs.");
        if (t >= 0.5 * Math.Min(b1, b2))
        {
            throw Guard.Fail(t, "thickness", "mm", "less than half of each leg", "Check that legs and thickness are not swapped.");
        }
        double toe = Guard.Within(toeRadius, 0, t, "toe radius", "mm", "Half of the root radius is common practice.");
        double root = Guard.Within(rootRadius, 0, Math.Min(b1, b2) - t - toe, "root radius", "mm", "A value near the thickness is common practice.");
        List<SectionRectangle> parts = [new(0, t, -t, 0), new(t, b1 - toe, -t, 0), new(0, t, toe - b2, -t)];
        AngleRoundings.Add(parts, b1, b2, t, root, toe);
        Planar[] corners = [new(0, 0), new(b1, 0), new(b1, -t), new(t, -b2), new(0, -b2)];
        double torsion = Guard.Positive(torsionConstant ?? (b1 + b2 - t) * t * t * t / 3, "torsion constant", "mm⁴", "For thin legs it is about Σ b t³/3.");
        return new ReferenceSection([.. parts], new Planar(t / 2, -t / 2), torsion, corners, p => AngleResidual(p, b1, b2, t));
    }

    /// <summary>A solid rectangle about its own middle; no residual stress pattern.</summary>
    /// <param name="width">Side along y, mm.</param>
    /// <param name="height">Side along z, mm.</param>
    /// <exception cref="InputException">A side is not positive.</exception>
    public static ReferenceSection Rectangle(double width, double height)
    {
        double b = Guard.Positive(width, "side along y", "mm", "Give a length."), h = Guard.Positive(height, "side along z", "mm", "Give a length.");
        double y = b / 2, z = h / 2, a = Math.Max(b, h), c = Math.Min(b, h), ratio = c / a;
        // Torsion constant of a solid rectangle, error below 0.5 %: Roark's Formulas for Stress and Strain, table of torsion (from memory).
        double torsion = a * c * c * c * (1.0 / 3 - 0.21 * ratio * (1 - Math.Pow(ratio, 4) / 12));
        return new ReferenceSection([new(-y, y, -z, z)], Planar.Zero, torsion, [new(-y, -z), new(y, -z), new(y, z), new(-y, z)], _ => 0);
    }

    /// <summary>Any set of rectangles that do not overlap; no residual stress pattern.</summary>
    /// <param name="rectangles">The rectangles.</param>
    /// <param name="shearCentre">Shear centre in the same axes, mm.</param>
    /// <param name="torsionConstant">J, mm⁴.</param>
    /// <exception cref="InputException">No rectangle, or J is not positive.</exception>
    public static ReferenceSection Of(IReadOnlyList<SectionRectangle> rectangles, Planar shearCentre, double torsionConstant)
    {
        if (rectangles is null || rectangles.Count == 0)
        {
            throw new InputException("rectangles", "none", "at least one", "A section needs area.");
        }
        double torsion = Guard.Positive(torsionConstant, "torsion constant", "mm⁴", "For thin plates it is about Σ b t³/3.");
        Planar[] corners = [.. rectangles.SelectMany(r => new Planar[] { new(r.YMin, r.ZMin), new(r.YMax, r.ZMin), new(r.YMax, r.ZMax), new(r.YMin, r.ZMax) })];
        return new ReferenceSection([.. rectangles], shearCentre, torsion, corners, _ => 0);
    }

    /// <summary>Residual stress at a point for a peak of 1, tension positive, before it is balanced.</summary>
    internal double ResidualPattern(Planar point) => residualPattern(point);

    /// <summary>
    /// Straight lines along each leg: −1 at the heel, +1 at half the leg, −1 at the toe, measured from the mid-line of the other leg;
    /// uniform through the thickness (common practice for hot-rolled angles).
    /// </summary>
    private static double AngleResidual(Planar p, double b1, double b2, double t)
    {
        double along = Math.Max(p.Y, -p.Z), leg = p.Y > -p.Z ? b1 : b2;
        double s = Math.Max(along - t / 2, 0) / (leg - t / 2);
        return 1 - 4 * Math.Abs(s - 0.5);
    }
}
