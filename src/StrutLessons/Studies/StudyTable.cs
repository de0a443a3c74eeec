using System.Collections.Immutable;

namespace StrutLessons.Studies;

/// <summary>The results of a study in memory: columns of numbers and of words. Immutable.</summary>
public sealed record StudyTable
{
    private readonly ImmutableArray<ImmutableArray<double>> numbers;
    private readonly ImmutableArray<ImmutableArray<string>> words;

    internal StudyTable(ImmutableArray<StudyColumn> columns, ImmutableArray<ImmutableArray<double>> numbers, ImmutableArray<ImmutableArray<string>> words)
    {
        Columns = columns;
        this.numbers = numbers;
        this.words = words;
        RowCount = columns[0].IsNumber ? numbers[0].Length : words[0].Length;
    }

    /// <summary>The columns in order.</summary>
    public ImmutableArray<StudyColumn> Columns { get; }

    /// <summary>How many rows there are.</summary>
    public int RowCount { get; }

    /// <summary>How many rows have no result, with the reason in the column "problem".</summary>
    public int ProblemCount => words[^1].Count(w => w.Length > 0);

    /// <summary>The numbers of a column; NaN where a row has none.</summary>
    /// <param name="name">Name of the column without its unit.</param>
    /// <exception cref="InputException">No such column, or one of words.</exception>
    public ImmutableArray<double> Numbers(string name)
    {
        int c = IndexOf(name);
        return Columns[c].IsNumber ? numbers[c] : throw new InputException("column", $"'{name}'", "a column of numbers", $"'{name}' holds words: use Words.");
    }

    /// <summary>The words of a column; numbers are written out.</summary>
    /// <param name="name">Name of the column without its unit.</param>
    /// <exception cref="InputException">No such column.</exception>
    public ImmutableArray<string> Words(string name)
    {
        int c = IndexOf(name);
        return Columns[c].IsNumber ? [.. numbers[c].Select(Guard.Text)] : words[c];
    }

    /// <summary>The column of this name.</summary>
    /// <exception cref="InputException">No such column.</exception>
    public StudyColumn Column(string name) => Columns[IndexOf(name)];

    /// <summary>The rows for which a condition holds, by the row's place from 0.</summary>
    /// <exception cref="InputException">No row is left.</exception>
    public StudyTable Where(Func<int, bool> condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        int[] kept = [.. Enumerable.Range(0, RowCount).Where(condition)];
        return kept.Length > 0
            ? new(Columns, [.. numbers.Select(n => n.IsEmpty ? n : [.. kept.Select(i => n[i])])], [.. words.Select(w => w.IsEmpty ? w : [.. kept.Select(i => w[i])])])
            : throw new InputException("condition", "false for every row", "true for at least one", "Look at the table without it first.");
    }

    /// <summary>The rows that have a result.</summary>
    /// <exception cref="InputException">No row has one.</exception>
    public StudyTable Solved() => ProblemCount == 0 ? this : Where(i => words[^1][i].Length == 0);

    /// <summary>Reads a table that a study wrote, or any file of comma-separated values with a first row of headings such as <c>capacity (kN)</c>.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="InputException">No headings, a row with too few or too many fields, or no rows.</exception>
    public static StudyTable Read(string path)
    {
        using var reader = new StreamReader(path);
        return TableReader.Read(CsvRows.Read(reader));
    }

    private int IndexOf(string name)
    {
        int found = Columns.IndexOf(Columns.FirstOrDefault(c => c.Name == name)!);
        return found >= 0 ? found : throw new InputException("column", $"'{name}'", "one of " + string.Join(", ", Columns.Select(c => c.Name)), "Choose one of these names, without the unit.");
    }
}
