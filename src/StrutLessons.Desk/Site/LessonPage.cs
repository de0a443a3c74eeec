using System.Text;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;

namespace StrutLessons.Desk.Site;

/// <summary>A lesson as a page: prose, coloured code and what each cell showed.</summary>
internal sealed class LessonPage
{
    private readonly Prose _prose = new();
    private readonly Outputs _outputs;
    private readonly PlayedLesson _lesson;
    private readonly string _content;

    internal LessonPage(PlayedLesson lesson)
    {
        _lesson = lesson;
        _outputs = new Outputs(_prose);
        var html = new StringBuilder();
        foreach (var cell in lesson.Cells)
        {
            Append(html, cell);
        }
        _content = html.ToString();
    }

    internal bool HasCharts => _outputs.HasCharts;

    /// <summary>The whole page.</summary>
    /// <param name="previous">The page before it; null on the first.</param>
    /// <param name="next">The page after it; null on the last.</param>
    internal string Write(PageLink? previous, PageLink? next)
    {
        var card = LessonCard.Of(_lesson.Notebook);
        var frame = new PageFrame(
            $"{card.Title} · StrutLessons", string.Join(" ", card.Abilities), _prose.HasMaths || _outputs.HasMaths, _outputs.HasCharts);
        return frame.Wrap($"""
            <div class="page lesson">
            {Contents(_prose)}<main id="main" tabindex="-1">
            <p class="place">{card.Place}</p>
            {_content}</main>
            </div>
            {Turn(previous, next)}
            """);
    }

    private void Append(StringBuilder html, PlayedCell cell)
    {
        switch (cell.Cell.Kind)
        {
            case CellKind.Text:
                html.Append("<div class=\"prose\">\n").Append(_prose.ToHtml(cell.Cell.Source)).Append("</div>\n");
                break;
            case CellKind.Code:
                html.Append($"<section class=\"cell\" aria-label=\"Cell {cell.Number}\">\n<pre class=\"code\" tabindex=\"0\"><code>")
                    .Append(CodeColours.ToHtml(cell.Cell.Source.TrimEnd('\n'))).Append("</code></pre>\n");
                if (cell.Cell.MustFail && cell.IsAsIntended)
                {
                    html.Append("<p class=\"aside\">This cell fails on purpose:</p>\n");
                }
                foreach (var output in cell.Run?.Outputs ?? [])
                {
                    html.Append(_outputs.ToHtml(output));
                }
                html.Append("</section>\n");
                break;
        }
    }

    /// <summary>Links to the neighbours of a lesson; null where it has none.</summary>
    internal static string Turn(PageLink? previous, PageLink? next) => $"""
        <nav class="turn" aria-label="Other lessons">
        {(previous is null ? "<span></span>" : $"<a rel=\"prev\" href=\"{previous.File}\"><span>Previous</span>{Html.Escape(previous.Title)}</a>")}
        <a class="up" href="index.html">All lessons</a>
        {(next is null ? "<span></span>" : $"<a rel=\"next\" href=\"{next.File}\"><span>Next</span>{Html.Escape(next.Title)}</a>")}
        </nav>
        """;

    /// <summary>The list of a lesson's sections; empty if it has but one.</summary>
    internal static string Contents(Prose prose)
    {
        var sections = prose.Headings.Where(heading => heading.Level == 2).ToArray();
        return sections.Length < 2
            ? ""
            : $"""
                <nav class="contents" aria-label="In this lesson">
                <p>In this lesson</p>
                <ol>
                {string.Concat(sections.Select(heading => $"<li><a href=\"#{heading.Id}\">{Html.Escape(heading.Text)}</a></li>\n"))}</ol>
                </nav>

                """;
    }
}

/// <summary>A link to a lesson's page.</summary>
/// <param name="File">Its file beside the index page.</param>
/// <param name="Title">The lesson's title.</param>
internal sealed record PageLink(string File, string Title);
