using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Member;

/// <summary>Gusset, angle, gusset as three segments: limits that any textbook has, and what a spring in their place gets right.</summary>
public class ThreeSegmentTests(ITestOutputHelper output)
{
    private const double Bending = 2e10, Length = 2000;
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();

    private static ThreeSegmentStrut Plane(GussetSegment one, GussetSegment two) => ThreeSegmentStrut.InOnePlane(Bending, Length, one, two);

    // Euler's column with clamped ends, 4 π² EI/L², over the length from weld to weld.
    [Theory]
    [InlineData(65, 65)]
    [InlineData(300, 300)]
    [InlineData(40, 250)]
    public void A_gusset_as_stiff_as_the_angle_makes_one_clamped_column(double g1, double g2)
    {
        double whole = Length + g1 + g2;
        Closeness.Relative(4 * Math.PI * Math.PI * Bending / (whole * whole), Plane(new(g1, Bending), new(g2, Bending)).CriticalLoad, 1e-10, "N_cr");
    }

    [Fact]
    public void A_rigid_gusset_clamps_the_angle_at_the_bolts()
    {
        var rigid = new GussetSegment(65, 1e9 * Bending);
        Closeness.Relative(4 * Math.PI * Math.PI * Bending / (Length * Length), Plane(rigid, rigid).CriticalLoad, 1e-6, "N_cr");
    }

    // Two columns of the length of the gusset with one end clamped and the other guided by the stiff angle: π² EI_g/g².
    [Fact]
    public void Between_very_soft_gussets_the_angle_moves_sideways_as_one_piece()
    {
        var soft = new GussetSegment(65, 1e-7 * Bending);
        Closeness.Relative(Math.PI * Math.PI * soft.BendingStiffness / (65 * 65), Plane(soft, soft).CriticalLoad, 1e-4, "N_cr");
    }

    // Symmetric mode of a stepped column: no shear in the middle, slope and moment continuous at the step: k tan(kg) + q tan(qL/2) = 0; own derivation.
    [Theory]
    [InlineData(65, 0.02)]
    [InlineData(65, 0.2)]
    [InlineData(150, 0.5)]
    [InlineData(150, 3)]
    public void Equal_gussets_fulfil_the_equation_of_the_stepped_column(double g, double share)
    {
        var gusset = new GussetSegment(g, share * Bending);
        double load = Plane(gusset, gusset).CriticalLoad, k = Math.Sqrt(load / gusset.BendingStiffness), q = Math.Sqrt(load / Bending);
        // Written without poles, as a share of its slope.
        double left = k * Math.Sin(k * g) * Math.Cos(q * Length / 2), right = q * Math.Sin(q * Length / 2) * Math.Cos(k * g);
        Assert.InRange((left + right) / (Math.Abs(left) + Math.Abs(right) + 1e-12), -1e-6, 1e-6);
        Assert.InRange(q * Length / 2, Math.PI / 2, Math.PI);
    }

    // The load's couples N e at both steps turn a symmetric line: θ₁ (EI_g k cot kg + EI q cot qL/2) = −N e; own derivation.
    [Theory]
    [InlineData(65, 0.05, 0.4)]
    [InlineData(65, 1, 0.7)]
    [InlineData(200, 0.3, 0.9)]
    public void Equal_eccentricities_turn_the_bolts_as_the_stepped_column_says(double g, double share, double part)
    {
        var gusset = new GussetSegment(g, share * Bending);
        ThreeSegmentStrut model = ThreeSegmentStrut.InOnePlane(Bending, Length, gusset, gusset, 28, 28);
        double load = part * model.CriticalLoad, k = Math.Sqrt(load / gusset.BendingStiffness), q = Math.Sqrt(load / Bending);
        ThreeSegmentSolution s = model.Under(load);
        double want = -load * 28 / (gusset.BendingStiffness * k / Math.Tan(k * g) + Bending * q / Math.Tan(q * Length / 2));
        Closeness.Relative(want, s.SlopeBolt1, 1e-9, "slope");
        Closeness.Relative(-want, s.SlopeBolt2, 1e-9, "slope at end 2");
        // Gusset without shear: w = A (1 − cos ks). Bar: B (cos q(x − L/2) − cos qL/2) on top of it.
        double w1 = want / (k * Math.Sin(k * g)) * (1 - Math.Cos(k * g)), middle = w1 + want / (q * Math.Sin(q * Length / 2)) * (1 - Math.Cos(q * Length / 2));
        Closeness.Relative(w1, s.DeflectionBolt1, 1e-9, "bolt");
        Closeness.Relative(middle, s.Deflection(g + Length / 2), 1e-9, "middle");
    }

