namespace StrutLessons.Sections;

/// <summary>
/// An angle with one leg laid on the gusset, and all its properties, integrated exactly along the outline with its arcs.
/// </summary>
/// <remarks>
/// Axes: y along the connected leg from heel to toe, z perpendicular to it and positive towards the gusset on the outer face.
/// u–u is the major and v–v the minor principal axis (I_u ≥ I_v). Units mm, mm², mm⁴, rad. Immutable.
/// </remarks>
public sealed partial record AngleSection
{
    internal AngleSection(Angle angle, ConnectedLeg leg)
    {
        Angle = angle;
        Leg = Guard.Named(leg, "connected leg");
        ConnectedLength = leg == ConnectedLeg.Long ? angle.LongLeg : angle.ShortLeg;
        OutstandingLength = leg == ConnectedLeg.Long ? angle.ShortLeg : angle.LongLeg;

        AreaMoments m = AngleOutline.Moments(this);
        Area = m.Area;
        CentroidY = m.FirstY / m.Area;
        CentroidZ = m.FirstZ / m.Area;
        SecondMomentZ = m.SecondYY - m.Area * CentroidY * CentroidY;
        SecondMomentY = m.SecondZZ - m.Area * CentroidZ * CentroidZ;
        // z = c_z − Z turns the sign of the outline's product of inertia.
        ProductMoment = m.Area * CentroidY * CentroidZ - m.SecondYZ;

        double mean = 0.5 * (SecondMomentY + SecondMomentZ);
        double radius = Math.Sqrt(0.25 * Math.Pow(SecondMomentZ - SecondMomentY, 2) + ProductMoment * ProductMoment);
        SecondMomentU = mean + radius;
        SecondMomentV = mean - radius;
        double turn = 0.5 * Math.Atan2(2 * ProductMoment, SecondMomentZ - SecondMomentY);
        AxisV = new Planar(Math.Cos(turn), Math.Sin(turn));
        var heel = new Planar(-CentroidY, CentroidZ);
        var normal = new Planar(-AxisV.Z, AxisV.Y);
        AxisU = normal.Dot(heel) > 0 ? normal : -normal;

        double t = angle.Thickness;
        ShearCentre = FromHeel(t / 2, t / 2);
        TorsionConstant = AngleTorsion.Constant(angle);
        Corners =
        [
            new(Corner.Heel, FromHeel(0, 0)),
            new(Corner.ConnectedToeOuter, FromHeel(ConnectedLength, 0)),
            new(Corner.ConnectedToeInner, FromHeel(ConnectedLength, t)),
            new(Corner.OutstandingToeInner, FromHeel(t, OutstandingLength)),
            new(Corner.OutstandingToeOuter, FromHeel(0, OutstandingLength)),
        ];
    }

    /// <summary>The shape.</summary>
    public Angle Angle { get; }

    /// <summary>Which leg is bolted to the gusset.</summary>
    public ConnectedLeg Leg { get; }

    /// <summary>Length of the connected leg, heel to toe, mm.</summary>
    public double ConnectedLength { get; }

    /// <summary>Length of the outstanding leg, heel to toe, mm.</summary>
    public double OutstandingLength { get; }

    /// <summary>Leg thickness t, mm.</summary>
    public double Thickness => Angle.Thickness;

    /// <summary>Area A, mm².</summary>
    public double Area { get; }

    /// <summary>Distance c_y of the centroid from the heel along the connected leg, mm.</summary>
    public double CentroidY { get; }

    /// <summary>Distance c_z of the centroid from the outer face of the connected leg, mm.</summary>
    public double CentroidZ { get; }

    /// <summary>I_y = ∫z² dA about the axis parallel to the connected leg, mm⁴.</summary>
    public double SecondMomentY { get; }

    /// <summary>I_z = ∫y² dA about the axis perpendicular to the connected leg, mm⁴.</summary>
    public double SecondMomentZ { get; }

