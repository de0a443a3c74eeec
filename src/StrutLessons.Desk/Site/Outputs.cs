using StrutLessons.Kernel.Wire;

namespace StrutLessons.Desk.Site;

/// <summary>Turns the outputs of the cells of one lesson into HTML.</summary>
/// <param name="prose">The text cells that share the page, so that headings in outputs get ids of their own; null if there are none.</param>
public sealed class Outputs(Prose? prose = null)
{
    private const string Plotly = "application/vnd.plotly.v1+json";
    private const string Svg = "image/svg+xml";

    private readonly Prose _prose = prose ?? new Prose();
    private int _figures;
    private bool _hasTex;

    /// <summary>True if any output so far is a chart that a script draws.</summary>
    public bool HasCharts { get; private set; }

    /// <summary>True if any output so far holds mathematics to typeset.</summary>
    public bool HasMaths => _hasTex || _prose.HasMaths;

    /// <summary>Turns one output into HTML.</summary>
    public string ToHtml(CellOutput output) => output switch
    {
        StreamOutput stream => $"<pre class=\"output text {(stream.Name == "stderr" ? "stderr" : "stdout")}\" tabindex=\"0\">{Html.Escape(stream.Text.TrimEnd('\n'))}</pre>\n",
        ShownOutput shown => Shown(shown),
        ErrorOutput error => $"<div class=\"output error\" role=\"note\" aria-label=\"Error\"><p><strong>{(error.Line is { } line ? $"Error in line {line}" : "Error")}.</strong> {Html.Escape(error.Message)} <span class=\"name\">({Html.Escape(error.Name)})</span></p></div>\n",
        _ => "",
    };

    private string Shown(ShownOutput shown)
    {
        var best = shown.Parts.FirstOrDefault(part => part.MimeType is Plotly or Svg or "text/html" or "text/latex" or "text/markdown" or "image/png")
            ?? shown.Parts.FirstOrDefault(part => part.MimeType == "text/plain");
        return best switch
        {
            null => "",
            { MimeType: Plotly } => Chart(best.Content, shown.Content(Svg), shown.Content("text/plain")),
            { MimeType: Svg } => shown.Content(Plotly) is { } figure
                ? Chart(figure, best.Content, shown.Content("text/plain"))
                : $"<div class=\"output drawing\">{Drawing(best.Content)}</div>\n",
            { MimeType: "text/html" } => $"<div class=\"output html\">{best.Content}</div>\n",
            { MimeType: "text/latex" } => Tex(best.Content),
            { MimeType: "text/markdown" } => $"<div class=\"output prose\">{_prose.ToHtml(best.Content)}</div>\n",
            { MimeType: "image/png" } => $"<div class=\"output drawing\"><img alt=\"{Html.Escape(shown.Content("text/plain") ?? "Picture made by the cell above")}\" src=\"data:image/png;base64,{Html.Escape(best.Content)}\"></div>\n",
            _ => $"<pre class=\"output text\" tabindex=\"0\">{Html.Escape(best.Content)}</pre>\n",
        };
    }

    private string Tex(string latex)
    {
        _hasTex = true;
        return $"<div class=\"output tex\" tabindex=\"0\">{TexText.ToHtml(latex)}</div>\n";
    }

    /// <summary>
    /// A chart: the still picture stands there until the script has drawn, stays if there is no script, and is printed.
    /// The figure lies beside it as data that no browser runs.
    /// </summary>
    private string Chart(string figure, string? svg, string? words)
    {
        HasCharts = true;
        var still = svg is null ? $"<p>{Html.Escape(words ?? "This chart is drawn by a script.")}</p>" : Drawing(svg);
        var data = figure.Replace("</", "<\\/", StringComparison.Ordinal).Replace("<!--", "<\\!--", StringComparison.Ordinal);
        return $"""
            <figure class="output chart" aria-label="{Html.Escape(words ?? "Chart")}">
            <div class="still">{still}</div>
            <div class="live" hidden></div>
            <script type="application/json">{data}</script>
            </figure>

            """;
    }

    private string Drawing(string svg) => SvgInline.Prepare(svg, $"f{++_figures}-");
}
