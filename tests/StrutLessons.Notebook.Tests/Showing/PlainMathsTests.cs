using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Tests.Shown;

public class PlainMathsTests
{
    [Theory]
    [InlineData(@"\frac{E t^3}{12 (1 - \nu^2)}", "E t³/(12(1 − ν²))")]
    [InlineData(@"\sqrt{\frac{A f_y}{N_{cr}}}", "√(A f_y/N_cr)")]
    [InlineData(@"\bar\lambda_v", "λ̄_v")]
    [InlineData(@"\tfrac{a + b}{c}", "(a + b)/c")]
    [InlineData(@"\frac{\pi^2 E I_v}{L^2}", "π² E I_v/L²")]
    [InlineData(@"-3 \cdot 10^{-5}", "−3 · 10⁻⁵")]
    [InlineData(@"22.4 \cdot (-0.7)", "22.4 · (−0.7)")]
    [InlineData(@"d''_{0u}(\tfrac{L}{2})", "d_0u″(L/2)")]
    [InlineData(@"\sin\alpha \cot \beta", "sin α cot β")]
    [InlineData(@"\left(\tfrac{I_y - I_z}{2}\right)^2", "((I_y − I_z)/2)²")]
    [InlineData(@"1\,234.5\,\mathrm{N/mm^{2}}", "1 234.5 N/mm²")]
    [InlineData(@"45^\circ", "45°")]
    [InlineData(@"\text{heel, 50 \%}", "heel, 50 %")]
    [InlineData(@"\max_{x} |\sigma|", "max_x |σ|")]
    public void A_formula_reads_as_one_line_of_text(string tex, string expected) =>
        Assert.Equal(expected, PlainMaths.FromTex(tex).Replace('\u2009', ' '));

    [Theory]
    [InlineData("}")]
    [InlineData("{")]
    [InlineData(@"\frac{a")]
    [InlineData(@"\left(")]
    [InlineData("^")]
    [InlineData("_{")]
    [InlineData(@"\begin{matrix} a & b \\ c")]
    [InlineData(@"\")]
    public void A_broken_formula_is_shown_as_far_as_it_goes(string tex)
    {
        Assert.NotNull(PlainMaths.FromTex(tex));
        Assert.NotNull(MathMarkup.FromTex(tex).ToString());
    }

    [Fact]
    public void An_unknown_command_stays_visible() => Assert.Equal("wobble x", PlainMaths.FromTex(@"\wobble x"));

    [Theory]
    [InlineData(22.5514, "22.55")]
    [InlineData(80, "80")]
    [InlineData(0.5, "0.5")]
    [InlineData(-3.14159, "−3.142")]
    [InlineData(435489.18, "435 500")]
    [InlineData(1226.73, "1227")]
    [InlineData(0.00012345, "1.234·10⁻⁴")]
    [InlineData(210000, "210 000")]
    [InlineData(2.1e9, "2.1·10⁹")]
    [InlineData(4.4e-16, "0")]
    [InlineData(99.996, "100.0")]
    [InlineData(double.PositiveInfinity, "∞")]
    [InlineData(double.NaN, "not a number")]
    public void Numbers_carry_four_significant_digits(double value, string expected) =>
        Assert.Equal(expected, Figures.Text(value).Replace('\u2009', ' '));

    [Fact]
    public void A_label_mixes_words_and_mathematics()
    {
        Assert.Equal("Load N_R (kN)", Label.Plain("Load $N_R$ (kN)"));
        Assert.Equal("Load <i>N</i><sub><i>R</i></sub> (a &lt; b &amp; c)", Label.Tagged("Load $N_R$ (a < b & c)"));
    }
}
