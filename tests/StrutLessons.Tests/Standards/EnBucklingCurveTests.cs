using StrutLessons.Standards;

namespace StrutLessons.Tests.Standards;

public class EnBucklingCurveTests
{
    /// <summary>Curve b as tabulated in the ECCS and EN tables, four digits (from memory; equal to the recomputed formula).</summary>
    [Theory]
    [InlineData(0.3, "0.9641")]
    [InlineData(0.5, "0.8842")]
    [InlineData(0.7, "0.7837")]
    [InlineData(0.9, "0.6612")]
    [InlineData(1.0, "0.5970")]
    [InlineData(1.2, "0.4781")]
    [InlineData(1.4, "0.3817")]
    [InlineData(1.6, "0.3079")]
    [InlineData(1.8, "0.2521")]
    [InlineData(2.0, "0.2095")]
    [InlineData(2.5, "0.1397")]
    [InlineData(3.0, "0.0994")]
    public void Curve_b_has_its_tabulated_values(double slenderness, string printed) =>
        Printed.Agrees(printed, EnBucklingCurve.ReductionFactor(slenderness), $"χ({slenderness})");

    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(0.2)]
    public void A_stocky_strut_is_not_reduced(double slenderness) => Assert.Equal(1, EnBucklingCurve.ReductionFactor(slenderness));

    /// <summary>The formula solves the Ayrton–Perry equation (1 − χ)(1 − χλ̄²) = ηχ with η = α(λ̄ − 0.2).</summary>
    [Fact]
    public void The_factor_solves_the_Perry_equation()
    {
        foreach (double alpha in new[] { 0.13, 0.21, 0.34, 0.49, 0.76 })
        {
            for (double l = 0.25; l < 4; l += 0.25)
            {
                double chi = EnBucklingCurve.ReductionFactor(l, alpha);
                Closeness.Relative(alpha * (l - 0.2) * chi, (1 - chi) * (1 - chi * l * l), 1e-12, $"Perry at {l}", scale: 1);
            }
        }
    }
}
