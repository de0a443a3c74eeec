using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

/// <summary>One bar.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Its length.</param>
/// <param name="Remark">Words after the value, for example a share in per cent; may be empty.</param>
public sealed record Bar(string Name, double Value, string Remark = "");

/// <summary>Lying bars with their names on the left and their values at their ends: no legend is needed. Immutable.</summary>
/// <remarks>The forms sent are those of <see cref="Chart"/>, for the same reasons.</remarks>
public sealed record BarChart : IPictured
{
    /// <summary>A bar chart.</summary>
    /// <param name="title">Title.</param>
    /// <param name="valueTitle">What the bars measure, with the unit in brackets.</param>
    /// <param name="bars">Bars from top to bottom.</param>
    /// <exception cref="InputException">No bar, or a bar without a finite value.</exception>
    public BarChart(string title, string valueTitle, params IReadOnlyList<Bar> bars)
    {
        ArgumentNullException.ThrowIfNull(bars);
        if (bars.Count == 0 || bars.Any(b => !double.IsFinite(b.Value)))
        {
            throw new InputException("bars", bars.Count == 0 ? "none" : "a value that is not finite", "at least one bar, all finite", "Leave out what has no number.");
        }

        Title = title;
        ValueTitle = valueTitle;
        Bars = [.. bars];
    }

    /// <summary>Title above the chart.</summary>
    public string Title { get; }

    /// <summary>What the bars measure, with the unit in brackets.</summary>
    public string ValueTitle { get; }

    /// <summary>Bars from top to bottom.</summary>
    public ImmutableArray<Bar> Bars { get; }

    /// <summary>The static twin.</summary>
    public Drawing ToDrawing() => BarPaper.Draw(this);

    /// <summary>The interactive chart as a Plotly.NET value.</summary>
    public Plotly.NET.GenericChart ToPlotly()
    {
        Bar[] upwards = [.. Bars.Reverse()];
        return PlotlyForm.Figure(
            [PlotlyForm.Trace("bar", ("orientation", "h"), ("x", PlotlyForm.Values(upwards.Select(b => b.Value))), ("y", upwards.Select(b => Label.Tagged(b.Name)).ToArray()),
                ("text", upwards.Select(ValueText).Select(Label.Tagged).ToArray()),
                // A bar of no length has no inside for its words, and "auto" then drops them.
                ("textposition", upwards.Select(b => b.Value == 0 ? "outside" : "auto").ToArray()), ("hoverinfo", "y+text"),
                ("marker", PlotlyForm.Object(("color", Palette.Colour(Ink.Compression)))))],
            ("title", PlotlyForm.Heading(Title)),
            ("xaxis", PlotlyForm.Object(("title", PlotlyForm.Title(ValueTitle)), ("automargin", true), ("gridcolor", Palette.Colour(Ink.Grid)))),
            ("yaxis", PlotlyForm.Object(("automargin", true))),
            ("showlegend", false));
    }

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() =>
    [
        new(PlotlyForm.MimeType, PlotlyForm.Json(ToPlotly())),
        new("image/svg+xml", ToDrawing().Svg),
        new("text/plain", ToString()),
    ];

    /// <summary>The bars as a table.</summary>
    public override string ToString() =>
        $"{Label.Plain(Title)}\n{ChartText.Table([["", Label.Plain(ValueTitle), ""], .. Bars.Select(b => (string[])[Label.Plain(b.Name), Figures.Text(b.Value), Label.Plain(b.Remark)])])}".TrimEnd();

    internal static string ValueText(Bar bar) => bar.Remark.Length == 0 ? Figures.Text(bar.Value) : $"{Figures.Text(bar.Value)}  ({bar.Remark})";
}
