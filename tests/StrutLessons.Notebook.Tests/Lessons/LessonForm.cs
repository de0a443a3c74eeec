using System.Text.RegularExpressions;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Notebook.Tests.Lessons;

/// <summary>
/// The form of a lesson, as far as a program can see it. For those who write lessons:
/// <list type="bullet">
/// <item>The file is named <c>NN-words-of-the-title.ipynb</c>, is saved without outputs, and every cell has an id of its own.</item>
/// <item>The first cell is text: <c># Title</c>, then a line that ends in "you can" or "able to" followed by a list of one to three
/// points, then <c>**Time:** 20 minutes</c>. There is no second first-level heading.</item>
/// <item>A code cell has at most 8 lines, and a line at most 90 characters: more does not fit a page without scrolling.</item>
/// <item>A paragraph that starts in bold with a full stop or colon (<c>**Predict.** …</c>) starts a box, and only the fixed
/// words start boxes. Predict, Limit case, Change it, Check yourself, Sources and Caution occur in every lesson; Look and Why
/// where they help. The words that every lesson has first appear in this order; Sources and Caution stand once, at the end.</item>
/// <item>There is a heading <c>## Summary</c> before the sources.</item>
/// <item>The caution says that the lesson is no design check, and that local codes and licensed practice decide.</item>
/// </list>
/// Figures are checked where they are made: see <see cref="LessonFigures"/>.
/// </summary>
internal static partial class LessonForm
{
    internal const int LinesPerCell = 8;
    internal const int CharactersPerLine = 90;

    private static readonly string[] Words = ["Predict", "Look", "Why", "Limit case", "Change it", "Check yourself", "Sources", "Caution"];
    private static readonly string[] Optional = ["Look", "Why"];

    /// <summary>Everything that is not as it should be, in words; empty for a good lesson.</summary>
    internal static IReadOnlyList<string> Faults(NotebookFile lesson) =>
        [.. File(lesson), .. Opening(lesson), .. Code(lesson), .. Boxes(lesson), .. Ending(lesson)];

    private static IEnumerable<string> File(NotebookFile lesson)
    {
        if (!FileName().IsMatch(lesson.Name))
        {
            yield return $"The file name {lesson.Name} is not of the form 01-words-of-the-title.";
        }
        if (lesson.HasOutputs)
        {
            yield return "The notebook was saved with outputs or execution counts.";
        }
        foreach (var cell in lesson.Cells.Where(cell => !CellId().IsMatch(cell.Id)))
        {
            yield return $"A cell has the id '{cell.Id}'; ids are 1 to 64 letters, digits, hyphens or underscores: {cell.Lines[0]}";
        }
        foreach (var twice in lesson.Cells.GroupBy(cell => cell.Id).Where(group => group.Count() > 1))
        {
            yield return $"The cell id '{twice.Key}' is used {twice.Count()} times.";
        }
    }

    private static IEnumerable<string> Opening(NotebookFile lesson)
    {
        if (lesson.Cells is not [{ Kind: CellKind.Text } first, ..] || !first.Lines[0].StartsWith("# ", StringComparison.Ordinal))
        {
            yield return "The first cell does not begin with the title (# …).";
            yield break;
        }
        if (TextLines(lesson).Count(line => line.StartsWith("# ", StringComparison.Ordinal)) > 1)
        {
            yield return "There is a second first-level heading.";
        }
        var promised = first.Lines.SkipWhile(line => !Promise().IsMatch(line)).Skip(1).SkipWhile(string.IsNullOrWhiteSpace)
            .TakeWhile(line => line.StartsWith("- ", StringComparison.Ordinal)).Count();
        if (promised is < 1 or > 3)
        {
            yield return $"The first cell says in {promised} points what the reader will be able to do; it should be 1 to 3 (a line ending in 'you can' or 'able to', then a list).";
        }
        if (!first.Lines.Any(line => Time().IsMatch(line)))
        {
            yield return "The first cell does not say how long the lesson takes (**Time:** 20 minutes).";
        }
    }

