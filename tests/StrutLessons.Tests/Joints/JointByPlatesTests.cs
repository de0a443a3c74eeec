using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Sections;
using StrutLessons.Torsion;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Joints;

/// <summary>The plate-analysis twins of the hand formulas, from the same inputs, against the reference cases (independent solver).</summary>
public class JointByPlatesTests(ITestOutputHelper output)
{
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();
    private static readonly BoltLine Bolts = new(45, 2, 20, 60, 40);
    private static readonly Gusset Plate = Gusset.Symmetric(10, 160, 65, 40);
    private static readonly Girder Ipe360 = GirderCatalogue.Find("IPE 360");

    public static TheoryData<string> OnRigidSupport => JointCase.Ids("G");

    public static TheoryData<string> OnFlange => JointCase.Ids("F");

    public static TheoryData<string> OnWeb => JointCase.Ids("W");

    [Theory]
    [MemberData(nameof(OnRigidSupport))]
    public void On_a_rigid_support_spring_and_hinge_agree_with_the_reference_cases(string id)
    {
        JointCase c = JointCase.Find(id);
        JointByPlates own = Alone(c).PlateAnalysis();
        Closeness.Relative(c.Out("c_phi_kNm_per_rad") * 1e6, own.Hinge.OutOfPlaneStiffness, 0.02, id + " c");
        Closeness.Relative(c.Out("hinge_from_bolts_mm"), own.Hinge.HingeDistance, 0.03, id + " s_h", own.Plate.FreeLength);
    }

    [Theory]
    [MemberData(nameof(OnFlange))]
    public void On_a_flange_the_parts_and_the_joint_agree_with_the_reference_cases(string id) =>
        Check(JointCase.Find(id), GussetOnGirderFlange.HandFormula(Alone(JointCase.Find(id)), Support(JointCase.Find(id))).Compare(),
            "gusset_on_girder_flanges_held", 0.97, 1.09);

    [Theory]
    [MemberData(nameof(OnWeb))]
    public void On_a_web_the_parts_and_the_joint_agree_with_the_reference_cases(string id)
    {
        JointCase c = JointCase.Find(id);
        WebJoint hand = GussetOnGirderWeb.HandFormula(Alone(c), Support(c), new WebSeat(c.In("y0_from_bottom_flange_midplane")));
        JointComparison both = hand.Compare();
        Check(c, both, "gusset_on_web_flanges_held", 0.98, 1.20);
        if (hand.OffMidDepth < 1)
        {
            Assert.Equal(0, both.Plate.Hinge.ImposedRotationPerNewton);
            return;
        }

        // The plate analysis counts w along the push and θ = dw/dy; below mid-depth θ > 0 moves the gusset's free end up, towards mid-depth.
        bool below = c.In("y0_from_bottom_flange_midplane") < c.In("h_s") / 2;
        double want = c.Out("web_full_girder", "f_wtheta") * (below ? 1 : -1) * hand.InclinationFactor;
        double size = hand.Web.Coupling + hand.Global.Compliance * hand.OffMidDepth;
        Closeness.Relative(want, both.Plate.Hinge.ImposedRotationPerNewton, 0.02, id + " imposed rotation", size);
    }

    [Fact]
    public void The_twin_from_the_strut_end_equals_the_twin_of_its_hand_formula()
    {
        double one = GussetOnRigidSupport.PlateAnalysis(Plate, L80, Bolts).Hinge.OutOfPlaneStiffness;
        Assert.Equal(one, GussetOnRigidSupport.HandFormula(Plate, L80, Bolts).PlateAnalysis().Hinge.OutOfPlaneStiffness);
        Assert.Equal(one, GussetOnRigidSupport.PlateAnalysis(Plate, 80, 60).Hinge.OutOfPlaneStiffness);
        var support = new GirderSupport(Ipe360, 5600, 2800);
        Assert.Equal(
            GussetOnGirderFlange.HandFormula(Plate, L80, Bolts, support).PlateAnalysis().Hinge.OutOfPlaneStiffness,
            GussetOnGirderFlange.PlateAnalysis(Plate, L80, Bolts, support).Hinge.OutOfPlaneStiffness);
        WebSeat seat = WebSeat.AtMidDepth(Ipe360);
        Assert.Equal(
            GussetOnGirderWeb.HandFormula(Plate, L80, Bolts, support, seat).PlateAnalysis().Hinge.OutOfPlaneStiffness,
            GussetOnGirderWeb.PlateAnalysis(Plate, L80, Bolts, support, seat).Hinge.OutOfPlaneStiffness);
    }

    [Fact]
    public void Stiffeners_take_the_local_part_away_and_a_held_girder_the_global_part()
    {
        JointByPlates Of(bool stiffened, bool held) =>
            GussetOnGirderFlange.PlateAnalysis(Plate, L80, Bolts, new GirderSupport(Ipe360, 5600, 2800, stiffened: stiffened, heldAgainstTwist: held));
        JointByPlates all = Of(false, false), stiff = Of(true, false), heldGirder = Of(false, true), both = Of(true, true);
        Closeness.Relative(all.OnRigidSupport.Limit.SlopePerMoment, both.Hinge.Compliance, 1e-12, "rigid");
        Closeness.Relative(all.FlangesHeld!.Limit.SlopePerMoment, heldGirder.Hinge.Compliance, 1e-12, "held");
        double vlasov = new GirderSupport(Ipe360, 5600, 2800).TwistCompliance;
        Closeness.Relative(all.OnRigidSupport.Limit.SlopePerMoment + vlasov, stiff.Hinge.Compliance, 1e-12, "stiffened");
        // Local and closed-form global part count the flange's torsion twice: 1 to 8 % too soft, here in terms of the girder.
        Assert.InRange((all.FlangesHeld.Limit.SlopePerMoment - all.OnRigidSupport.Limit.SlopePerMoment + vlasov)
            / (all.Hinge.Compliance - all.OnRigidSupport.Limit.SlopePerMoment), 1.0, 1.09);
    }

