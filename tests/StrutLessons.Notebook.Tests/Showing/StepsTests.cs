using System.Xml.Linq;
using StrutLessons.Notebook.Maths;
using StrutLessons.Notebook.Working;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Tests.Shown;

public class StepsTests
{
    private static readonly Steps Eccentricity = Steps.Of(GalleryStrut.LoadPoint);

    private sealed record Odd : IWorked
    {
        public IReadOnlyList<WorkedStep> WorkedSteps() => [new("<b>& 5 % of a_b</b>", "x<y", "a < b", "1 < 2", 1, "%", "A & B, <Press>, 3rd ed., f_y # $")];
    }

    public static TheoryData<string> EveryResult => new(Results.Keys);

    private static Dictionary<string, IWorked> Results { get; } = new()
    {
        ["equal angle"] = GalleryStrut.Section,
        ["unequal angle"] = AngleCatalogue.Find("L 200x100x10").Connected(ConnectedLeg.Short),
        ["load point"] = GalleryStrut.LoadPoint,
        ["gusset"] = GalleryStrut.Gusset,
        ["inclined gusset"] = Joints.GussetOnRigidSupport.HandFormula(Joints.Gusset.Symmetric(10, 200, 120, 40, 0.2, 60), 80, 60),
        ["joint"] = GalleryStrut.Gusset.Hinge,
        ["solution"] = GalleryStrut.Solution,
        ["capacity"] = GalleryStrut.Capacity,
    };

    [Fact]
    public void Html_comes_first_then_latex_then_text() =>
        Assert.Equal(["text/html", "text/latex", "text/plain"], Eccentricity.Shown().Select(p => p.MimeType));

    [Theory]
    [MemberData(nameof(EveryResult))]
    public void Every_result_uses_only_mathematics_that_the_pages_can_set(string name)
    {
        foreach (WorkedStep step in Results[name].WorkedSteps())
        {
            Assert.All([step.Symbol, step.Formula, step.Numbers], tex => Assert.Empty(TexReader.UnknownCommands(tex)));
            Assert.DoesNotContain("NaN", step.Numbers, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(EveryResult))]
    public void The_html_of_every_result_is_well_formed_and_needs_nothing_from_outside(string name)
    {
        string html = Steps.Of(Results[name]).Shown()[0].Content;
        XElement table = XElement.Parse(html);
        Assert.Equal(Results[name].WorkedSteps().Count, table.Descendants("tr").Count());
        Assert.Empty(table.Descendants("script"));
        Assert.DoesNotContain("http", html, StringComparison.Ordinal);
        Assert.All(table.Descendants("tr"), row => Assert.NotEmpty(row.Descendants("math")));
    }

    [Fact]
    public void Words_of_a_step_are_escaped_in_html_and_in_tex()
    {
        Steps odd = Steps.Of(new Odd());
        Assert.Contains("&lt;b&gt;&amp; 5 % of a_b&lt;/b&gt;", odd.Shown()[0].Content, StringComparison.Ordinal);
        Assert.Contains(@"5 \% of a\_b", odd.Shown()[1].Content, StringComparison.Ordinal);
        Assert.Contains(@"f\_y \# \$", odd.Shown()[1].Content, StringComparison.Ordinal);
        Assert.Contains(@"1\,\mathrm{\%}", odd.Shown()[1].Content, StringComparison.Ordinal);
    }

    [Fact]
    public void A_terminal_shows_formula_numbers_and_value_below_each_other()
    {
        string text = Eccentricity.Only("z_e").ToString();
        Assert.StartsWith("Eccentricity across the bolted leg   [definition", text, StringComparison.Ordinal);
        Assert.EndsWith("  z_e = c_z + t_g/2\n      = 22.551 + 10/2\n      = 27.55 mm", text.Replace('\u2009', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_keeps_the_steps_asked_for_in_that_order() =>
        Assert.Equal(["e_u", "y_e"], Eccentricity.Only("e_u", "y_{e}").Items.Select(s => s.Symbol));

    [Fact]
    public void An_unknown_symbol_answers_with_those_there_are()
    {
        InputException error = Assert.Throws<InputException>(() => Eccentricity.Only("q_e"));
        Assert.Contains("g, t_g, c_y, c_z, y_e, z_e, e_u, e_v", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_asked_step_keeps_its_value_folded()
    {
        Steps asked = Eccentricity.Only("z_e").Ask("z_e");
        XElement details = XElement.Parse(asked.Shown()[0].Content).Descendants("details").Single();
        Assert.Contains("27.55", details.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("27.55", asked.Shown()[1].Content, StringComparison.Ordinal);
        Assert.DoesNotContain("27.55", asked.Shown()[2].Content, StringComparison.Ordinal);
    }

    [Fact]
    public void The_value_of_a_step_is_the_value_the_calculation_used() =>
        Assert.Equal(GalleryStrut.LoadPoint.AlongV, Eccentricity.Only("e_v").Items[0].Value);
}
