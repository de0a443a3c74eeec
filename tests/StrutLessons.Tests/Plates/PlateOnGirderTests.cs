using StrutLessons.Plates;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Plates;

/// <summary>Families F and W of the reference cases, gusset and girder together.</summary>
public class PlateOnGirderTests(ITestOutputHelper output)
{
    private static readonly Lazy<List<(JointCase Case, GirderJointFlexibility Held, GirderJointFlexibility Full)>> Results = new(() =>
    [
        .. JointCase.Of("F").Select(c => (
            c, PlateOnGirder.OnFlangeHeld(c.Gusset(), c.Girder()), PlateOnGirder.OnFlange(c.Gusset(), c.Girder(), c.Span()))),
        .. JointCase.Of("W").Select(c => (
            c, PlateOnGirder.OnWebHeld(c.Gusset(), c.Girder(), c.Height), PlateOnGirder.OnWeb(c.Gusset(), c.Girder(), c.Height, c.Span()))),
    ]);

    [Theory]
    [InlineData("F", "f_ww")]
    [InlineData("F", "f_wtheta")]
    [InlineData("F", "f_thetatheta")]
    [InlineData("W", "f_ww")]
    [InlineData("W", "f_wtheta")]
    [InlineData("W", "f_thetatheta")]
    public void Compliances_agree_with_the_reference_cases(string family, string entry)
    {
        JointCase.AssertRatios(
            Of(family).Select(r => (r.Case.Id, Pick(r.Held.Limit, entry) / r.Case.Out($"{HeldGroup(family)}.{entry}"))), 0.02,
            $"{family} flanges held, {entry}", output);
        JointCase.AssertRatios(
            Of(family).Select(r => (r.Case.Id, Pick(r.Full.Limit, entry) / r.Case.Out($"gusset_on_full_girder.{entry}"))), 0.02,
            $"{family} full girder, {entry}", output);
    }

    [Theory]
    [InlineData("F")]
    [InlineData("W")]
    public void The_hinge_lies_where_the_reference_cases_have_it(string family) =>
        JointCase.AssertRatios(
            Of(family).Select(r => (r.Case.Id, 1 + (r.Held.Limit.HingeDistance
                - r.Case.Out($"{HeldGroup(family)}.hinge_from_bolts_mm")) / r.Held.Plate.FreeLength)),
            0.03, $"{family} 1 + shift of the hinge/g", output);

    [Theory]
    [InlineData("F")]
    [InlineData("W")]
    public void The_same_gusset_on_a_rigid_support_agrees_with_the_reference_cases(string family) =>
        JointCase.AssertRatios(
            Of(family).Select(r => (r.Case.Id,
                PlateOnRigidSupport.Flexibility(r.Held.Plate).Limit.SlopePerMoment / r.Case.Out("gusset_alone_f_thetatheta"))),
            0.02, $"{family} gusset alone", output);

    [Fact]
    public void Freeing_the_flanges_never_stiffens_the_joint() =>
        Assert.All(Results.Value, r => Assert.True(r.Full.Limit.SlopePerMoment > r.Held.Limit.SlopePerMoment));

    [Fact]
    public void On_a_very_stout_girder_the_gusset_behaves_as_on_a_rigid_support()
    {
        var gusset = JointCase.Of("F").First().Gusset();
        var stout = new GirderShape(400, 300, 200, 100);
        double rigid = PlateOnRigidSupport.Flexibility(gusset).Limit.SlopePerMoment;
        Closeness.Relative(rigid, PlateOnGirder.OnFlangeHeld(gusset, stout).Limit.SlopePerMoment, 0.01, "on the flange");
        Closeness.Relative(rigid, PlateOnGirder.OnWebHeld(gusset, stout, 150).Limit.SlopePerMoment, 0.01, "on the web");
    }

    [Fact]
    public void Gusset_and_web_can_be_drawn_together()
    {
        var joint = Results.Value.First(r => r.Case.Family == "F").Full;
        // The root of the gusset rests on the top of the web: y = 0 there, the web ends at its full height.
        Assert.Equal(0, joint.UnitMomentGusset.Y.Min(), 1e-9);
        Assert.Equal(joint.Girder.WebHeight, joint.UnitMomentGirder.Y.Max(), 1e-9);
        Assert.Equal(joint.Span!.Length, joint.UnitMomentGirder.X.Max() - joint.UnitMomentGirder.X.Min(), 1e-6);
        Assert.Equal(joint.UnitMomentGirder.X.Count, joint.UnitMomentGirder.Deflection.Count);
    }

    private static IEnumerable<(JointCase Case, GirderJointFlexibility Held, GirderJointFlexibility Full)> Of(string family) =>
        Results.Value.Where(r => r.Case.Family == family);

    private static string HeldGroup(string family) =>
        family == "F" ? "gusset_on_girder_flanges_held" : "gusset_on_web_flanges_held";

    private static double Pick(BoltFlexibility f, string entry) => entry switch
    {
        "f_ww" => f.DeflectionPerForce,
        "f_wtheta" => f.DeflectionPerMoment,
        _ => f.SlopePerMoment,
    };
}
