using System.Collections.Immutable;
using StrutLessons.Standards;

namespace StrutLessons.Studies;

/// <summary>
/// A parameter study in a few lines: a strut, what varies, what is wanted. Immutable; every method returns a new study.
/// <code>Study.Of(new StudyStrut()).Vary(StudyVariable.GussetThickness, 6, 8, 10, 12).Range(StudyVariable.Slenderness, 0.4, 2.4, 21).Run()</code>
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
/// <remarks>
/// Cases are numbered from 1 in the order of the grid, the factor named last running fastest. A combination that no strut can have stays a row of
/// the table, with the reason; one that a filter leaves out has no row, but keeps its number.
/// </remarks>
public sealed record Study
{
    private Study(StudyStrut strut) => Strut = strut;

    /// <summary>The strut whose values are changed.</summary>
    public StudyStrut Strut { get; }

    /// <summary>What varies, in the order named.</summary>
    public ImmutableArray<StudyFactor> Factors { get; private init; } = [];

    /// <summary>What is found for each case.</summary>
    public ImmutableArray<StudyQuantity> Quantities { get; private init; } = [.. StudyQuantity.Usual];

    /// <summary>Grid or samples.</summary>
    public StudySampling Sampling { get; private init; }

    /// <summary>The stated key of the samples: the same key draws the same cases.</summary>
    public ulong Key { get; private init; }

    /// <summary>Number of samples; 0 for a grid.</summary>
    public long Samples { get; private init; }

    /// <summary>Number of cases before filters.</summary>
    public long Count => Sampling != StudySampling.Grid ? Samples : Factors.Aggregate(1L, (n, f) => n * f.Count);

    private ImmutableArray<Func<StudyStrut, bool>> Filters { get; init; } = [];

    /// <summary>A study around a strut.</summary>
    public static Study Of(StudyStrut strut) => new(strut);

    /// <summary>Lets a number take the values of a list.</summary>
    /// <exception cref="InputException">No value, a value that is not finite, or a variable that takes words.</exception>
    public Study Vary(StudyVariable variable, params IReadOnlyList<double> values) => With(StudyFactor.Of(Known(variable), values));

    /// <summary>Lets a choice take the words of a list, for example <c>Vary(StudyVariable.Section, "L 80x80x8", "L 100x65x8")</c>.</summary>
    /// <exception cref="InputException">No word, or one that the variable does not know.</exception>
    public Study Vary(StudyVariable variable, params IReadOnlyList<string> words) => With(StudyFactor.Of(Known(variable), words));

    /// <summary>Lets a number take evenly spaced values, both ends included.</summary>
    /// <exception cref="InputException">Fewer than two values, or ends that do not rise.</exception>
    public Study Range(StudyVariable variable, double from, double to, int count)
    {
        Guard.Within(count, 2, 1_000_000, "number of values", "Give 2 or more; 11 values make ten steps.");
        StudyFactor ends = StudyFactor.Between(Known(variable), from, to);
        // To twelve digits, so that 0.1 + 2 · 0.1 reads 0.3.
        return With(StudyFactor.Of(variable, [.. Enumerable.Range(0, count).Select(i => Rounded(ends.Numbers[0] + i * (to - from) / (count - 1)))]));
    }

    /// <summary>Lets a number take any value between two ends; such a study must be sampled.</summary>
    /// <exception cref="InputException">Ends that do not rise, or a variable that takes words.</exception>
    public Study Between(StudyVariable variable, double from, double to) => With(StudyFactor.Between(Known(variable), from, to));

    /// <summary>Leaves out the cases for which the condition is false.</summary>
    public Study Where(Func<StudyStrut, bool> condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return this with { Filters = Filters.Add(condition) };
    }

    /// <summary>Draws cases in place of the whole grid.</summary>
    /// <param name="count">How many, up to 10⁹.</param>
    /// <param name="key">The key that decides which; state it with the results.</param>
    /// <param name="sampling">Random or low discrepancy.</param>
    /// <exception cref="InputException">No cases, or not a sampling.</exception>
    public Study Sample(int count, ulong key, StudySampling sampling = StudySampling.LowDiscrepancy)
    {
        Guard.Within(count, 1, 1_000_000_000, "number of samples", "Some hundred show a trend, some thousand a distribution.");
        return Guard.Named(sampling, "sampling") == StudySampling.Grid
            ? throw new InputException("sampling", "grid", "random or low discrepancy", "A grid takes every combination; leave Sample out.")
            : this with { Samples = count, Key = key, Sampling = sampling };
    }

