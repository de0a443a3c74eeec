using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>
/// A chart of lines and points with titled axes. Built step by step, immutable:
/// <c>Chart.Of("Deflection", "Load $N$ (kN)", "Deflection (mm)").Line("mid-length", loads, deflections)</c>.
/// </summary>
/// <remarks>
/// Forms sent, in this order: application/vnd.plotly.v1+json, image/svg+xml, text/plain; never html.
/// A front end that knows the first shows an interactive chart: our own pages do, with the copy of plotly.js they carry, and so
/// do front ends with an add-on for it. Plain JupyterLab, Notebook and VS Code do not know it and pass on to the SVG, which is
/// drawn here from the same numbers and needs no script. An html form would be chosen before the SVG by Jupyter front ends and
/// would stay blank there without a network, because it could only fetch plotly.js from elsewhere.
/// </remarks>
public sealed record Chart : IPictured
{
    private Chart(string title, ChartAxis x, ChartAxis y)
    {
        Title = title;
        XAxis = x;
        YAxis = y;
    }

    /// <summary>Title above the chart.</summary>
    public string Title { get; }

    /// <summary>Horizontal axis.</summary>
    public ChartAxis XAxis { get; private init; }

    /// <summary>Vertical axis.</summary>
    public ChartAxis YAxis { get; private init; }

    /// <summary>Lines and points in the order of the legend.</summary>
    public ImmutableArray<Series> Series { get; private init; } = [];

    /// <summary>Areas between curves, drawn first.</summary>
    public ImmutableArray<Band> Bands { get; private init; } = [];

    /// <summary>Lines at one value.</summary>
    public ImmutableArray<Level> Levels { get; private init; } = [];

    /// <summary>Points with a remark.</summary>
    public ImmutableArray<Remark> Remarks { get; private init; } = [];

    /// <summary>An empty chart.</summary>
    /// <param name="title">Title; mathematics between dollar signs, here and in all texts.</param>
    /// <param name="xTitle">Horizontal axis with its unit in brackets.</param>
    /// <param name="yTitle">Vertical axis with its unit in brackets.</param>
    /// <exception cref="InputException">A title is missing.</exception>
    public static Chart Of(string title, string xTitle, string yTitle) =>
        new(Named(title, "chart title"), new ChartAxis(Named(xTitle, "title of the x axis")), new ChartAxis(Named(yTitle, "title of the y axis")));

    /// <summary>Adds a line.</summary>
    /// <exception cref="InputException">The rows have different lengths or are empty.</exception>
    public Chart Line(string name, IEnumerable<double> x, IEnumerable<double> y) => With(name, x, y, SeriesKind.Line);

    /// <summary>Adds markers.</summary>
    /// <exception cref="InputException">The rows have different lengths or are empty.</exception>
    public Chart Points(string name, IEnumerable<double> x, IEnumerable<double> y) => With(name, x, y, SeriesKind.Points);

    /// <summary>Adds a line with markers.</summary>
    /// <exception cref="InputException">The rows have different lengths or are empty.</exception>
    public Chart LineAndPoints(string name, IEnumerable<double> x, IEnumerable<double> y) => With(name, x, y, SeriesKind.LineAndPoints);

    /// <summary>Adds the curve of a function at evenly spaced values.</summary>
    /// <exception cref="InputException">Fewer than two values, or an interval without length.</exception>
    public Chart Curve(string name, double from, double to, Func<double, double> function, int count = 161)
    {
        ArgumentNullException.ThrowIfNull(function);
        if (count < 2 || !(to > from))
        {
            throw new InputException("interval", $"{from} to {to} with {count} values", "a rising interval with two values or more", "Give the smaller end first.");
        }

        double[] x = [.. Enumerable.Range(0, count).Select(i => from + (to - from) * i / (count - 1))];
        return Line(name, x, x.Select(function));
    }

    /// <summary>Adds the area between two curves.</summary>
    /// <exception cref="InputException">The rows have different lengths or are empty.</exception>
    public Chart Between(string name, IEnumerable<double> x, IEnumerable<double> lower, IEnumerable<double> upper)
    {
        ImmutableArray<double> at = [.. x], low = [.. lower], high = [.. upper];
        Match(name, at.Length, low.Length);
        Match(name, at.Length, high.Length);
        return this with { Bands = Bands.Add(new Band(name, at, low, high)) };
    }

    /// <summary>Adds a horizontal line at a value of the vertical axis.</summary>
    public Chart AtY(double value, string text) => this with { Levels = Levels.Add(new Level(value, text, false)) };

    /// <summary>Adds a vertical line at a value of the horizontal axis.</summary>
    public Chart AtX(double value, string text) => this with { Levels = Levels.Add(new Level(value, text, true)) };

    /// <summary>Marks a point with a remark.</summary>
    public Chart Mark(double x, double y, string text) => this with { Remarks = Remarks.Add(new Remark(x, y, text)) };

    /// <summary>Fixes the range of the horizontal axis.</summary>
    public Chart XFrom(double? from, double? to) => this with { XAxis = XAxis with { From = from, To = to } };

    /// <summary>Fixes the range of the vertical axis.</summary>
    public Chart YFrom(double? from, double? to) => this with { YAxis = YAxis with { From = from, To = to } };

    /// <summary>Logarithmic scales.</summary>
    public Chart Logarithmic(bool x = true, bool y = false) =>
        this with { XAxis = XAxis with { Logarithmic = x }, YAxis = YAxis with { Logarithmic = y } };

    /// <summary>The static twin, drawn from the same numbers.</summary>
    public Drawing ToDrawing() => ChartPaper.Draw(this);

    /// <summary>The interactive chart as a Plotly.NET value, for those who want to go on with it.</summary>
    public Plotly.NET.GenericChart ToPlotly() => ChartPlotly.Build(this);

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() =>
    [
        new(PlotlyForm.MimeType, PlotlyForm.Json(ToPlotly())),
        new("image/svg+xml", ToDrawing().Svg),
        new("text/plain", ToString()),
    ];

    /// <summary>The numbers as a table, for a terminal.</summary>
    public override string ToString() => ChartText.Write(this);

    private Chart With(string name, IEnumerable<double> x, IEnumerable<double> y, SeriesKind kind)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var series = new Series(Named(name, "series name"), [.. x], [.. y], kind);
        Match(name, series.X.Length, series.Y.Length);
        return this with { Series = Series.Add(series) };
    }

    private static void Match(string name, int x, int y)
    {
        if (x != y || x == 0)
        {
            throw new InputException($"series '{name}'", $"{x} values of x and {y} of y", "as many of one as of the other, at least one", "Give both rows from the same loop.");
        }
    }

    private static string Named(string text, string field) =>
        string.IsNullOrWhiteSpace(text) ? throw new InputException(field, "''", "some words", "A reader needs a name with its unit.") : text;
}
