namespace StrutLessons.Desk.Site;

/// <summary>What every page shares: head, skip link, masthead, footer with the caution.</summary>
/// <param name="Title">Title of the page.</param>
/// <param name="Description">One sentence for readers who see only a link to the page.</param>
/// <param name="HasMaths">Loads the typesetter.</param>
/// <param name="HasCharts">Loads the chart library.</param>
/// <param name="Head">Further elements of the head, after those of every page.</param>
internal sealed record PageFrame(string Title, string Description, bool HasMaths = false, bool HasCharts = false, string Head = "")
{
    internal const string Caution =
        "Teaching aid, not a design check. The numbers show how a strut behaves; they do not prove that one is safe. " +
        "Local codes and licensed practice decide.";

    internal string Wrap(string body) => $"""
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <meta name="description" content="{Html.Escape(Description)}">
        <title>{Html.Escape(Title)}</title>
        <link rel="icon" href="assets/icon.svg" type="image/svg+xml">
        {(HasMaths ? "<link rel=\"stylesheet\" href=\"assets/third-party/katex/katex.min.css\">\n" : "")}<link rel="stylesheet" href="assets/site.css">
        {Scripts()}{Head}</head>
        <body>
        <a class="skip" href="#main">Skip to the content</a>
        <header class="masthead"><a href="index.html"><img src="assets/icon.svg" alt="" width="26" height="26">StrutLessons</a></header>
        {body}
        <footer class="foot"><p><strong>Caution.</strong> {Caution}</p></footer>
        </body>
        </html>

        """;

    private string Scripts()
    {
        var scripts = "";
        if (HasMaths)
        {
            scripts += "<script defer src=\"assets/third-party/katex/katex.min.js\"></script>\n";
        }
        if (HasCharts)
        {
            scripts += $"<script defer src=\"assets/third-party/{SiteAssets.PlotlyFile}\"></script>\n";
        }
        return scripts.Length > 0 ? scripts + "<script defer src=\"assets/site.js\"></script>\n" : "";
    }
}
