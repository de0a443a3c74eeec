namespace StrutLessons.Notebook.Charts;

/// <summary>A chart made with Plotly.NET directly: there is no static twin, so plain front ends get a word instead.</summary>
internal sealed record ForeignChart(Plotly.NET.GenericChart Chart) : IShown
{
    public IReadOnlyList<ShownPart> Shown() =>
    [
        new(PlotlyForm.MimeType, PlotlyForm.Json(Chart)),
        new("text/plain", "An interactive chart. Chart.Of(...) makes one that is also drawn where no interactive charts can be shown."),
    ];
}
