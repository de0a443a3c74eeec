using StrutLessons.Joints;

namespace StrutLessons.Member;

/// <summary>
/// The check model of a strut: gusset, angle, gusset as three flexible segments in line, clamped at both welds, bending out of the plane of
/// the gussets. Solved in closed form with the stability functions of each segment. It shows what a spring in their place gets right. Immutable.
/// </summary>
/// <remarks>
/// Unknowns are deflection and slope of both first bolts, w₁, θ₁, w₂, θ₂. In the plane of the gussets the bar is held rigidly at its ends, so
/// its stiffness out of that plane is q² EI_v and p² EI_u side by side, with (p, q) the axis u–u (see <see cref="EndStiffness{T}"/>). The line
/// of the load runs through the gussets; the bar's centroid lies beside it, which makes the moments N e at the bolts. One piece alone, both ends
/// clamped, buckles above every load considered, so negative pivots count critical loads (Wittrick and Williams, 1971).
/// </remarks>
public sealed class ThreeSegmentStrut
{
    private readonly PlaneBar[] planes;

    private ThreeSegmentStrut(PlaneBar[] planes, double barLength, GussetSegment gusset1, GussetSegment gusset2, double eccentricity1, double eccentricity2)
    {
        this.planes = planes;
        BarLength = barLength;
        Gusset1 = gusset1;
        Gusset2 = gusset2;
        Eccentricity1 = eccentricity1;
        Eccentricity2 = eccentricity2;
        double ownBuckling = Math.Min(Clamped(gusset1.BendingStiffness, gusset1.Length), Clamped(gusset2.BendingStiffness, gusset2.Length));
        Limit = planes.Min(p => Clamped(p.BendingStiffness, barLength)) is var bar && bar < ownBuckling ? bar : ownBuckling;
        CriticalLoad = Lowest(Limit, load => Pivots(Whole(load)));
    }

    /// <summary>Length of the bar between the first bolts, mm.</summary>
    public double BarLength { get; }

    /// <summary>The gusset at end 1.</summary>
    public GussetSegment Gusset1 { get; }

    /// <summary>The gusset at end 2.</summary>
    public GussetSegment Gusset2 { get; }

    /// <summary>Load line from the bar's centroid at end 1, out of the plane of the gusset, mm.</summary>
    public double Eccentricity1 { get; }

    /// <summary>The same at end 2, mm.</summary>
    public double Eccentricity2 { get; }

    /// <summary>N_cr, N.</summary>
    public double CriticalLoad { get; }

    /// <summary>Smallest buckling load of a segment with both ends clamped, N: no critical load lies above.</summary>
    internal double Limit { get; }

    internal IReadOnlyList<PlaneBar> Planes => planes;

    /// <summary>The angle of a strut between two gussets: its bar between the first bolts, eccentricities and bow.</summary>
    /// <param name="strut">The strut; its out-of-plane springs and arms are replaced by the gussets.</param>
    /// <param name="gusset1">Gusset at end 1.</param>
    /// <param name="gusset2">Gusset at end 2.</param>
    /// <param name="bow">One of its bows; by default the first.</param>
    /// <exception cref="InputException">The strut is not held rigidly in the plane of the gussets.</exception>
    public static ThreeSegmentStrut Of(Strut strut, GussetSegment gusset1, GussetSegment gusset2, Bow? bow = null)
    {
        ArgumentNullException.ThrowIfNull(strut);
        ArgumentNullException.ThrowIfNull(gusset1);
        ArgumentNullException.ThrowIfNull(gusset2);
        double inPlane = Math.Min(strut.End1.Spring.InPlane, strut.End2.Spring.InPlane);
        if (!double.IsPositiveInfinity(inPlane))
        {
            throw Guard.Fail(inPlane, "in-plane spring stiffness", "N mm/rad", "infinite at both ends",
                "The model of three segments bends out of the plane of the gussets and holds the strut in it: use two or more bolts.");
        }

        var n = new StrutNumbers(strut, bow ?? strut.Bows[0]);
        return new([new(n.StiffnessU, n.AxisU.Z, n.BowU), new(n.StiffnessV, n.AxisV.Z, n.BowV)], n.Length, gusset1, gusset2, n.Load1.Z, n.Load2.Z);
    }

