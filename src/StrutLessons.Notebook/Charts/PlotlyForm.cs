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
            // The tool bar stands upright in the right margin, beside the plot and below the title.
            ("margin", Object(("l", 76), ("r", 52), ("t", 56), ("b", 64))),
            ("modebar", Object(("orientation", "v"))),
            ("height", 450),
            ("separators", ".\u2009"),
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

    /// <summary>The title of the figure, on the left as in the static twin.</summary>
    internal static Dictionary<string, object> Heading(string text) =>
        Object(("text", Label.Tagged(text)), ("x", 0), ("xref", "paper"), ("xanchor", "left"), ("y", 0.975), ("yanchor", "top"), ("font", Object(("size", 16))));

    internal static Dictionary<string, object> Axis(ChartAxis axis, Ticks ticks, double room)
    {
        Dictionary<string, object> form = Object(
            ("title", Object(("text", string.Join("<br>", Lines(axis.Title, room).Select(Label.Tagged))), ("font", Object(("size", 14))))),
            ("type", axis.Logarithmic ? "log" : "linear"), ("automargin", true),
            ("range", axis.Logarithmic ? new[] { Math.Log10(ticks.From), Math.Log10(ticks.To) } : [ticks.From, ticks.To]),
            ("gridcolor", Palette.Colour(Ink.Grid)), ("linecolor", Palette.Colour(Ink.Soft)), ("zerolinecolor", Palette.Colour(Ink.Soft)),
            ("showline", true), ("ticks", "outside"), ("separatethousands", true), ("exponentformat", "none"));
        if (axis.Logarithmic)
        {
            // Left alone, the script labels every digit between the powers of ten.
            form["tickvals"] = ticks.At.ToArray();
            form["ticktext"] = ticks.Names.Select(Label.Tagged).ToArray();
        }

        return form;
    }

    /// <summary>A title longer than the axis is broken in two at the blank nearest to its middle.</summary>
    private static string[] Lines(string title, double room)
    {
        if (Label.Read(title).Width(14) < room)
        {
            return [title];
        }

        // Not inside mathematics: an even number of dollar signs stands before the blank.
        int[] blanks = [.. Enumerable.Range(0, title.Length).Where(i => title[i] == ' ' && title[..i].Count(c => c == '$') % 2 == 0)];
        int middle = blanks.Length == 0 ? -1 : blanks.MinBy(i => Math.Abs(i - title.Length / 2));
        return middle < 0 ? [title] : [title[..middle], title[(middle + 1)..]];
    }

    /// <summary>Seven digits are finer than any screen; infinite values are left out like gaps.</summary>
    internal static object[] Values(IEnumerable<double> values) =>
        [.. values.Select(v => double.IsFinite(v) ? (object)double.Parse(v.ToString("G7")) : null!)];
}