    /// <summary>Says what is to be found for each case.</summary>
    /// <exception cref="InputException">Nothing is wanted, or something twice.</exception>
    public Study Find(params IReadOnlyList<StudyQuantity> quantities)
    {
        ArgumentNullException.ThrowIfNull(quantities);
        return quantities.Count > 0 && quantities.Distinct().Count() == quantities.Count
            ? this with { Quantities = [.. quantities] }
            : throw new InputException("quantities", quantities.Count == 0 ? "none" : "one named twice", "at least one, each once", "Name what the table shall hold.");
    }

    /// <summary>The strut of one case.</summary>
    /// <param name="number">Number of the case, from 1.</param>
    /// <exception cref="InputException">No case has that number, or an interval in a grid.</exception>
    public StudyStrut Case(long number) => number >= 1 && number <= Checked().Count
        ? At(number - 1)
        : throw new InputException("case", $"{number}", $"between 1 and {Count}", "Cases are numbered from 1.");

    /// <summary>Runs the study and keeps its table in memory.</summary>
    /// <param name="settings">Threads, part, progress; all cores if left out.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <exception cref="InputException">An interval in a grid, or too many cases for memory.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public StudyTable Run(StudySettings? settings = null, CancellationToken cancellationToken = default) => StudyRun.ToTable(this, settings ?? StudySettings.Default, cancellationToken);

    /// <summary>Runs the study into a file of comma-separated values (RFC 4180), row by row, in memory that does not grow.</summary>
    /// <param name="path">The file; one that holds finished rows of the same study is continued.</param>
    /// <param name="settings">Threads, part, progress; all cores if left out.</param>
    /// <param name="cancellationToken">Stops the run; finished rows stay in the file.</param>
    /// <returns>Number of rows in the file.</returns>
    /// <exception cref="InputException">An interval in a grid, or a file of another study.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled; run again to go on.</exception>
    public long Write(string path, StudySettings? settings = null, CancellationToken cancellationToken = default) => StudyFile.Write(this, path, settings ?? StudySettings.Default, cancellationToken);

    internal StudyAnalyses Needs => Quantities.Aggregate(StudyAnalyses.Strut, (all, q) => all | q.Needs);

    internal IReadOnlyList<RuleChoice> Rules => [.. Quantities.Select(q => q.Rule).OfType<RuleChoice>()];

    /// <summary>This study, if it can run.</summary>
    internal Study Checked()
    {
        if (Sampling == StudySampling.Grid && Factors.FirstOrDefault(f => f.IsInterval) is { } interval)
        {
            throw new InputException(interval.Variable.Name, "an interval", "a list or a range in a grid", "Add Sample(count, key), or give the values with Vary or Range.");
        }

        return Count is > 0 and <= 1_000_000_000_000
            ? this
            : throw Guard.Fail(Count, "number of cases", "", "at most 1e12", "Take fewer values, or draw samples.");
    }

    /// <summary>Values of the factors for a case: a place in the list, or a number of an interval.</summary>
    internal void Places(long index, Span<double> places)
    {
        for (int f = Factors.Length - 1; f >= 0; f--)
        {
            StudyFactor factor = Factors[f];
            if (Sampling == StudySampling.Grid)
            {
                (index, long place) = Math.DivRem(index, factor.Count);
                places[f] = place;
            }
            else
            {
                places[f] = factor.At(Sampling == StudySampling.Random ? StudyDraw.Random(Key, index, f) : StudyDraw.Halton(Key, index, f));
            }
        }
    }

    /// <summary>The strut with these values.</summary>
    internal StudyStrut At(ReadOnlySpan<double> places)
    {
        StudyStrut strut = Strut;
        for (int f = 0; f < Factors.Length; f++)
        {
            strut = Factors[f].Put(strut, places[f]);
        }

        return strut;
    }

    internal bool Keeps(in StudyStrut strut)
    {
        foreach (Func<StudyStrut, bool> filter in Filters)
        {
            if (!filter(strut))
            {
                return false;
            }
        }

        return true;
    }

    private static double Rounded(double value) => double.Parse(value.ToString("G12", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);

    private static StudyVariable Known(StudyVariable variable)
    {
        ArgumentNullException.ThrowIfNull(variable);
        return variable;
    }

    private StudyStrut At(long index)
    {
        Span<double> places = stackalloc double[Factors.Length];
        Places(index, places);
        return At(places);
    }

    private Study With(StudyFactor factor) => Factors.Any(f => f.Variable == factor.Variable)
        ? throw new InputException(factor.Variable.Name, "named twice", "named once", "Put all its values into one list.")
        : Factors.Length < 30 ? this with { Factors = Factors.Add(factor) }
        : throw new InputException("factors", "more than 30", "at most 30", "Vary fewer inputs at a time.");
}
