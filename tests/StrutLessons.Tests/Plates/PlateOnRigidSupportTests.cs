using StrutLessons.Plates;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Plates;

/// <summary>Family G of the reference cases, and facts that hold for every gusset on a rigid support.</summary>
public class PlateOnRigidSupportTests(ITestOutputHelper output)
{
    private static readonly Lazy<List<(JointCase Case, GussetFlexibility Own)>> Flexible = new(() =>
        [.. JointCase.Of("G").Select(c => (c, PlateOnRigidSupport.Flexibility(c.Gusset())))]);

    private static readonly Lazy<List<(JointCase Case, GussetBuckling Own)>> Buckled = new(() =>
        [.. JointCase.Of("G").Select(c => (c, PlateOnRigidSupport.Buckling(c.Gusset())))]);

    private static readonly Lazy<List<(JointCase Case, GussetFlexibility Own)>> Compressed = new(() =>
        [.. JointCase.Of("G").Select(c => (c, PlateOnRigidSupport.FlexibilityUnder(c.Gusset(), c.Out("N_test_kN") * 1e3)))]);

    private static readonly Lazy<List<(GussetFlexibility Coarser, GussetFlexibility Finer)>> Refined = new(() =>
        [.. Flexible.Value.Select(r => (r.Own, PlateOnRigidSupport.Flexibility(r.Own.Plate, fineness: 8)))]);

    public static TheoryData<string> Entries => ["f_ww", "f_wtheta", "f_thetatheta", "f_omegaomega"];

    [Theory]
    [MemberData(nameof(Entries))]
    public void Compliances_agree_with_the_reference_cases(string entry) =>
        JointCase.AssertRatios(Flexible.Value.Select(r => (r.Case.Id, Entry(r.Own.Limit, entry) / r.Case.Out(entry))), 0.02, entry, output);

    [Theory]
    [InlineData("f_ww")]
    [InlineData("f_wtheta")]
    [InlineData("f_thetatheta")]
    public void Compliances_under_compression_agree_with_the_reference_cases(string entry) =>
        JointCase.AssertRatios(
            Compressed.Value.Select(r => (r.Case.Id, Entry(r.Own.Limit, entry) / r.Case.Out(entry + "_at_N_test"))), 0.02,
            entry + " at N", output);

    // Coupling with the roll across the strut vanishes for symmetric gussets, so it is measured against the direct terms.
    [Fact]
    public void Coupling_with_the_roll_agrees_with_the_reference_cases()
    {
        foreach (var (reference, own) in Flexible.Value)
        {
            double theta = reference.Out("f_thetatheta"), omega = reference.Out("f_omegaomega"), ww = reference.Out("f_ww");
            Closeness.Relative(reference.Out("f_thetaomega"), own.Limit.SlopePerTwist, 0.02, reference.Id, Math.Sqrt(theta * omega));
            Closeness.Relative(reference.Out("f_womega"), own.Limit.DeflectionPerTwist, 0.02, reference.Id, Math.Sqrt(ww * omega));
        }
    }

    [Fact]
    public void The_hinge_lies_where_the_reference_cases_have_it() =>
        JointCase.AssertRatios(
            Flexible.Value.Select(r =>
                (r.Case.Id, 1 + (r.Own.Limit.HingeDistance - r.Case.Out("hinge_from_bolts_mm")) / r.Own.Plate.FreeLength)),
            0.03, "1 + shift of the hinge/g", output);

    [Theory]
    [InlineData("Ncr_free_kN")]
    [InlineData("Ncr_guided_kN")]
    [InlineData("Ncr_wheld_kN")]
    public void Buckling_loads_agree_with_the_reference_cases(string load) =>
        JointCase.AssertRatios(
            Buckled.Value.Select(r => (r.Case.Id, Load(r.Own, load).Value / (r.Case.Out(load) * 1e3))), 0.03, load, output);

    // Judged by meshes of half the element size. Coarse and fine value may agree by chance, hence the floor of 0.1 %.
    [Fact]
    public void The_error_estimate_covers_the_error_of_the_fine_mesh()
    {
        foreach (var (coarser, finer) in Refined.Value)
        {
            double off = Math.Abs(coarser.Fine.SlopePerMoment / finer.Limit.SlopePerMoment - 1);
            Assert.True(off < coarser.SlopePerMoment.RelativeError + 1e-3, $"{coarser.Plate}: off {off}, estimate {coarser.SlopePerMoment.RelativeError}");
            Assert.True(coarser.SlopePerMoment.RelativeError < 0.015);
        }
    }

    [Fact]
    public void Gussets_converge_with_the_stated_order_in_the_mean()
    {
        var orders = Refined.Value.Select(r => Math.Log2(Math.Abs(
            (r.Coarser.Fine.SlopePerMoment - r.Coarser.Coarse.SlopePerMoment) / (r.Finer.Fine.SlopePerMoment - r.Finer.Coarse.SlopePerMoment)))).Order().ToList();
        output.WriteLine($"order: lower quartile {orders[6]:F2}, median {orders[12]:F2}, upper quartile {orders[18]:F2}");
        Assert.InRange(orders[12], MeshEstimate.CornerOrder - 0.3, MeshEstimate.SmoothOrder);
    }

