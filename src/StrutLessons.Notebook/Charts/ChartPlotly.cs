using Plotly.NET;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>The chart as a Plotly figure: same colours, dashes and markers as the static twin, legend below the plot.</summary>
internal static class ChartPlotly
{
    internal static GenericChart Build(Chart chart)
    {
        ChartRange range = ChartRange.Of(chart);
        return PlotlyForm.Figure(
            chart.Bands.SelectMany(BandTraces).Concat(chart.Series.Select(SeriesTrace)).Concat(RemarkTraces(chart)),
            ("title", PlotlyForm.Heading(chart.Title)),
            ("xaxis", PlotlyForm.Axis(chart.XAxis, range.X, room: 430)),
            ("yaxis", PlotlyForm.Axis(chart.YAxis, range.Y, room: 290)),
            ("showlegend", chart.Series.Length + chart.Bands.Length > 1),
            ("legend", PlotlyForm.Object(("orientation", "h"), ("x", 0), ("y", 0), ("yref", "container"), ("yanchor", "bottom"), ("traceorder", "normal"))),
            ("hovermode", "closest"),
            ("shapes", chart.Levels.Select(Shape).ToArray()),
            ("annotations", chart.Levels.Select(l => LevelText(chart, range, l)).Concat(chart.Remarks.Select(r => RemarkText(chart, range, r))).ToArray()));
    }

    private static IEnumerable<Trace> BandTraces(Band band)
    {
        object hidden = PlotlyForm.Object(("width", 0));
        yield return PlotlyForm.Trace("scatter", ("x", PlotlyForm.Values(band.X)), ("y", PlotlyForm.Values(band.Lower)), ("mode", "lines"),
            ("line", hidden), ("showlegend", false), ("hoverinfo", "skip"));
        yield return PlotlyForm.Trace("scatter", ("x", PlotlyForm.Values(band.X)), ("y", PlotlyForm.Values(band.Upper)), ("mode", "lines"), ("line", hidden),
            ("fill", "tonexty"), ("fillcolor", "rgba(10,95,168,0.14)"), ("name", Label.Tagged(band.Name)), ("hoverinfo", "skip"));
    }

    private static Trace2D SeriesTrace(Series series, int index)
    {
        SeriesLook look = SeriesLook.Of(index);
        string colour = Palette.Colour(look.Ink);
        string mode = series.Kind switch { SeriesKind.Line => "lines", SeriesKind.Points => "markers", _ => "lines+markers" };
        return PlotlyForm.Trace("scatter", ("x", PlotlyForm.Values(series.X)), ("y", PlotlyForm.Values(series.Y)), ("mode", mode), ("name", Label.Tagged(series.Name)),
            // A point on the edge of the plot is drawn whole.
            ("cliponaxis", false),
            ("line", PlotlyForm.Object(("color", colour), ("dash", look.PlotlyDash), ("width", 2.2))),
            ("marker", PlotlyForm.Object(("symbol", look.PlotlyMarker), ("size", 8), ("color", colour))));
    }

    private static IEnumerable<Trace> RemarkTraces(Chart chart) => chart.Remarks.IsEmpty
        ? []
        : [PlotlyForm.Trace("scatter", ("x", PlotlyForm.Values(chart.Remarks.Select(r => r.X))), ("y", PlotlyForm.Values(chart.Remarks.Select(r => r.Y))),
            ("mode", "markers"), ("showlegend", false), ("text", chart.Remarks.Select(r => Label.Tagged(r.Text)).ToArray()), ("hoverinfo", "x+y+text"),
            ("marker", PlotlyForm.Object(("symbol", "circle-open"), ("size", 11), ("color", Palette.Colour(Ink.Text)), ("line", PlotlyForm.Object(("width", 2))))))];

    private static Dictionary<string, object> Shape(Level level) => level.Vertical
        ? PlotlyForm.Object(("type", "line"), ("x0", level.At), ("x1", level.At), ("yref", "paper"), ("y0", 0), ("y1", 1), ("line", LevelLine()))
        : PlotlyForm.Object(("type", "line"), ("y0", level.At), ("y1", level.At), ("xref", "paper"), ("x0", 0), ("x1", 1), ("line", LevelLine()));

    private static Dictionary<string, object> LevelLine() =>
        PlotlyForm.Object(("color", Palette.Colour(Ink.Soft)), ("dash", "dash"), ("width", 1.4));

    /// <summary>The words of a level stand inside the plot: beside an upright line, above a lying one.</summary>
    private static Dictionary<string, object> LevelText(Chart chart, ChartRange range, Level level)
    {
        if (!level.Vertical)
        {
            return PlotlyForm.Object(("y", chart.YAxis.Logarithmic ? Math.Log10(level.At) : level.At), ("xref", "paper"), ("x", 1), ("text", Label.Tagged(level.Text)),
                ("showarrow", false), ("xanchor", "right"), ("yanchor", "bottom"));
        }

        bool right = Share(chart.XAxis, range.X, level.At) > 0.6;
        return PlotlyForm.Object(("x", chart.XAxis.Logarithmic ? Math.Log10(level.At) : level.At), ("yref", "paper"), ("y", 1), ("text", Label.Tagged(level.Text)),
            ("showarrow", false), ("xanchor", right ? "right" : "left"), ("yanchor", "top"), ("xshift", right ? -4 : 4));
    }

    /// <summary>On a logarithmic axis annotations are placed by the exponent.</summary>
    private static Dictionary<string, object> RemarkText(Chart chart, ChartRange range, Remark remark) => PlotlyForm.Object(
        ("x", chart.XAxis.Logarithmic ? Math.Log10(remark.X) : remark.X), ("y", chart.YAxis.Logarithmic ? Math.Log10(remark.Y) : remark.Y),
        ("text", Label.Tagged(remark.Text)), ("showarrow", true), ("arrowhead", 2), ("standoff", 6),
        ("ax", Share(chart.XAxis, range.X, remark.X) > 0.7 ? -40 : 40), ("ay", Share(chart.YAxis, range.Y, remark.Y) > 0.8 ? 36 : -36));

    /// <summary>How far along an axis a value lies, 0 to 1.</summary>
    private static double Share(ChartAxis axis, Ticks ticks, double value) => ChartRange.Share(value, ticks, axis.Logarithmic);
}