    [Fact]
    public void The_deflected_line_is_continuous_and_held_at_the_welds()
    {
        ThreeSegmentStrut model = ThreeSegmentStrut.InOnePlane(Bending, Length, new(65, 0.1 * Bending), new(120, 0.3 * Bending), 25, -10, 6);
        ThreeSegmentSolution s = model.Under(0.6 * model.CriticalLoad);
        Assert.Equal(0, s.Deflection(0), 12);
        Assert.Equal(0, s.Deflection(s.Length), 12);
        const double step = 1e-4;
        foreach ((double at, double w, double slope) in new[] { (65.0, s.DeflectionBolt1, s.SlopeBolt1), (65 + Length, s.DeflectionBolt2, s.SlopeBolt2) })
        {
            Assert.Equal(w, s.Deflection(at - 1e-9), 8);
            Assert.Equal(w, s.Deflection(at + 1e-9), 8);
            Closeness.Relative(slope, (w - s.Deflection(at - step)) / step, 1e-3, "slope before the bolt");
            Closeness.Relative(slope, (s.Deflection(at + step) - w) / step, 1e-3, "slope behind the bolt");
        }
    }

    // Two ways to the hinge model: two unknowns out of the plane here, four in the strut's own solver.
    [Theory]
    [InlineData(46e6, 30, 46e6, 30)]
    [InlineData(20e6, 0, 80e6, 65)]
    [InlineData(5e6, 65, 5e6, 65)]
    public void The_hinge_model_agrees_with_the_struts_own_solver(double c1, double a1, double c2, double a2)
    {
        JointHinge one = Hinge(c1, a1), two = Hinge(c2, a2);
        ThreeSegmentStrut model = ThreeSegmentStrut.Of(Gallery(one, two), new(65, 1e9), new(65, 1e9));
        Closeness.Relative(CriticalLoad.Of(Gallery(one, two)), model.CriticalLoadWith(one, two), 1e-9, "N_cr");
    }

    // Ranges of the project's plate analyses for two perpendicular gussets (0.97 to 1.00; 1.01 to 1.28; 0.79 to 0.99), here for plain strips of the same proportions.
    [Fact]
    public void Only_at_the_elastic_centre_the_spring_gives_the_critical_load_of_three_segments()
    {
        var ratios = new List<(double Centre, double Bolts, double Weld, double Twice)>();
        foreach (double length in new[] { 800.0, 2000, 4500 })
        {
            // Free length over bar length, 0.025 to 0.065 in the strut and gusset sizes of practice.
            foreach (double g in new[] { 0.025 * length, 0.04 * length, 0.065 * length })
            {
                foreach (double relative in new[] { 0.5, 1, 2, 4, 8 })
                {
                    // c L/EI of practice, and a second end twice as stiff.
                    var one = new GussetSegment(g, relative * Bending / length * g);
                    foreach (GussetSegment two in new[] { one, new GussetSegment(g, 2 * one.BendingStiffness) })
                    {
                        SpringPlaceComparison r = SpringPlaceComparison.Of(ThreeSegmentStrut.InOnePlane(Bending, length, one, two));
                        ratios.Add((r.RatioAt(SpringPlace.ElasticCentre), r.RatioAt(SpringPlace.BoltLine), r.RatioAt(SpringPlace.Weld), r.CountedTwice / r.ThreeSegments));
                    }
                }
            }
        }

        output.WriteLine($"elastic centre {ratios.Min(r => r.Centre):F3} to {ratios.Max(r => r.Centre):F3}, mean {ratios.Average(r => r.Centre):F3}");
        output.WriteLine($"bolt line {ratios.Min(r => r.Bolts):F3} to {ratios.Max(r => r.Bolts):F3}, mean {ratios.Average(r => r.Bolts):F3}");
        output.WriteLine($"weld {ratios.Min(r => r.Weld):F3} to {ratios.Max(r => r.Weld):F3}, mean {ratios.Average(r => r.Weld):F3}");
        output.WriteLine($"counted twice {ratios.Min(r => r.Twice):F3} to {ratios.Max(r => r.Twice):F3}, mean {ratios.Average(r => r.Twice):F3}");
        Assert.All(ratios, r =>
        {
            Assert.InRange(Math.Round(r.Centre, 2), 0.97, 1.00);
            Assert.InRange(Math.Round(r.Bolts, 2), 1.01, 1.28);
            Assert.InRange(Math.Round(r.Weld, 2), 0.79, 0.99);
            Assert.True(r.Twice < r.Centre, "reducing the spring as well only adds to the error");
        });
    }

