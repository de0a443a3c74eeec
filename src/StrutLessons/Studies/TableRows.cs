using System.Collections.Immutable;

namespace StrutLessons.Studies;

/// <summary>Collects rows column by column.</summary>
internal sealed class TableRows : IStudyRows
{
    private readonly ImmutableArray<StudyColumn> columns;
    private readonly List<double>[] numbers;
    private readonly List<string>[] words;

    internal TableRows(Study study) : this(StudyColumn.Of(study))
    {
    }

    internal TableRows(ImmutableArray<StudyColumn> columns)
    {
        this.columns = columns;
        numbers = [.. columns.Select(_ => new List<double>())];
        words = [.. columns.Select(_ => new List<string>())];
    }

    public void Add(Study study, long index, ReadOnlySpan<double> places, StudyResult result)
    {
        numbers[0].Add(index + 1);
        int c = 1;
        for (int f = 0; f < study.Factors.Length; f++, c++)
        {
            StudyFactor factor = study.Factors[f];
            if (!factor.Variable.IsNumber)
            {
                words[c].Add(factor.Names[(int)places[f]]);
            }
            else
            {
                numbers[c].Add(factor.IsInterval ? places[f] : factor.Numbers[(int)places[f]]);
            }
        }

        foreach (StudyQuantity quantity in study.Quantities)
        {
            if (quantity.Number is { } number)
            {
                double value = result.Problem is null ? number(result) : double.NaN;
                numbers[c++].Add(double.IsFinite(value) ? value : double.NaN);
            }
            else
            {
                words[c++].Add(result.Problem is null ? quantity.Word!(result) : "");
            }
        }

        words[c].Add(result.Problem ?? "");
    }

    /// <summary>Adds a row of a file; an empty field of a number has no value.</summary>
    internal void Add(IReadOnlyList<string> fields)
    {
        for (int c = 0; c < columns.Length; c++)
        {
            if (columns[c].IsNumber)
            {
                numbers[c].Add(double.TryParse(fields[c], System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out double value) ? value : double.NaN);
            }
            else
            {
                words[c].Add(fields[c]);
            }
        }
    }

    internal void Append(TableRows rows)
    {
        for (int c = 0; c < columns.Length; c++)
        {
            numbers[c].AddRange(rows.numbers[c]);
            words[c].AddRange(rows.words[c]);
        }
    }

    internal StudyTable ToTable() => new(columns, [.. numbers.Select(n => n.ToImmutableArray())], [.. words.Select(w => w.ToImmutableArray())]);
}
