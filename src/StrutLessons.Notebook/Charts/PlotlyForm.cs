using Plotly.NET;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>Plotly figures as JSON, and the small pieces their layouts share.</summary>
internal static class PlotlyForm
{
    internal const string MimeType = "application/vnd.plotly.v1+json";

    /// <summary>The figure with data, layout and settings, without the script that draws it.</summary>
    internal static string Json(GenericChart chart) => GenericChart.toJson(chart);

    /// <summary>Puts names and values together as Plotly.NET keeps them; values may be nested.</summary>
    internal static Dictionary<string, object> Object(params (string Name, object Value)[] members) => members.ToDictionary(m => m.Name, m => m.Value);

    internal static GenericChart Figure(IEnumerable<Trace> traces, params (string Name, object Value)[] layout)
    {
        var plan = new Layout();
        (string Name, object Value)[] usual =
        [
            ("font", Object(("size", 13), ("color", Palette.Colour(Ink.Text)))),
            ("paper_bgcolor", Palette.Colour(Ink.Sheet)),
            ("plot_bgcolor", Palette.Colour(Ink.Sheet)),
            ("margin", Object(("l", 76), ("r", 24), ("t", 52), ("b", 64))),
            ("height", 440),
            ("autosize", true),
        ];
        foreach ((string name, object value) in usual.Concat(layout))
        {
            plan.SetProperty(name, value);
        }

        var settings = new Config();
        settings.SetProperty("responsive", true);
        settings.SetProperty("displaylogo", false);
        return GenericChart.NewMultiChart(Microsoft.FSharp.Collections.ListModule.OfSeq(traces), plan, settings, new DisplayOptions());
    }

    internal static Trace2D Trace(string kind, params (string Name, object Value)[] members)
    {
        var trace = new Trace2D(kind);
        foreach ((string name, object value) in members)
        {
            trace.SetProperty(name, value);
        }

        return trace;
    }

    internal static Dictionary<string, object> Title(string text) => Object(("text", Label.Tagged(text)));

    internal static Dictionary<string, object> Axis(ChartAxis axis, double from, double to) => Object(
        ("title", Title(axis.Title)), ("type", axis.Logarithmic ? "log" : "linear"), ("automargin", true),
        ("range", axis.Logarithmic ? new[] { Math.Log10(from), Math.Log10(to) } : [from, to]),
        ("gridcolor", Palette.Colour(Ink.Grid)), ("linecolor", Palette.Colour(Ink.Soft)), ("zerolinecolor", Palette.Colour(Ink.Soft)),
        ("showline", true), ("ticks", "outside"), ("separatethousands", true));

    /// <summary>Seven digits are finer than any screen; infinite values are left out like gaps.</summary>
    internal static object[] Values(IEnumerable<double> values) =>
        [.. values.Select(v => double.IsFinite(v) ? (object)double.Parse(v.ToString("G7")) : null!)];
}
