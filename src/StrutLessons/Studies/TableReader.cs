using System.Collections.Immutable;
using System.Globalization;

namespace StrutLessons.Studies;

/// <summary>Makes a table of the rows of a file.</summary>
internal static class TableReader
{
    internal static StudyTable Read(IEnumerable<IReadOnlyList<string>> rows)
    {
        List<IReadOnlyList<string>> all = [.. rows];
        if (all.Count < 2)
        {
            throw new InputException("table", $"{all.Count} rows", "a row of headings and at least one more", "Give a table that a study wrote.");
        }

        IReadOnlyList<string> headings = all[0];
        all.RemoveAt(0);
        if (all.FindIndex(r => r.Count != headings.Count) is var odd and >= 0)
        {
            throw new InputException($"row {odd + 2}", $"{all[odd].Count} fields", $"as many as headings, {headings.Count}", "The file may be cut off or joined wrongly.");
        }

        ImmutableArray<StudyColumn> columns = [.. headings.Select((h, c) => ColumnOf(h, all.All(r => r[c].Length == 0 || IsNumber(r[c])) && all.Any(r => r[c].Length > 0)))];
        if (columns[^1].Name != "problem")
        {
            columns = columns.Add(new("problem", "", "why the case has no result; empty if it has one", false));
            all = [.. all.Select(r => (IReadOnlyList<string>)[.. r, ""])];
        }

        var table = new TableRows(columns);
        all.ForEach(table.Add);
        return table.ToTable();
    }

    /// <summary>A heading is a name, with its unit in brackets at the end.</summary>
    internal static StudyColumn ColumnOf(string heading, bool isNumber)
    {
        int open = heading.EndsWith(')') ? heading.LastIndexOf(" (", StringComparison.Ordinal) : -1;
        (string name, string unit) = open > 0 ? (heading[..open], heading[(open + 2)..^1]) : (heading, "");
        string? described = StudyVariable.All.FirstOrDefault(v => v.Name == name)?.Description ?? StudyQuantity.All.FirstOrDefault(q => q.Name == name)?.Description
            ?? name switch { "case" => "number of the case in the order of the study", "problem" => "why the case has no result; empty if it has one", _ => null };
        return new(name, unit, described ?? "", isNumber && name != "problem");
    }

    private static bool IsNumber(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
