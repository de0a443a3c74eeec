using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>The reference analysis against closed forms of column theory.</summary>
public class ClassicalColumnTests
{
    private static readonly ReferenceSection L90 = ReferenceSection.Angle(90, 90, 9);
    private static readonly ReferenceSteel Elastic = ReferenceSteel.WithYield(double.PositiveInfinity);

    private static double Euler(ReferenceSection section, double length) => Math.PI * Math.PI * 210000 * section.Iv / (length * length);

    /// <summary>Secant formula: deflection e (sec(π/2 √(N/N_cr)) − 1). Timoshenko and Gere, Theory of Elastic Stability, 2nd edition, 1.6 (from memory).</summary>
    [Theory]
    [InlineData(0.2, 5e-5)]
    [InlineData(0.5, 1e-4)]
    [InlineData(0.8, 3e-4)]
    public void An_elastic_eccentric_hinged_strut_follows_the_secant_formula(double share, double tolerance)
    {
        const double Length = 3000, E = 1;
        var end = new ReferenceEnd(E * L90.MinorDirection, 0, 0);
        var strut = new ReferenceStrut(L90, Elastic, Length, Planar.Zero, 0, end, end);
        double euler = Euler(L90, Length), load = share * euler;
        // The rod is also shortened, by N/EA; its critical load is larger by as much.
        double critical = euler * (1 + load / (210000 * L90.Area));
        double secant = E * (1 / Math.Cos(0.5 * Math.PI * Math.Sqrt(load / critical)) - 1);
        double deflection = ElasticRod.StatesAt(strut, [load])[0].CentroidMid.Length;
        Closeness.Relative(secant, deflection, tolerance, "deflection");
    }

    /// <summary>Bowed strut with both rotations fixed: EI d'''' + N d'' = −N d0'' with d = d' = 0 at the ends, solved by hand.</summary>
    [Fact]
    public void A_bowed_strut_with_fixed_ends_follows_its_closed_form()
    {
        const double Length = 2500, Bow = 8;
        var end = new ReferenceEnd(Planar.Zero, double.PositiveInfinity, double.PositiveInfinity);
        var strut = new ReferenceStrut(L90, Elastic, Length, Bow * L90.MinorDirection, 0, end, end);
        double load = 1.5 * Euler(L90, Length), shortened = 1 + load / (210000 * L90.Area);
        // The rod is also shortened, by N/EA; it resists bending as if EI were larger by as much.
        double bending = 210000 * L90.Iv * shortened, euler = Euler(L90, Length) * shortened;
        double q = Math.Sqrt(load / bending), omega = Math.PI / Length, b = Bow * load / (euler - load);
        double c = -b * omega / (q * Math.Sin(q * Length / 2));
        double atEnd = -c * q * q * Math.Cos(q * Length / 2), atMid = -b * omega * omega - c * q * q;
        double[] levers = [.. L90.Corners.Select(p => (p - L90.Centroid).Dot(L90.MinorDirection))];
        double bendingStress = new[] { atEnd, atMid }.Max(k => levers.Max(l => 210000 * k * l));
        ElasticState state = ElasticRod.StatesAt(strut, [load], 64, twist: false)[0];
        Closeness.Relative(load / L90.Area + bendingStress, state.LargestCompression, 5e-4, "largest compression");
        Closeness.Relative(b + c * (1 - Math.Cos(q * Length / 2)), state.CentroidMid.Dot(L90.MinorDirection), 2e-3, "deflection");
    }

    /// <summary>Cubic of torsional-flexural buckling: Timoshenko and Gere, Theory of Elastic Stability, 2nd edition, chapter 5 (from memory).</summary>
    [Theory]
    [InlineData(100, 100, 6, 400, 1e-5)]
    [InlineData(100, 100, 6, 800, 1e-5)]
    [InlineData(100, 100, 6, 1600, 1e-4)]
    [InlineData(150, 150, 10, 800, 1e-4)]
    [InlineData(90, 90, 9, 1500, 2e-3)]
    [InlineData(100, 65, 8, 1200, 2e-3)]
    public void A_straight_concentric_rod_buckles_at_the_root_of_the_torsional_flexural_cubic(double b1, double b2, double t, double length, double tolerance)
    {
        ReferenceStrut strut = Concentric(b1, b2, t, length);
        double cubic = TorsionalFlexuralBuckling.Hinged(strut.Section, strut.Steel, length).Critical;
        Closeness.Relative(cubic, RollAnalysis.CriticalLoad(strut), 2e-5, "linear model");
        // Where flexure governs, the rod's mean shortening N/EA adds up to a few thousandths.
        Assert.InRange(RodBuckles(strut, cubic, wagner: true) / cubic, 1 - 1e-6, 1 + tolerance);
    }

    [Fact]
    public void Without_the_Wagner_term_a_thin_angle_has_no_torsional_buckling()
    {
        ReferenceStrut strut = Concentric(100, 100, 6, 800);
        double cubic = TorsionalFlexuralBuckling.Hinged(strut.Section, strut.Steel, 800).Critical;
        Assert.True(RodBuckles(strut, cubic, wagner: false) > 1.9 * cubic);
    }

    [Fact]
    public void Torsion_governs_short_thin_angles_and_flexure_long_ones()
    {
        TorsionalFlexuralBuckling shortStrut = TorsionalFlexuralBuckling.Hinged(ReferenceSection.Angle(100, 100, 6), Elastic, 500);
        TorsionalFlexuralBuckling longStrut = TorsionalFlexuralBuckling.Hinged(ReferenceSection.Angle(100, 100, 6), Elastic, 4000);
        Assert.True(shortStrut.Critical < 0.2 * shortStrut.EulerMinor && shortStrut.Critical < shortStrut.Torsional);
        Closeness.Relative(longStrut.EulerMinor, longStrut.Critical, 1e-9, "minor-axis Euler load");
    }

    private static ReferenceStrut Concentric(double b1, double b2, double t, double length)
    {
        var hinge = new ReferenceEnd(Planar.Zero, 0, 0);
        return new ReferenceStrut(ReferenceSection.Angle(b1, b2, t), Elastic, length, Planar.Zero, 0, hinge, hinge);
    }

    /// <summary>Load at which the straight rod's tangent gets its first negative pivot, sought up to twice the guess.</summary>
    private static double RodBuckles(ReferenceStrut strut, double guess, bool wagner)
    {
        var model = new RodModel(strut, new RodMesh(32, 4, 8, 1), true, wagner);
        double low = 0, high = 2 * guess;
        while (high - low > 1e-8 * guess)
        {
            double middle = 0.5 * (low + high);
            (low, high) = new PathFollower(model).TryLoad(middle) ? (middle, high) : (low, middle);
        }
        return low;
    }
}
