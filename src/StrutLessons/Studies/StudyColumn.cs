using System.Collections.Immutable;

namespace StrutLessons.Studies;

/// <summary>A column of a study's table.</summary>
/// <param name="Name">Name, for example <c>capacity</c>.</param>
/// <param name="Unit">Unit; "-" for a pure number, empty for words.</param>
/// <param name="Description">What it is.</param>
/// <param name="IsNumber">True if it holds numbers.</param>
public sealed record StudyColumn(string Name, string Unit, string Description, bool IsNumber)
{
    /// <summary>Name and unit as they stand in the table's first row: <c>capacity (kN)</c>.</summary>
    public string Heading => Unit.Length > 0 ? $"{Name} ({Unit})" : Name;

    /// <summary>Columns from the headings of a table that a study wrote: with a unit they hold numbers, without one words.</summary>
    public static ImmutableArray<StudyColumn> Read(IReadOnlyList<string> headings)
    {
        ArgumentNullException.ThrowIfNull(headings);
        return [.. headings.Select(h => TableReader.ColumnOf(h, true)).Select(c => c with { IsNumber = c.IsNumber && c.Unit.Length > 0 })];
    }

    /// <summary>Columns of a study: the case's number, its factors, the quantities, and what stands against it.</summary>
    public static ImmutableArray<StudyColumn> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return
        [
            new("case", "-", "number of the case in the order of the study", true),
            .. study.Factors.Select(f => new StudyColumn(f.Variable.Name, f.Variable.Unit, f.Variable.Description, f.Variable.IsNumber)),
            .. study.Quantities.Select(q => new StudyColumn(q.Name, q.Unit, q.Description, q.IsNumber)),
            new("problem", "", "why the case has no result; empty if it has one", false),
        ];
    }
}
