using StrutLessons.Studies;

namespace StrutLessons.Notebook.Tables;

/// <summary>Tables of studies in a cell.</summary>
public static class StudyRows
{
    private const int Most = 12;

    /// <summary>The first rows of a study, and how many there are; the column of problems only if there are any.</summary>
    /// <param name="table">The study's table.</param>
    /// <param name="rows">How many rows are shown.</param>
    public static Table First(StudyTable table, int rows = Most)
    {
        ArgumentNullException.ThrowIfNull(table);
        StudyColumn[] shown = [.. table.Columns.Where(c => c.Name != "problem" || table.ProblemCount > 0)];
        int count = Math.Clamp(rows, 1, table.RowCount);
        string title = $"{table.RowCount} cases{(table.ProblemCount > 0 ? $", {table.ProblemCount} of them not possible" : "")}{(count < table.RowCount ? $"; the first {count}" : "")}";
        return Table.Of(title, [.. shown.Select(c => c.Heading.Replace("(-)", "(–)", StringComparison.Ordinal))]).For(Enumerable.Range(0, count), r =>
            [.. shown.Select(c => c.IsNumber ? (object)table.Numbers(c.Name)[r] : table.Words(c.Name)[r])]);
    }
}
