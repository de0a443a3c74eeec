using System.Text.Json;
using StrutLessons.Capacity;
using StrutLessons.Notebook.Charts;
using StrutLessons.Standards;

namespace StrutLessons.Notebook.Tests.Shown;

public class ChartTests
{
    public static TheoryData<string> EveryChart => new(Charts.Keys);

    private static Dictionary<string, IShown> Charts { get; } = new()
    {
        ["stress"] = Plot.StressAlong(GalleryStrut.Solution),
        ["moments"] = Plot.MomentsAlong(GalleryStrut.Solution),
        ["iteration"] = Plot.Iteration(GalleryStrut.Capacity),
        ["curve"] = Plot.Curve(CapacityCurve.Of(GalleryStrut.Strut, count: 12)),
        ["standards"] = Plot.Comparison(StandardComparison.Of(GalleryStrut.Strut) with { Reference = 150e3 }),
        ["standards along the slenderness"] = Plot.Curves(StandardCurves.Of(GalleryStrut.Strut, rules: RuleChoice.Pick("EN BB.1.2", "AISC a", "ASCE unrestrained", "IS hinged", "AS"), count: 12)),
        ["load against displacement"] = Plot.LoadDisplacement(CalibrationStruts.Path),
        ["load against shortening"] = Plot.LoadShortening(CalibrationStruts.Path),
        ["load against roll"] = Plot.LoadTwist(CalibrationStruts.Path),
        ["paths"] = Plot.Paths(("kept", CalibrationStruts.Path), ("again", CalibrationStruts.Path)),
        ["yield along"] = Plot.YieldAlong(CalibrationStruts.Path),
        ["ratios"] = Plot.Ratios(CalibrationStruts.Grid),
        ["correction"] = Plot.Correction(CalibrationStruts.Correction),
        ["normal paper"] = Plot.ProbabilityPaper(CalibrationStruts.Correction.Fitted),
        ["log-normal paper"] = Plot.ProbabilityPaper(CalibrationStruts.Correction.Fitted, lognormal: true),
        ["influences"] = Plot.Influences(Calibration.RatioSensitivity.Of(CalibrationStruts.Grid, Calibration.ElasticModel.Plane)),
        ["bows"] = Plot.Bows(CalibrationStruts.Bows),
        ["joint"] = Plot.Contributions(GalleryStrut.Gusset.Hinge),
        ["bars"] = new BarChart("Parts", "Compliance (mrad/kNm)", new Bar("a long name for a part", 3, "30 %"), new Bar("web", 7, "70 %"), new Bar("nothing", 0)),
        ["logarithmic"] = Chart.Of("Error", "Elements (–)", "Error (–)").LineAndPoints("measured", [2, 4, 8], [1e-2, 6e-4, 4e-5]).Logarithmic(true, true).Mark(4, 6e-4, "here"),
        ["negative"] = Chart.Of("Sign", "x (mm)", "y (mm)").Curve("a", -5, 5, x => x * x * x).Points("b", [-2, 0, 2], [3, double.NaN, -3]).AtX(-4.9, "left").AtX(4.9, "right"),
        ["flat"] = Chart.Of("Flat", "x (mm)", "y (mm)").Line("constant", [0, 1], [7, 7]),
    };

    [Theory]
    [MemberData(nameof(EveryChart))]
    public void The_interactive_form_comes_first_then_the_still_one_then_text(string name) =>
        Assert.Equal(["application/vnd.plotly.v1+json", "image/svg+xml", "text/plain"], Charts[name].Shown().Select(p => p.MimeType));

    [Theory]
    [MemberData(nameof(EveryChart))]
    public void The_still_twin_is_readable(string name) => new SvgPage(Charts[name].Shown()[1].Content).AssertReadable();

    [Theory]
    [MemberData(nameof(EveryChart))]
    public void The_measured_axes_of_the_interactive_form_are_titled_with_a_unit(string name)
    {
        JsonElement layout = JsonDocument.Parse(Charts[name].Shown()[0].Content).RootElement.GetProperty("layout");
        string[] axes = Charts[name] is BarChart ? ["xaxis"] : ["xaxis", "yaxis"];
        Assert.All(axes, axis => Assert.Matches(@"\w.*\(.+\)$", layout.GetProperty(axis).GetProperty("title").GetProperty("text").GetString()!));
        Assert.NotEmpty(layout.GetProperty("title").GetProperty("text").GetString()!);
    }