    /// <summary>A bar that bends in one plane only, between two gussets.</summary>
    /// <param name="bendingStiffness">E I of the bar, N mm².</param>
    /// <param name="barLength">Length between the first bolts, mm.</param>
    /// <param name="gusset1">Gusset at end 1.</param>
    /// <param name="gusset2">Gusset at end 2.</param>
    /// <param name="eccentricity1">Load line from the bar's centroid at end 1, mm.</param>
    /// <param name="eccentricity2">The same at end 2, mm.</param>
    /// <param name="bow">Amplitude of a half-sine bow of the bar, mm.</param>
    /// <exception cref="InputException">A stiffness or length that is not positive, an eccentricity or bow that is not finite.</exception>
    public static ThreeSegmentStrut InOnePlane(
        double bendingStiffness, double barLength, GussetSegment gusset1, GussetSegment gusset2,
        double eccentricity1 = 0, double eccentricity2 = 0, double bow = 0)
    {
        ArgumentNullException.ThrowIfNull(gusset1);
        ArgumentNullException.ThrowIfNull(gusset2);
        Guard.Positive(bendingStiffness, "bending stiffness of the bar", "N mm²", "Give E times the second moment of area.");
        Guard.Positive(barLength, "bar length", "mm", "Give the distance between the first bolts.");
        const string advice = "Measure from the centroid in mm, out of the plane of the gusset.";
        Guard.Finite(eccentricity1, "eccentricity z_e at end 1", "mm", advice);
        Guard.Finite(eccentricity2, "eccentricity z_e at end 2", "mm", advice);
        Guard.Finite(bow, "bow amplitude e0", "mm", "Give the amplitude at mid-length.");
        return new([new(bendingStiffness, 1, bow)], barLength, gusset1, gusset2, eccentricity1, eccentricity2);
    }

    /// <summary>The three segments under a load.</summary>
    /// <param name="load">N, more than 0 and less than the critical load, N.</param>
    /// <exception cref="InputException">Outside that range.</exception>
    public ThreeSegmentSolution Under(double load) => load > 0 && load < CriticalLoad
        ? new(this, load)
        : throw Guard.Fail(load, "load N", "N", $"more than 0 and less than the critical load {Guard.Text(CriticalLoad)} N",
            "Beyond the critical load the formulas return finite numbers that mean nothing. Check that the load is in N.");

    /// <summary>The same bar between rigid arms on springs: the critical load of the hinge model, N.</summary>
    /// <param name="end1">The joint at end 1.</param>
    /// <param name="end2">The joint at end 2.</param>
    public double CriticalLoadWith(JointHinge end1, JointHinge end2)
    {
        ArgumentNullException.ThrowIfNull(end1);
        ArgumentNullException.ThrowIfNull(end2);
        return CriticalLoadOn(_ => end1.OutOfPlaneStiffness, end1.HingeDistance, _ => end2.OutOfPlaneStiffness, end2.HingeDistance);
    }

    /// <summary>As <see cref="CriticalLoadWith"/>, with springs that change with the load.</summary>
    internal double CriticalLoadOn(Func<double, double> spring1, double arm1, Func<double, double> spring2, double arm2)
    {
        return Lowest(planes.Min(p => Clamped(p.BendingStiffness, BarLength)), load =>
        {
            ColumnStiffness bar = Bar(load);
            // w₁ = a₁ θ₁ and w₂ = −a₂ θ₂; each arm softens by N a.
            double c = bar.Cross, s = bar.Sway;
            double k11 = bar.Near + 2 * arm1 * c + arm1 * arm1 * s + spring1(load) - load * arm1;
            double k22 = bar.Near + 2 * arm2 * c + arm2 * arm2 * s + spring2(load) - load * arm2;
            double k12 = bar.Far + (arm1 + arm2) * c + arm1 * arm2 * s;
            double second = k22 - k12 * k12 / k11;
            return (k11 < 0 ? 1 : 0) + (second < 0 ? 1 : 0);
        });
    }

    /// <summary>The bar as the out-of-plane movements of its ends see it.</summary>
    internal ColumnStiffness Bar(double load)
    {
        double near = 0, far = 0;
        foreach (PlaneBar plane in planes)
        {
            ColumnStiffness one = ColumnStiffness.Of(plane.BendingStiffness, BarLength, load);
            near += plane.Direction * plane.Direction * one.Near;
            far += plane.Direction * plane.Direction * one.Far;
        }

        return new(near, far, BarLength, load);
    }

    /// <summary>Stiffness of the whole against w₁, θ₁, w₂, θ₂.</summary>
    internal Symmetric4<Lane1> Whole(double load)
    {
        ColumnStiffness bar = Bar(load), g1 = ColumnStiffness.Of(Gusset1.BendingStiffness, Gusset1.Length, load),
            g2 = ColumnStiffness.Of(Gusset2.BendingStiffness, Gusset2.Length, load);
        return new(
            new(bar.Sway + g1.Sway), new(bar.Cross - g1.Cross), new(bar.Near + g1.Near), new(-bar.Sway), new(-bar.Cross), new(bar.Sway + g2.Sway),
            new(bar.Cross), new(bar.Far), new(g2.Cross - bar.Cross), new(bar.Near + g2.Near));
    }

    private static double Clamped(double bendingStiffness, double length) => 4 * Math.PI * Math.PI * bendingStiffness / (length * length);

    private static int Pivots(Symmetric4<Lane1> matrix)
    {
        Factor4<Lane1> f = matrix.Factor();
        return new[] { f.D1, f.D2, f.D3, f.D4 }.Count(d => d.Value < 0);
    }

    /// <summary>Smallest load with a negative pivot below a limit, by bisection of the count.</summary>
    private static double Lowest(double limit, Func<double, int> count)
    {
        double low = 0, high = limit * (1 - 1e-12);
        if (count(high) == 0)
        {
            return limit;
        }

        while (high - low > 1e-14 * high)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = count(middle) == 0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
