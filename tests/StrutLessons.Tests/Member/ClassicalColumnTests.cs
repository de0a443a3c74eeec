using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Member;

/// <summary>The strut against the classical results of columns and beam-columns.</summary>
public class ClassicalColumnTests
{
    private static readonly AngleSection Section = new Angle("L 100x100x10", 100, 100, 10, 12, 6).Connected();
    private const double Length = 3000;

    private static Strut Column(EndSpring spring1, EndSpring spring2, Steel? steel = null) =>
        new(Section, steel ?? Steel.Custom("S355", 355), Length, new StrutEnd(Planar.Zero, spring1), new StrutEnd(Planar.Zero, spring2), Bow.None);

    /// <summary>A spring c with cL/EI_v = β in both planes: the lowest mode bends about v–v.</summary>
    private static EndSpring Isotropic(double beta)
    {
        double c = double.IsInfinity(beta) ? beta : beta * 210000 * Section.SecondMomentV / Length;
        return new EndSpring(c, c);
    }

    // Timoshenko and Gere, Theory of Elastic Stability, ch. 2: tan u/u = −2/β; values recomputed from that equation,
    // which equals AISC 360-22 Commentary App. 7, sidesway inhibited, with G_A = G_B = 2EI/(cL).
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.1, 1.04012)]
    [InlineData(0.2, 1.07944)]
    [InlineData(0.5, 1.19274)]
    [InlineData(1, 1.36706)]
    [InlineData(2, 1.66809)]
    [InlineData(4, 2.12337)]
    [InlineData(5, 2.29694)]
    [InlineData(10, 2.85398)]
    [InlineData(20, 3.32150)]
    [InlineData(50, 3.69960)]
    [InlineData(100, 3.84487)]
    [InlineData(double.PositiveInfinity, 4)]
    public void Equal_end_springs_raise_the_critical_load_as_in_the_table(double beta, double ratio) =>
        Assert.Equal(ratio, CriticalLoad.RatioToEuler(Column(Isotropic(beta), Isotropic(beta))), 5);

    // As above, spring at one end, the other hinged: β(1 − x cot x) + x² = 0.
    [Theory]
    [InlineData(0.1, 1.01996)]
    [InlineData(0.5, 1.09405)]
    [InlineData(1, 1.17514)]
    [InlineData(2, 1.30648)]
    [InlineData(4, 1.48539)]
    [InlineData(10, 1.73019)]
    [InlineData(20, 1.86606)]
    [InlineData(100, 2.00586)]
    [InlineData(double.PositiveInfinity, 2.04575)]
    public void A_spring_at_one_end_raises_the_critical_load_as_in_the_table(double beta, double ratio) =>
        Assert.Equal(ratio, CriticalLoad.RatioToEuler(Column(Isotropic(beta), EndSpring.Hinged)), 5);

    // AISC 360-22, Commentary App. 7, sidesway inhibited equation, G = 2EI/(cL) at each end.
    [Theory]
    [InlineData(1, 10, 0.85992)]
    [InlineData(0.5, 2, 0.76465)]
    [InlineData(0.001, 1, 0.62633)]
    public void Unequal_springs_give_the_effective_length_of_the_alignment_equation(double g1, double g2, double k)
    {
        double ratio = CriticalLoad.RatioToEuler(Column(Isotropic(2 / g1), Isotropic(2 / g2)));
        Assert.Equal(k, 1 / Math.Sqrt(ratio), 5);
    }

    // Livesley and Chandler, Stability Functions for Structural Frameworks, 1956 (provenance from memory; values recomputed).
    [Theory]
    [InlineData(0.2, 3.7297, 2.0701)]
    [InlineData(0.4, 3.4439, 2.1497)]
    [InlineData(0.6, 3.1403, 2.2407)]
    [InlineData(0.8, 2.8159, 2.3456)]
    [InlineData(1, 2.4674, 2.4674)]
    [InlineData(1.4, 1.6782, 2.7785)]
    [InlineData(2, 0.1428, 3.5248)]
    [InlineData(3, -5.0320, 7.1236)]
    public void Half_angle_functions_are_the_stability_functions(double rho, double s, double sc)
    {
        var axis = new AxisFunctions<Lane1>(new Lane1(rho));
        Assert.Equal(s, axis.C.Value + 1 / axis.G.Value, 4);
        Assert.Equal(sc, 1 / axis.G.Value - axis.C.Value, 4);
    }

    [Fact]
    public void Stability_functions_tend_to_4_and_2_without_load()
    {
        var axis = new AxisFunctions<Lane1>(new Lane1(1e-14));
        Closeness.Relative(4, axis.C.Value + 1 / axis.G.Value, 1e-13, "s");
        Closeness.Relative(2, 1 / axis.G.Value - axis.C.Value, 1e-13, "s c");
    }

    // Secant formula P/A of Timoshenko and Gere, ch. 1, for f_y = 250 MPa, E = 200 000 MPa (recomputed from the formula).
    [Theory]
    [InlineData(0.1, 25, 225.33)]
    [InlineData(0.1, 50, 217.88)]
    [InlineData(0.1, 75, 198.02)]
    [InlineData(0.1, 100, 157.04)]
    [InlineData(0.1, 125, 113.33)]
    [InlineData(0.1, 150, 82.33)]
    [InlineData(0.1, 200, 47.87)]
    [InlineData(0.4, 25, 174.95)]
    [InlineData(0.4, 50, 163.44)]
    [InlineData(0.4, 75, 143.29)]
    [InlineData(0.4, 100, 117.17)]
    [InlineData(0.4, 125, 91.58)]
    [InlineData(0.4, 150, 70.87)]
    [InlineData(0.4, 200, 44.10)]
    [InlineData(1.0, 25, 121.97)]
    [InlineData(1.0, 50, 113.25)]
    [InlineData(1.0, 75, 100.13)]
    [InlineData(1.0, 100, 84.93)]
    [InlineData(1.0, 125, 70.13)]
    [InlineData(1.0, 150, 57.27)]
    [InlineData(1.0, 200, 38.51)]
    public void The_eccentric_hinged_strut_follows_the_secant_formula(double ecOverR2, double slenderness, double stress)
    {
        // Eccentricity along u: bending about v–v alone. The heel lies farthest from v–v on the compressed side.
        double heel = Section.AlongU(Section.PositionOf(Corner.Heel));
        double e = ecOverR2 * Section.RadiusV * Section.RadiusV / heel;
        var end = new StrutEnd(e * Section.AxisU, EndSpring.Hinged);
        var strut = new Strut(Section, Steel.Custom("table", 250, 200000), slenderness * Section.RadiusV, end, end, Bow.None);
        BowCapacity result = StrutCapacity.Of(strut).Governing;
        Assert.Equal(Corner.Heel, result.Compression!.Value.Place.Corner);
        Assert.Equal(stress, result.Compression!.Value.Load / Section.Area, 2);
    }

    // Beam-column functions of Timoshenko and Gere, Theory of Elastic Stability, Appendix Table A-1.
    [Theory]
    [InlineData(0.4, 1.0203, 1.0169)]
    [InlineData(1.0, 1.1395, 1.1160)]
    [InlineData(1.6, 1.4353, 1.3604)]
    [InlineData(2.0, 1.8508, 1.7016)]
    [InlineData(2.6, 3.7383, 3.2406)]
    [InlineData(3.0, 14.137, 11.677)]
    public void Equal_end_moments_grow_as_in_the_beam_column_table(double twoU, double secant, double lambda)
    {
        double ei = 210000 * Section.SecondMomentV, load = ei * Math.Pow(twoU / Length, 2), e = 5;
        var end = new StrutEnd(e * Section.AxisU, EndSpring.Hinged);
        SecondOrderSolution s = SecondOrderSolution.Of(new Strut(Section, Steel.Custom("S355", 355), Length, end, end, Bow.None), load);
        int digits = secant > 10 ? 3 : 4;
        Assert.Equal(secant, s.PrincipalMoment(Length / 2).AlongU / (load * e), digits);
        double firstOrder = load * e * Length * Length / (8 * ei);
        Assert.Equal(lambda, -Section.AlongU(s.Deflection(Length / 2)) / firstOrder, digits);
    }

    // Southwell, Proc. Roy. Soc. A 135, 1932 (from memory): exact for a half-sine bow.
    [Fact]
    public void A_half_sine_bow_returns_the_critical_load_and_itself_from_a_southwell_plot()
    {
        const double bow = 4;
        Strut strut = Column(EndSpring.Hinged, EndSpring.Hinged).WithBows(Bow.AlongU(Section, bow));
        double critical = CriticalLoad.Of(strut);
        double Shift(double share) => Section.AlongU(SecondOrderSolution.Of(strut, share * critical).Deflection(Length / 2));
        double d1 = Shift(0.3), d2 = Shift(0.8), y1 = d1 / (0.3 * critical), y2 = d2 / (0.8 * critical);
        double slope = (y2 - y1) / (d2 - d1);
        Closeness.Relative(critical, 1 / slope, 1e-12, "critical load");
        Closeness.Relative(bow, (y1 - slope * d1) / slope, 1e-12, "bow");
    }

    // Bar of length l on rigid arms a with hinges behind them: equilibrium of the arm gives tan(ql/2) = 1/(qa); own derivation.
    [Theory]
    [InlineData(10)]
    [InlineData(150)]
    [InlineData(600)]
    public void Rigid_arms_shorten_the_bar_that_bends(double arm)
    {
        var end = new StrutEnd(Planar.Zero, EndSpring.Hinged, arm);
        var strut = new Strut(Section, Steel.Custom("S355", 355), Length + 2 * arm, end, end, Bow.None);
        double q = Math.Sqrt(CriticalLoad.Of(strut) / (210000 * Section.SecondMomentV));
        Closeness.Relative(1, Math.Tan(q * Length / 2) * q * arm, 1e-9, "tan(ql/2) q a");
    }
}
