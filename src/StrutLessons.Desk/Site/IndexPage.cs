namespace StrutLessons.Desk.Site;

/// <summary>The page that lists the lessons.</summary>
internal static class IndexPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="lessons">The lessons in order.</param>
    /// <param name="remark">More about a lesson, as HTML; null for nothing.</param>
    /// <param name="head">Further elements of the head.</param>
    internal static string Write(IReadOnlyList<(PageLink Link, LessonCard Card)> lessons, Func<PageLink, string>? remark = null, string head = "")
    {
        var prose = new Prose();
        string Items(bool forInstructors) => string.Concat(lessons.Where(lesson => lesson.Card.ForInstructors == forInstructors)
            .Select(lesson => Item(lesson.Link, lesson.Card, remark?.Invoke(lesson.Link) ?? "", prose)));
        var (course, studies) = (Items(forInstructors: false), Items(forInstructors: true));
        return new PageFrame("StrutLessons", "Lessons on the steel angle strut and its end connections.", prose.HasMaths, Head: head).Wrap($"""
            <div class="page">
            <main id="main" tabindex="-1">
            <h1>Why the ends decide what a strut can carry</h1>
            <p class="lead">A steel angle, bolted through one leg to a gusset plate, is neither hinged nor clamped. These lessons follow
            one such strut, a diagonal in the bracing of a conveyor gallery, from its bolt line to its capacity. Every number is
            computed on the page, and every formula says where it comes from.</p>
            {(lessons.Count == 0 ? "<p>There is no lesson yet.</p>" : "")}{List(course)}{(studies.Length == 0 ? "" : $"<h2>For instructors</h2>\n<p>Studies that answer a question for a class.</p>\n{List(studies)}")}
            </main>
            </div>
            """);
    }

    private static string List(string items) => items.Length == 0 ? "" : $"<ol class=\"lessons\">\n{items}</ol>\n";

    private static string Item(PageLink link, LessonCard card, string remark, Prose prose) => $"""
        <li{(card.Number > 0 ? $" value=\"{card.Number}\"" : "")}>
        <h2><a href="{link.File}">{Html.Escape(card.Title)}</a></h2>
        {(card.Time.Length > 0 ? $"<p class=\"time\">{Html.Escape(card.Time)}</p>\n" : "")}{remark}{Abilities(card, prose)}</li>

        """;

    private static string Abilities(LessonCard card, Prose prose) => card.Abilities.Count == 0
        ? ""
        : $"<p>After it you can:</p>\n<ul>{string.Concat(card.Abilities.Select(line => $"<li>{prose.Inline(line)}</li>"))}</ul>\n";
}
