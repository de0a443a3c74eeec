using System.Text.RegularExpressions;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Site;

/// <summary>What the list of lessons says about a lesson, read from its file name and its first text cell.</summary>
/// <param name="Number">The number with which the file name begins; 0 if it has none.</param>
/// <param name="Title">The lesson's title.</param>
/// <param name="Abilities">What the reader will be able to do.</param>
/// <param name="Time">How long it takes, in words; empty if the lesson does not say.</param>
/// <param name="ForInstructors">True for a notebook in the folder of the instructors.</param>
public sealed partial record LessonCard(int Number, string Title, IReadOnlyList<string> Abilities, string Time, bool ForInstructors)
{
    /// <summary>Its place in the course, in words; empty if it has none.</summary>
    public string Place => Number > 0 ? $"{(ForInstructors ? "Study" : "Lesson")} {Number}" : "";

    /// <summary>Reads the card of a lesson.</summary>
    public static LessonCard Of(NotebookFile notebook)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        var opening = notebook.Cells.FirstOrDefault(cell => cell.Kind == CellKind.Text);
        var lines = opening?.Lines ?? [];
        string[] abilities =
        [
            .. lines.SkipWhile(line => !Promise().IsMatch(line)).Skip(1)
                .SkipWhile(string.IsNullOrWhiteSpace)
                .TakeWhile(line => Item().IsMatch(line))
                .Select(line => Item().Replace(line, "")),
        ];
        var time = lines.Select(line => TimeLine().Match(line)).FirstOrDefault(match => match.Success)?.Groups[1].Value.Trim() ?? "";
        var number = int.TryParse(notebook.Name.Split('-')[0], out var given) ? given : 0;
        var folder = Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(notebook.Path)));
        return new LessonCard(number, notebook.Title, abilities, time, folder == "instructors");
    }

    [GeneratedRegex(@"\byou (can|will be able to)\b|\bable to\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex(@"^\s*([-*+]|\d+[.)])\s+")]
    private static partial Regex Item();

    [GeneratedRegex(@"^\*\*Time\W*\*\*\W*(.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex TimeLine();
}