    /// <summary>I_yz = ∫yz dA, positive in these axes, mm⁴.</summary>
    public double ProductMoment { get; }

    /// <summary>I_u about the major principal axis, mm⁴.</summary>
    public double SecondMomentU { get; }

    /// <summary>I_v about the minor principal axis, mm⁴.</summary>
    public double SecondMomentV { get; }

    /// <summary>Unit vector along the major axis u–u, pointing to the heel side. A displacement along it is bending about v–v.</summary>
    public Planar AxisU { get; }

    /// <summary>Unit vector along the minor axis v–v, pointing to the toe of the connected leg. A displacement along it is bending about u–u.</summary>
    public Planar AxisV { get; }

    /// <summary>Shear centre from the centroid: where the mid-lines of the legs meet, mm (thin-walled theory).</summary>
    public Planar ShearCentre { get; }

    /// <summary>St Venant torsion constant I_t, mm⁴; see <see cref="AngleTorsion"/> for the formula.</summary>
    public double TorsionConstant { get; }

    /// <summary>The five corners in the order heel, connected toe outer and inner, outstanding toe inner and outer.</summary>
    public IReadOnlyList<StressPoint> Corners { get; }

    /// <summary>Radius of gyration i_y = √(I_y/A), mm.</summary>
    public double RadiusY => Math.Sqrt(SecondMomentY / Area);

    /// <summary>Radius of gyration i_z = √(I_z/A), mm.</summary>
    public double RadiusZ => Math.Sqrt(SecondMomentZ / Area);

    /// <summary>Radius of gyration i_u = √(I_u/A), mm.</summary>
    public double RadiusU => Math.Sqrt(SecondMomentU / Area);

    /// <summary>Radius of gyration i_v = √(I_v/A), mm: the one that decides how the free strut buckles.</summary>
    public double RadiusV => Math.Sqrt(SecondMomentV / Area);

    /// <summary>Angle from +y to the axis u–u, rad.</summary>
    public double AngleToU => Math.Atan2(AxisU.Z, AxisU.Y);

    /// <summary>Catalogue value tan α: slope of the axis u–u against the longer leg's axis; 1 for an equal angle.</summary>
    public double TanAlpha
    {
        get
        {
            double along = Math.Abs(AxisU.Y), across = Math.Abs(AxisU.Z);
            return Leg == ConnectedLeg.Long ? along / across : across / along;
        }
    }

    /// <summary>Centroidal coordinates of a point given by its distances from the heel.</summary>
    /// <param name="alongConnectedLeg">Y, mm from the heel along the connected leg.</param>
    /// <param name="alongOutstandingLeg">Z, mm from the outer face of the connected leg.</param>
    public Planar FromHeel(double alongConnectedLeg, double alongOutstandingLeg) =>
        new(alongConnectedLeg - CentroidY, CentroidZ - alongOutstandingLeg);

    /// <summary>Position of a corner from the centroid, mm.</summary>
    /// <exception cref="InputException">Not a named corner.</exception>
    public Planar PositionOf(Corner corner) => Corners[(int)Guard.Named(corner, "corner")].Position;

    /// <summary>Component of a vector along the axis u–u (a displacement: bending about v–v).</summary>
    public double AlongU(Planar vector) => vector.Dot(AxisU);

    /// <summary>Component of a vector along the axis v–v (a displacement: bending about u–u).</summary>
    public double AlongV(Planar vector) => vector.Dot(AxisV);

    /// <summary>The vector with the given principal components.</summary>
    public Planar FromPrincipal(double alongU, double alongV) => alongU * AxisU + alongV * AxisV;

    /// <summary>The designation and the connected leg.</summary>
    public override string ToString() =>
        Angle.IsEqual ? Angle.Name : $"{Angle.Name}, {(Leg == ConnectedLeg.Long ? "long" : "short")} leg connected";
}
