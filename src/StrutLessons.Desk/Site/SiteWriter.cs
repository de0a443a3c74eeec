using System.Text;
using StrutLessons.Kernel.Player;

namespace StrutLessons.Desk.Site;

/// <summary>Writes played lessons as a folder of pages that needs no server and no network.</summary>
public static class SiteWriter
{
    /// <summary>Writes index page, lesson pages and assets.</summary>
    /// <param name="lessons">The lessons in the order of the course.</param>
    /// <param name="folder">Made if missing; files with the same names are replaced.</param>
    /// <returns>The index page's path.</returns>
    public static string Write(IReadOnlyList<PlayedLesson> lessons, string folder)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        Directory.CreateDirectory(folder);
        var entries = lessons.Select(lesson => (Page: new LessonPage(lesson), Link: new PageLink(lesson.Notebook.Name + ".html", lesson.Notebook.Title),
            Card: LessonCard.Of(lesson.Notebook))).ToArray();
        for (var i = 0; i < entries.Length; i++)
        {
            var page = entries[i].Page.Write(
                i > 0 ? entries[i - 1].Link : null, i + 1 < entries.Length ? entries[i + 1].Link : null);
            File.WriteAllText(Path.Combine(folder, entries[i].Link.File), page, Encoding.UTF8);
        }
        var index = Path.Combine(folder, "index.html");
        File.WriteAllText(index, IndexPage.Write([.. entries.Select(entry => (entry.Link, entry.Card))]), Encoding.UTF8);
        SiteAssets.WriteTo(Path.Combine(folder, "assets"), entries.Any(entry => entry.Page.HasCharts));
        return Path.GetFullPath(index);
    }
}
