using System.Text;
using StrutLessons.Desk.Live.Running;
using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Live.Pages;

/// <summary>A lesson as a live page: looks like the finished page, and its cells can be changed and run.</summary>
internal static class LivePage
{
    private const string Head = """
        <link rel="stylesheet" href="assets/third-party/codemirror/codemirror.css">
        <link rel="stylesheet" href="assets/third-party/codemirror/show-hint.css">
        <link rel="stylesheet" href="assets/live.css">
        <script defer src="assets/third-party/codemirror/codemirror.js"></script>
        <script defer src="assets/third-party/codemirror/clike.js"></script>
        <script defer src="assets/third-party/codemirror/matchbrackets.js"></script>
        <script defer src="assets/third-party/codemirror/closebrackets.js"></script>
        <script defer src="assets/third-party/codemirror/show-hint.js"></script>
        <script defer src="assets/live-editor.js"></script>
        <script defer src="assets/live-outputs.js"></script>
        <script defer src="assets/live-controls.js"></script>
        <script defer src="assets/live-cell.js"></script>
        <script defer src="assets/live.js"></script>

        """;

    /// <summary>Writes the page.</summary>
    /// <param name="notebook">The lesson as it is shipped.</param>
    /// <param name="cells">The code cells with the user's text.</param>
    /// <param name="outline">All lessons, with a word about each; the current one among them.</param>
    internal static string Write(NotebookFile notebook, IReadOnlyList<CellView> cells, IReadOnlyList<OutlineEntry> outline)
    {
        var prose = new Prose();
        var content = Content(notebook, cells, prose);
        var card = LessonCard.Of(notebook);
        var at = outline.ToList().FindIndex(entry => entry.Link.File == notebook.Name + ".html");
        // Charts and formulas may come with any cell, so both libraries are there.
        var frame = new PageFrame($"{card.Title} · StrutLessons", string.Join(" ", card.Abilities), HasMaths: true, HasCharts: true, Head);
        return frame.Wrap($"""
            <div class="bar" role="group" aria-label="The whole lesson" hidden>
            <button type="button" data-do="run-all" title="Runs every cell from the top">Run all</button>
            <button type="button" data-do="stop" title="Stops the running cell">Stop</button>
            <button type="button" data-do="restart" title="Forgets what the cells have computed; your text stays">Restart</button>
            <button type="button" data-do="original-all" title="Puts every cell back to its original text">Back to the original</button>
            <p class="kernel" role="status" aria-live="polite"></p>
            </div>
            <p class="notice" role="alert" hidden></p>
            <div class="page lesson">
            {LessonPage.Contents(prose)}<main id="main" tabindex="-1" data-lesson="{Html.Escape(notebook.Name)}">
            <p class="place">{card.Place}</p>
            <noscript><p class="aside">This page needs scripts to run cells. Without them it can be read.</p></noscript>
            {content}</main>
            </div>
            <template id="new-cell">{CellFrame.Html("", "")}</template>
            {CellFrame.EditorHelp}
            <details class="outline page"><summary>All lessons and how far you are</summary>
            <ol>
            {string.Concat(outline.Select((entry, i) => Entry(entry, i == at)))}</ol>
            <p><a href="{Html.Escape(notebook.Name)}.ipynb" download>Take this lesson with your changes along as a notebook</a></p>
            </details>
            {LessonPage.Turn(at > 0 ? outline[at - 1].Link : null, at + 1 < outline.Count ? outline[at + 1].Link : null)}
            """);
    }

    private static string Content(NotebookFile notebook, IReadOnlyList<CellView> cells, Prose prose)
    {
        var html = new StringBuilder();
        var own = new Queue<CellView>(cells);
        foreach (var cell in notebook.Cells)
        {
            if (cell.Kind == CellKind.Text)
            {
                AppendAdded(html, own);
                html.Append("<div class=\"prose\">\n").Append(prose.ToHtml(cell.Source)).Append("</div>\n");
            }
            else if (cell.Kind == CellKind.Code)
            {
                AppendAdded(html, own);
                if (own.TryDequeue(out var view))
                {
                    html.Append(CellFrame.Html(view.Text.Cell, view.Text.Text));
                }
            }
        }
        AppendAdded(html, own);
        return html.ToString();
    }

    /// <summary>Cells that the user added stand where the one before them stands.</summary>
    private static void AppendAdded(StringBuilder html, Queue<CellView> own)
    {
        while (own.TryPeek(out var next) && next.After is not null)
        {
            html.Append(CellFrame.Html(next.Text.Cell, next.Text.Text));
            own.Dequeue();
        }
    }

    private static string Entry(OutlineEntry entry, bool isHere) =>
        $"<li{(entry.Number > 0 ? $" value=\"{entry.Number}\"" : "")}><a href=\"{Html.Escape(entry.Link.File)}\"{(isHere ? " aria-current=\"page\"" : "")}>{Html.Escape(entry.Link.Title)}</a> {entry.Progress}</li>\n";
}

/// <summary>A lesson in the outline of the course.</summary>
/// <param name="Number">Its number; 0 if it has none.</param>
/// <param name="Link">Where it is.</param>
/// <param name="Progress">How far the user has come, as HTML.</param>
internal sealed record OutlineEntry(int Number, PageLink Link, string Progress);
