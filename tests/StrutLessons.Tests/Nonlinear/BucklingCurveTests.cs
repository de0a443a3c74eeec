using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Nonlinear;

public class BucklingCurveTests
{
    /// <summary>
    /// Hinged, concentric, bow L/1000 to both sides, residual stress; smaller peak load over curve b (EN 1993-1-1:2005, 6.3.1.2, α = 0.34).
    /// The expected ratios are those of the independent rod behind the reference cases.
    /// </summary>
    [Theory]
    [InlineData(235, 0.4, 0.985)]
    [InlineData(235, 0.6, 0.987)]
    [InlineData(235, 0.8, 1.006)]
    [InlineData(235, 1.0, 1.035)]
    [InlineData(235, 1.2, 1.053)]
    [InlineData(235, 1.4, 1.057)]
    [InlineData(235, 1.7, 1.054)]
    [InlineData(235, 2.0, 1.048)]
    [InlineData(355, 0.4, 1.009)]
    [InlineData(355, 0.6, 1.036)]
    [InlineData(355, 0.8, 1.077)]
    [InlineData(355, 1.0, 1.114)]
    [InlineData(355, 1.2, 1.123)]
    [InlineData(355, 1.4, 1.114)]
    [InlineData(355, 1.7, 1.096)]
    [InlineData(355, 2.0, 1.082)]
    public void A_concentric_angle_with_bow_and_residual_stress_lies_close_to_curve_b(double yield, double slenderness, double expected)
    {
        ReferenceSection section = ReferenceSection.Angle(90, 90, 9);
        double length = slenderness * Math.PI * Math.Sqrt(210000 / yield) * Math.Sqrt(section.Iv / section.Area);
        var hinge = new ReferenceEnd(Planar.Zero, 0, 0);
        double Peak(double sign) => ReferenceAnalysis.Follow(
            new ReferenceStrut(section, ReferenceSteel.WithYield(yield), length, sign * length / 1000 * section.MinorDirection, 58.75, hinge, hinge),
            RodMesh.Standard, PathSettings.PeakOnly).PeakLoad;
        double phi = 0.5 * (1 + 0.34 * (slenderness - 0.2) + slenderness * slenderness);
        double chi = 1 / (phi + Math.Sqrt(phi * phi - slenderness * slenderness));
        double ratio = Math.Min(Peak(1), Peak(-1)) / (chi * section.Area * yield);
        Assert.InRange(ratio, expected - 0.0015, expected + 0.0015);
    }
}
