using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Live.Pages;

/// <summary>The frame of a code cell on a live page: its code, what can be done with it, and room for what it shows.</summary>
internal static class CellFrame
{
    /// <summary>The help that every editor points to.</summary>
    internal const string EditorHelp = """
        <p id="editor-help" hidden>Shift and Enter runs the cell and goes to the next. Control and Enter runs it and stays.
        Control and Space offers names. Escape leaves the editor.</p>
        """;

    /// <summary>A cell with its text. Without the script the text stands there to be read.</summary>
    internal static string Html(string id, string text) => $"""
        <section class="cell live-cell" data-cell="{Html(id)}">
        <div class="sheet">
        <pre class="code" tabindex="0"><code>{CodeColours.ToHtml(text)}</code></pre>
        <div class="deeds" hidden>
        <button type="button" class="run" data-do="run">Run</button>
        <span class="state"></span>
        <details class="more"><summary>More</summary>
        <div class="choices">
        <button type="button" data-do="run-on">Run from here to the end</button>
        <button type="button" data-do="original">Back to the original</button>
        <button type="button" data-do="add">Add a cell below</button>
        <button type="button" data-do="delete">Delete this cell</button>
        </div></details>
        </div>
        </div>
        <div class="offer" hidden></div>
        <div class="outputs"></div>
        </section>

        """;

    private static string Html(string text) => Site.Html.Escape(text);
}