    [Theory]
    [MemberData(nameof(EveryChart))]
    public void Both_forms_stand_without_a_network(string name) =>
        Assert.All(Charts[name].Shown(), part => Assert.DoesNotContain("http", part.Content.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal));

    [Fact]
    public void Series_of_one_chart_differ_in_colour_and_dash()
    {
        JsonElement data = JsonDocument.Parse(Charts["stress"].Shown()[0].Content).RootElement.GetProperty("data");
        JsonElement[] lines = [.. data.EnumerateArray().Select(t => t.GetProperty("line"))];
        Assert.Equal(5, lines.Length);
        Assert.Equal(5, lines.Select(l => l.GetProperty("color").GetString()).Distinct().Count());
        Assert.Equal(5, lines.Select(l => l.GetProperty("dash").GetString()).Distinct().Count());
    }

    [Fact]
    public void The_capacity_is_marked_where_the_utilisation_is_one()
    {
        Chart chart = (Chart)Charts["iteration"];
        Assert.Equal((GalleryStrut.Capacity.Load / 1e3, 1), (chart.Remarks[0].X, chart.Remarks[0].Y));
        Series governing = chart.Series[1];
        int after = Enumerable.Range(0, governing.X.Length).First(i => governing.X[i] > chart.Remarks[0].X);
        Assert.InRange(1, governing.Y[after - 1], governing.Y[after]);
    }

    [Fact]
    public void The_legend_covers_no_data()
    {
        var page = new SvgPage(Charts["stress"].Shown()[1].Content);
        double axisTitle = page.Texts.Single(t => t.Text.StartsWith("Position", StringComparison.Ordinal)).Bottom;
        Assert.All(page.Texts.Where(t => t.Text is "heel" or "outstanding toe, outer"), t => Assert.True(t.Top > axisTitle));
    }

    [Theory]
    [InlineData(0, 0.97, new double[] { 0, 0.2, 0.4, 0.6, 0.8, 1 })]
    [InlineData(-7, 12, new double[] { -10, -5, 0, 5, 10, 15 })]
    [InlineData(0, 2089, new double[] { 0, 500, 1000, 1500, 2000, 2500 })]
    [InlineData(1000, 1001, new double[] { 1000, 1000.2, 1000.4, 1000.6, 1000.8, 1001 })]
    public void Ticks_are_round_values(double from, double to, double[] expected)
    {
        IReadOnlyList<double> ticks = Ticks.For(new ChartAxis("x (mm)"), [from, to], 6).At;
        Assert.Equal(expected.Length, ticks.Count);
        Assert.All(expected.Zip(ticks), pair => Assert.Equal(pair.First, pair.Second, 9));
    }

    [Fact]
    public void The_text_form_is_a_table_of_the_same_numbers()
    {
        string text = Chart.Of("Deflection", "Load $N$ (kN)", "Deflection (mm)").Line("middle", [1, 2], [0.5, 12345.6]).ToString();
        Assert.Equal("Deflection\nvertical: Deflection (mm)\nLoad N (kN)  middle\n          1     0.5\n          2  12 350", text.Replace('\u2009', ' '));
    }

    [Fact]
    public void A_bar_of_no_length_keeps_its_words()
    {
        string figure = Charts["bars"].Shown()[0].Content;
        Assert.Contains("\"textposition\":[\"outside\",\"auto\",\"auto\"]", figure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_series_without_partner_values_is_refused()
    {
        InputException error = Assert.Throws<InputException>(() => Chart.Of("a", "x (mm)", "y (mm)").Line("s", [1, 2], [1]));
        Assert.Contains("series 's' = 2 values of x and 1 of y", error.Message, StringComparison.Ordinal);
        Assert.Throws<InputException>(() => Chart.Of("a", " ", "y (mm)"));
        Assert.Throws<InputException>(() => new BarChart("a", "b (mm)", new Bar("c", double.NaN)));
    }
}