    // Series of x cot x: c − N g/3; arm of half the length: c − N g/2.
    [Fact]
    public void The_rigid_arm_already_takes_the_softening_of_the_strip_and_both_take_it_twice()
    {
        var gusset = new GussetSegment(65, 1e9);
        GussetSoftening s = GussetSoftening.Of(gusset, 1e-4 * gusset.FreeBucklingLoad);
        double unit = s.Load * gusset.Length;
        Closeness.Relative(1.0 / 3, (gusset.SpringStiffness - s.Strip) / unit, 1e-4, "strip");
        Closeness.Relative(1.0 / 2, (gusset.SpringStiffness - s.ByArm) / unit, 1e-9, "arm");
        Closeness.Relative(5.0 / 6, (gusset.SpringStiffness - s.CountedTwice) / unit, 1e-4, "twice");
        // At every load up to the strip's own buckling the arm is on the safe side of it until the strip turns down towards zero.
        foreach (double part in new[] { 0.05, 0.3, 0.6 })
        {
            GussetSoftening at = GussetSoftening.Of(gusset, part * gusset.FreeBucklingLoad);
            Assert.True(at.ByArm <= at.Strip && at.CountedTwice < at.ByArm);
        }

        Assert.Equal(0, gusset.StiffnessUnder(gusset.FreeBucklingLoad) / gusset.SpringStiffness, 9);
    }

    [Fact]
    public void The_hinge_model_bends_the_gallery_strut_as_the_three_segments_do()
    {
        GussetFormula gusset = GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 65, 40), 80, 60);
        GussetSegment segment = GussetSegment.Of(gusset);
        Closeness.Relative(gusset.Stiffness, segment.SpringStiffness, 1e-12, "c");
        Strut hinged = Gallery(segment.Hinge, segment.Hinge);
        ThreeSegmentStrut model = ThreeSegmentStrut.Of(hinged, segment, segment);
        double load = 0.6 * model.CriticalLoad;
        SecondOrderSolution spring = SecondOrderSolution.Of(hinged, load);
        ThreeSegmentSolution exact = model.Under(load);
        double middle = exact.Deflection(65 + hinged.BarLength / 2);
        output.WriteLine($"N_cr hinge/three {CriticalLoad.Of(hinged) / model.CriticalLoad:F4}, middle {spring.Deflection(hinged.BarLength / 2).Z / middle:F4}, slope {spring.RotationEnd1.Z / exact.SlopeBolt1:F4}");
        Closeness.Relative(middle, spring.Deflection(hinged.BarLength / 2).Z, 0.05, "middle");
        Closeness.Relative(exact.SlopeBolt1, spring.RotationEnd1.Z, 0.05, "slope");
    }

    private static JointHinge Hinge(double stiffness, double arm) => JointHinge.InSeries([new("gusset", 1 / stiffness, arm, "test")], 2);

    private static Strut Gallery(JointHinge one, JointHinge two)
    {
        var e = new Planar(22, 28);
        return new(L80, SteelGrade.S355.ForThickness(8), 2020 + one.HingeDistance + two.HingeDistance,
            new StrutEnd(e, new EndSpring(double.PositiveInfinity, one.OutOfPlaneStiffness), one.HingeDistance),
            new StrutEnd(e, new EndSpring(double.PositiveInfinity, two.OutOfPlaneStiffness), two.HingeDistance));
    }
}