    // A strip as wide as its patch and of the length of its width: joints between D b/g and its anticlastic softening (reference study: 0.99 to 0.93 D b/g).
    [Theory]
    [InlineData(0.25, 0.99)]
    [InlineData(3, 0.93)]
    public void A_plain_strip_has_nearly_its_beam_stiffness(double lengthOverWidth, double share)
    {
        double width = 100, free = lengthOverWidth * width;
        var flexibility = PlateOnRigidSupport.Flexibility(new(10, width / 2, width / 2, width, free, 50, 0)).Limit;
        Closeness.Relative(share, flexibility.RotationalStiffness * free / (PlateMaterial.Steel.Rigidity(10) * width), 0.01, "share of D b/g");
    }

    // Euler's cantilever column, K = 2, for a slender strip without lateral contraction: N = π² E I/(2 g)².
    [Fact]
    public void A_slender_strip_buckles_as_an_Euler_column()
    {
        const double width = 40, free = 800, thickness = 6;
        var material = new PlateMaterial(210_000, 0);
        var strip = new GussetPlate(thickness, width / 2, width / 2, width, free, 1, 0);
        double euler = Math.PI * Math.PI * material.YoungsModulus * width * Math.Pow(thickness, 3) / 12 / (4 * free * free);
        Closeness.Relative(euler, PlateOnRigidSupport.Buckling(strip, material).Free.Value, 0.005, "free buckling load");
        Closeness.Relative(4 * euler, PlateOnRigidSupport.Buckling(strip, material).Guided.Value, 0.005, "guided buckling load");
    }

    [Fact]
    public void Compression_softens_and_tension_stiffens()
    {
        var plate = JointCase.Of("G").First().Gusset();
        double at0 = PlateOnRigidSupport.Flexibility(plate).Limit.SlopePerMoment;
        Assert.True(PlateOnRigidSupport.FlexibilityUnder(plate, 100_000).Limit.SlopePerMoment > at0);
        Assert.True(PlateOnRigidSupport.FlexibilityUnder(plate, -100_000).Limit.SlopePerMoment < at0);
        Closeness.Relative(at0, PlateOnRigidSupport.FlexibilityUnder(plate, 0).Limit.SlopePerMoment, 1e-9, "without force");
    }

    [Fact]
    public void A_mirrored_gusset_bends_alike()
    {
        var plate = JointCase.Of("G").First(c => c.In("b_left") < c.In("b_right") && c.In("alpha_deg") == 90).Gusset();
        var mirrored = plate with { Left = plate.Right, Right = plate.Left };
        var (one, other) = (PlateOnRigidSupport.Flexibility(plate).Limit, PlateOnRigidSupport.Flexibility(mirrored).Limit);
        Closeness.Relative(one.SlopePerMoment, other.SlopePerMoment, 1e-9, "slope per moment");
        Closeness.Relative(one.SlopePerTwist, -other.SlopePerTwist, 1e-7, "slope per twist");
    }

    [Fact]
    public void The_field_can_be_drawn()
    {
        var plate = JointCase.Of("G").First(c => c.In("alpha_deg") == 60).Gusset();
        var own = PlateOnRigidSupport.Flexibility(plate);
        var field = own.UnitMoment;
        Assert.All(field.Quads, q => Assert.InRange(Math.Max(Math.Max(q.A, q.B), Math.Max(q.C, q.D)), 0, field.X.Count - 1));
        double area = field.Quads.Sum(q => 0.5 * (
            (field.X[q.C] - field.X[q.A]) * (field.Y[q.D] - field.Y[q.B]) - (field.X[q.D] - field.X[q.B]) * (field.Y[q.C] - field.Y[q.A])));
        double mean = (plate.Right - plate.Left) / 2 / Math.Tan(plate.Angle);
        double end = plate.FreeLength + plate.GroupLength + plate.EndDistance;
        Closeness.Relative((plate.Left + plate.Right) * (end - mean), area, 1e-9, "area of the gusset");
        Assert.Contains(field.Deflection, w => Math.Abs(w / own.Fine.DeflectionPerMoment - 1) < 1e-9);
    }

    private static double Entry(BoltFlexibility f, string name) => name switch
    {
        "f_ww" => f.DeflectionPerForce,
        "f_wtheta" => f.DeflectionPerMoment,
        "f_thetatheta" => f.SlopePerMoment,
        _ => f.RollPerTwist,
    };

    private static MeshEstimate Load(GussetBuckling b, string name) =>
        name == "Ncr_free_kN" ? b.Free : name == "Ncr_guided_kN" ? b.Guided : b.Held;
}