    [Fact]
    public void Girder_ends_that_cannot_warp_are_taken_from_the_closed_form()
    {
        var fixedEnds = new GirderSupport(Ipe360, 5600, 2800, WarpingEnd.WarpingFixed, WarpingEnd.WarpingFixed);
        JointByPlates own = GussetOnGirderFlange.PlateAnalysis(Plate, L80, Bolts, fixedEnds);
        Assert.Null(own.WholeGirder);
        Assert.Equal(fixedEnds.TwistCompliance, own.Contributions[2].Compliance);
        Assert.Contains(own.Hinge.Notes, n => n.Contains("closed form", StringComparison.Ordinal));
    }

    [Fact]
    public void The_width_of_the_foot_stiffens_the_web_as_in_the_rule()
    {
        var support = new GirderSupport(Ipe360, 5600, 2800);
        JointByPlates line = GussetOnGirderWeb.PlateAnalysis(Plate, L80, Bolts, support, WebSeat.AtMidDepth(Ipe360));
        JointByPlates foot = GussetOnGirderWeb.PlateAnalysis(Plate, L80, Bolts, support, WebSeat.AtMidDepth(Ipe360, 10));
        Closeness.Relative(1 + 80 / Ipe360.FlangeSpacing, line.Contributions[1].Compliance / foot.Contributions[1].Compliance, 1e-9, "1 + 8e/h_s");
    }

    [Fact]
    public void One_bolt_is_a_pin_whatever_the_plate_could_hold()
    {
        JointComparison one = GussetOnRigidSupport.HandFormula(Plate, L80, new BoltLine(45, 1, 20, 0, 40)).Compare();
        Assert.Equal(0, one.Plate.Hinge.OutOfPlaneStiffness);
        Assert.InRange(one.StiffnessRatio, 0.86, 1.06);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(30)]
    public void A_formula_outside_its_range_names_the_plate_analysis(double inclination)
    {
        var leaning = Gusset.Symmetric(10, 160, 150, 40, 0, inclination);
        GussetFormula hand = GussetOnRigidSupport.HandFormula(leaning, 80, 60);
        Assert.Contains(hand.Notes, n => n.Contains("PlateAnalysis()", StringComparison.Ordinal));
        var support = new GirderSupport(Ipe360, 5600, 2800);
        Assert.Contains(GussetOnGirderFlange.HandFormula(hand, support).Hinge.Notes, n => n.Contains("PlateAnalysis()", StringComparison.Ordinal));
        Assert.Contains(GussetOnGirderWeb.HandFormula(hand, support, new WebSeat(30)).Hinge.Notes, n => n.StartsWith("a/h_s", StringComparison.Ordinal)
            && n.Contains("PlateAnalysis()", StringComparison.Ordinal));
    }

    private void Check(JointCase c, JointComparison both, string heldGroup, double least, double most)
    {
        JointByPlates own = both.Plate;
        double whole = c.Out("gusset_on_full_girder", "f_thetatheta"), held = c.Out(heldGroup, "f_thetatheta"), alone = c.Out("gusset_alone_f_thetatheta");
        Closeness.Relative(whole, own.Hinge.Compliance, 0.02, c.Id + " whole");
        Closeness.Relative(alone, own.Contributions[0].Compliance, 0.02, c.Id + " gusset");
        Closeness.Relative(held - alone, own.Contributions[1].Compliance, 0.02, c.Id + " local", held);
        Closeness.Relative(whole - held, own.Contributions[2].Compliance, 0.02, c.Id + " global", whole);
        Closeness.Relative(c.Out("gusset_on_full_girder", "f_wtheta") / whole, own.Hinge.HingeDistance, 0.03, c.Id + " s_h");
        // In the limit of the meshes nothing is left over: f_ww is that of the whole.
        Closeness.Relative(own.WholeGirder!.Limit.DeflectionPerForce,
            own.Hinge.TransverseCompliance + own.Hinge.ElasticCentre * own.Hinge.ElasticCentre * own.Hinge.Compliance, 0.01, c.Id + " f_ww");
        // The range stated for the hand formula, with the reference solver's own 2 %.
        Assert.InRange(both.StiffnessRatio, least - 0.02, most + 0.02);
        output.WriteLine($"{c.Id}: stiffness hand/plate {both.StiffnessRatio:F3}, hinge {both.HingeDistanceRatio:F3}, parts "
            + string.Join(", ", both.Parts.Select(p => $"{p.Name} {p.StiffnessRatio:F3}")));
    }

    private static GussetFormula Alone(JointCase c)
    {
        (Gusset plate, double width, double length) = c.Gusset();
        return GussetOnRigidSupport.HandFormula(plate, width, length);
    }

    private static GirderSupport Support(JointCase c) =>
        new(new Girder(c.Input.GetProperty("section").GetString()!, c.In("h"), c.In("b"), c.In("tw"), c.In("tf"), 0), c.In("L_girder"), c.In("a"));
}