    private static IEnumerable<string> Code(NotebookFile lesson)
    {
        foreach (var cell in lesson.Cells.Where(cell => cell.Kind == CellKind.Code))
        {
            var lines = cell.Source.TrimEnd('\n').Split('\n');
            if (lines.Length > LinesPerCell)
            {
                yield return $"Cell '{cell.Id}' has {lines.Length} lines; at most {LinesPerCell} are allowed.";
            }
            if (lines.Any(line => line.Length > CharactersPerLine))
            {
                yield return $"Cell '{cell.Id}' has a line of more than {CharactersPerLine} characters.";
            }
        }
        if (lesson.Cells.All(cell => cell.Kind != CellKind.Code))
        {
            yield return "The lesson computes nothing.";
        }
    }

    private static IEnumerable<string> Boxes(NotebookFile lesson)
    {
        var leads = Leads(lesson).ToArray();
        foreach (var unknown in leads.Where(word => word != "Time" && !Words.Contains(word)).Distinct())
        {
            yield return $"'{unknown}' is not one of the words that start a box: {string.Join(", ", Words)}.";
        }
        foreach (var missing in Words.Except(Optional).Except(leads))
        {
            yield return $"The box '{missing}' is missing.";
        }
        var order = leads.Where(word => Words.Contains(word) && !Optional.Contains(word)).Distinct().ToArray();
        var wanted = order.OrderBy(word => Array.IndexOf(Words, word)).ToArray();
        if (!order.SequenceEqual(wanted))
        {
            yield return $"The boxes first appear in the order {string.Join(", ", order)}; it should be {string.Join(", ", wanted)}.";
        }
        if (leads.Count(word => word is "Sources") > 1 || leads.Count(word => word is "Caution") > 1)
        {
            yield return "Sources and Caution stand once, at the end.";
        }
    }

    private static IEnumerable<string> Ending(NotebookFile lesson)
    {
        var lines = TextLines(lesson).ToArray();
        var summary = Array.FindIndex(lines, line => line.Trim() == "## Summary");
        var sources = Array.FindLastIndex(lines, line => line.StartsWith("**Sources", StringComparison.Ordinal));
        if (summary < 0 || summary > sources)
        {
            yield return "There is no '## Summary' before the sources.";
        }
        var last = string.Join(' ', lines.Skip(Math.Max(0, Array.FindLastIndex(lines, line => line.StartsWith("**Caution", StringComparison.Ordinal)))));
        foreach (var needed in new[] { "design check", "local codes", "licensed practice" })
        {
            if (!last.Contains(needed, StringComparison.OrdinalIgnoreCase))
            {
                yield return $"The caution at the end does not mention '{needed}'.";
            }
        }
    }

    private static IEnumerable<string> Leads(NotebookFile lesson) =>
        lesson.Cells.Where(cell => cell.Kind == CellKind.Text)
            .SelectMany(cell => cell.Lines.Where((line, i) => i == 0 || string.IsNullOrWhiteSpace(cell.Lines[i - 1])))
            .Select(line => Lead().Match(line)).Where(match => match.Success).Select(match => match.Groups[1].Value);

    private static IEnumerable<string> TextLines(NotebookFile lesson) =>
        lesson.Cells.Where(cell => cell.Kind == CellKind.Text).SelectMany(cell => cell.Lines);

    [GeneratedRegex(@"^\d\d-[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex FileName();

    [GeneratedRegex("^[A-Za-z0-9_-]{1,64}$")]
    private static partial Regex CellId();

    [GeneratedRegex(@"\b(you can|able to)\b[^.]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex(@"^\*\*Time:\*\* \d+ minutes")]
    private static partial Regex Time();

    [GeneratedRegex(@"^\*\*([^*]+?)(?:[.:]\*\*|\*\*[.:])")]
    private static partial Regex Lead();
}
