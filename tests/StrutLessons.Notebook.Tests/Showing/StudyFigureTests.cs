using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Tables;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Tests.Shown;

/// <summary>Figures of studies: readable, titled with units, and true to the table.</summary>
public class StudyFigureTests
{
    private static readonly Study Grid = Study.Of(new StudyStrut { End = StudyEnd.GirderFlange })
        .Vary(StudyVariable.Section, "L 80x80x8", "L 100x65x8").Vary(StudyVariable.GussetThickness, 6, 8, 12, 20)
        .Range(StudyVariable.Length, 1000, 4000, 7).Find(StudyQuantity.Spring, StudyQuantity.Capacity, StudyQuantity.Reason);

    private static readonly StudyTable Table_ = Grid.Run();

    private static readonly Study Wide = Study.Of(new StudyStrut()).Between(StudyVariable.Length, 1000, 4000).Between(StudyVariable.GussetThickness, 6, 20)
        .Vary(StudyVariable.Steel, "S235", "S355").Between(StudyVariable.BowDivisor, 200, 1000).Find(StudyQuantity.Capacity);

    public static TheoryData<string> Names => new(Figures.Keys);

    private static Dictionary<string, Drawing> Figures { get; } = new()
    {
        ["scatter"] = Plot.Scatter(Table_, "system length", "capacity", "section").ToDrawing(),
        ["scatter of samples"] = Plot.Scatter(Wide.Sample(2000, 3).Run(), "gusset thickness", "capacity").ToDrawing(),
        ["lines"] = Plot.Lines(Table_, "gusset thickness", "capacity", "section").ToDrawing(),
        ["lines by a number"] = Plot.Lines(Table_, "system length", "capacity", "gusset thickness").ToDrawing(),
        ["bands"] = Plot.Bands(Wide.Sample(500, 3).Run(), "system length", "capacity").ToDrawing(),
        ["heat map"] = Plot.HeatMap(Table_, "system length", "gusset thickness", "capacity"),
        ["heat map of words"] = Plot.HeatMap(Table_, "section", "gusset thickness", "spring"),
        ["heat map of samples"] = Plot.HeatMap(Wide.Sample(3000, 3).Run(), "system length", "gusset thickness", "capacity"),
        ["tornado"] = Plot.Tornado(Sensitivity.OneAtATime(Wide, StudyQuantity.Capacity)),
        ["tornado with both ends on one side"] = Plot.Tornado(Sensitivity.OneAtATime(
            Study.Of(new StudyStrut { End = StudyEnd.GirderFlange }).Vary(StudyVariable.GussetThickness, 4, 30).Vary(StudyVariable.Stiffened, "no", "yes"), StudyQuantity.Capacity)),
        ["shares"] = Plot.Shares("capacity", Sensitivity.Shares(Table_, "capacity", "section", "gusset thickness", "system length")).ToDrawing(),
        ["parallel"] = Plot.ParallelCoordinates(Wide.Sample(300, 3).Run(), "system length", "gusset thickness", "steel", "bow divisor", "capacity"),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void A_figure_is_readable_and_names_its_units(string name)
    {
        new SvgPage(Figures[name].Svg).AssertReadable();
        Assert.Matches(@"\((kN|mm|kNm/rad|%)\)", string.Join(' ', new SvgPage(Figures[name].Svg).Texts.Select(t => t.Text)));
        if (Environment.GetEnvironmentVariable("FIGURES") is { Length: > 0 } folder)
        {
            File.WriteAllText(Path.Combine(folder, name.Replace(' ', '-') + ".svg"), Figures[name].Svg);
        }
    }

    [Fact]
    public void A_line_shows_the_mean_over_whatever_else_varies()
    {
        Series line = Plot.Lines(Table_, "gusset thickness", "capacity", "section").Series[0];
        double mean = Enumerable.Range(0, Table_.RowCount).Where(i => Table_.Words("section")[i] == "L 80x80x8" && Table_.Numbers("gusset thickness")[i] == 12).Average(i => Table_.Numbers("capacity")[i]);
        Assert.Equal(12, line.X[2]);
        Assert.Equal(mean, line.Y[2], 9);
    }

    [Fact]
    public void Bands_hold_all_cases_and_nine_of_ten()
    {
        StudyTable samples = Wide.Sample(2000, 3).Run();
        Chart chart = Plot.Bands(samples, "system length", "capacity");
        Assert.Equal(samples.Numbers("capacity").Min(), chart.Bands[0].Lower.Min());
        Assert.Equal(samples.Numbers("capacity").Max(), chart.Bands[0].Upper.Max());
        Assert.All(chart.Bands[1].Lower.Zip(chart.Series[0].Y), p => Assert.True(p.First < p.Second));
    }

    [Fact]
    public void A_table_shows_its_first_rows_and_how_many_there_are() =>
        Assert.StartsWith("56 cases; the first 12", StudyRows.First(Table_).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Too_many_groups_and_words_on_an_axis_are_refused()
    {
        Assert.Contains("at most 5", Assert.Throws<InputException>(() => Plot.Lines(Table_, "gusset thickness", "capacity", "system length")).Message, StringComparison.Ordinal);
        Assert.Contains("a column of numbers", Assert.Throws<InputException>(() => Plot.Scatter(Table_, "section", "capacity")).Message, StringComparison.Ordinal);
        Assert.Contains("the last one of numbers", Assert.Throws<InputException>(() => Plot.ParallelCoordinates(Table_, "capacity", "section")).Message, StringComparison.Ordinal);
    }
}
