using StrutLessons.Plates;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Plates;

/// <summary>Family W of the reference cases, girder alone.</summary>
public class WebFootTests(ITestOutputHelper output)
{
    private static readonly Lazy<List<(JointCase Case, WebFootResult Held, WebFootResult Full)>> Results = new(() =>
        [.. JointCase.Of("W").Select(c => (
            c, WebFoot.HeldFlanges(c.Girder(), c.In("b_g"), c.Height), WebFoot.FullGirder(c.Girder(), c.In("b_g"), c.Height, c.Span())))]);

    [Theory]
    [InlineData("f_ww")]
    [InlineData("f_thetatheta")]
    public void Flexibilities_agree_with_the_reference_cases(string entry)
    {
        JointCase.AssertRatios(
            Results.Value.Select(r => (r.Case.Id, Pick(r.Held.Limit, entry) / r.Case.Out("web_local_flanges_held." + entry))),
            0.02, entry + " flanges held", output);
        JointCase.AssertRatios(
            Results.Value.Select(r => (r.Case.Id, Pick(r.Full.Limit, entry) / r.Case.Out("web_full_girder." + entry))),
            0.02, entry + " full girder", output);
    }

    // At mid-height the coupling vanishes; elsewhere it is compared as it stands.
    [Fact]
    public void The_coupling_of_shift_and_slope_agrees_with_the_reference_cases()
    {
        var off = Results.Value.Where(r => r.Case.Out("web_local_flanges_held.f_wtheta") != 0).ToList();
        Assert.NotEmpty(off);
        JointCase.AssertRatios(
            off.Select(r => (r.Case.Id, r.Held.Limit.DeflectionPerMoment / r.Case.Out("web_local_flanges_held.f_wtheta"))), 0.02,
            "f_wtheta flanges held", output);
        JointCase.AssertRatios(
            off.Select(r => (r.Case.Id, r.Full.Limit.DeflectionPerMoment / r.Case.Out("web_full_girder.f_wtheta"))), 0.02,
            "f_wtheta full girder", output);
    }

    [Fact]
    public void At_mid_height_a_force_only_pushes_and_a_moment_only_turns() =>
        Assert.All(Results.Value.Where(r => r.Case.Out("web_local_flanges_held.f_wtheta") == 0), r =>
            Closeness.Relative(0, r.Held.Limit.DeflectionPerMoment, 1e-9, r.Case.Id,
                Math.Sqrt(r.Held.Limit.DeflectionPerForce * r.Held.Limit.SlopePerMoment)));

    [Fact]
    public void A_foot_and_its_mirror_image_about_mid_height_are_equally_flexible()
    {
        var girder = new GirderShape(300, 150, 7.1, 10.7);
        var (low, high) = (WebFoot.HeldFlanges(girder, 160, 80).Limit, WebFoot.HeldFlanges(girder, 160, girder.WebHeight - 80).Limit);
        Closeness.Relative(low.SlopePerMoment, high.SlopePerMoment, 1e-8, "slope per moment");
        Closeness.Relative(low.DeflectionPerMoment, -high.DeflectionPerMoment, 1e-8, "deflection per moment");
    }

    // Beam theory: a strip on two pins turned at mid-height by a moment M, slope M h_s/(12 E I). Thin flanges twist with the web,
    // so that under a long foot the web is a row of such strips of stiffness D.
    [Fact]
    public void Under_a_long_foot_and_thin_flanges_the_web_is_a_row_of_pinned_strips()
    {
        var girder = new GirderShape(300, 150, 10, 3);
        const double foot = 9000;
        double strips = girder.WebHeight / (12 * PlateMaterial.Steel.Rigidity(10) * foot);
        Closeness.Relative(strips, WebFoot.HeldFlanges(girder, foot, girder.WebHeight / 2).Limit.SlopePerMoment, 0.02, "slope per moment");
    }

    private static double Pick(WebFlexibility f, string entry) => entry == "f_ww" ? f.DeflectionPerForce : f.SlopePerMoment;
}
