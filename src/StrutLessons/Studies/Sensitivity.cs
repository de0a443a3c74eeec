using System.Collections.Immutable;

namespace StrutLessons.Studies;

/// <summary>What one factor does alone: the result at its two ends while all others keep the values of the study's strut.</summary>
/// <param name="Variable">The factor.</param>
/// <param name="Low">Its first value as text, with the unit.</param>
/// <param name="High">Its last value.</param>
/// <param name="AtLow">Result at the first value.</param>
/// <param name="AtHigh">Result at the last value.</param>
public sealed record FactorSwing(StudyVariable Variable, string Low, string High, double AtLow, double AtHigh)
{
    /// <summary>|AtHigh − AtLow|.</summary>
    public double Size => Math.Abs(AtHigh - AtLow);
}

/// <summary>Swings of all factors about one strut.</summary>
/// <param name="Quantity">The result.</param>
/// <param name="Base">Its value for the study's own strut.</param>
/// <param name="Swings">The factors, largest swing first.</param>
public sealed record OneAtATime(StudyQuantity Quantity, double Base, ImmutableArray<FactorSwing> Swings);

/// <summary>Share of the variance of a result that a factor, or two together beyond their own shares, explain.</summary>
/// <param name="First">The factor.</param>
/// <param name="Second">The other factor of a pair; null for the factor alone.</param>
/// <param name="Share">0 to 1, up to the error of the sample.</param>
public sealed record VarianceShare(string First, string? Second, double Share);

/// <summary>Which factor matters most: one at a time, or by shares of the variance over the whole study.</summary>
public static class Sensitivity
{
    private const int Classes = 16;

    /// <summary>Moves one factor at a time between its first and last value; cheap, but blind to everything that factors do together.</summary>
    /// <param name="study">The study; its strut is the base.</param>
    /// <param name="quantity">A quantity of numbers.</param>
    /// <exception cref="InputException">A quantity of words, no factor, or a case that has no result.</exception>
    public static OneAtATime OneAtATime(Study study, StudyQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(quantity);
        if (quantity.Number is null || study.Factors.IsEmpty)
        {
            throw new InputException("study", quantity.Number is null ? $"'{quantity.Name}', a quantity of words" : "no factor", "a quantity of numbers and at least one factor", "Ask for example for the capacity.");
        }

        var solver = new StudySolver(quantity.Needs, quantity.Rule is { } rule ? [rule] : []);
        double middle = Value(study.Strut, "the study's strut");
        return new(quantity, middle, [.. study.Factors.Select(f =>
        {
            bool words = !f.Variable.IsNumber;
            string unit = f.Variable.Unit is "" or "-" ? "" : " " + f.Variable.Unit;
            string low = words ? f.Names[0] : Guard.Text(f.Numbers[0]) + unit, high = words ? f.Names[^1] : Guard.Text(f.Numbers[^1]) + unit;
            return new FactorSwing(f.Variable, low, high, Value(f.Put(study.Strut, f.IsInterval ? f.Numbers[0] : 0), low), Value(f.Put(study.Strut, f.IsInterval ? f.Numbers[1] : f.Count - 1), high));
        }).OrderByDescending(s => s.Size)]);

        double Value(StudyStrut strut, string where)
        {
            solver.Solve(strut);
            return solver.Result.Problem is null ? quantity.Number!(solver.Result) : throw new InputException("case", where, "possible", solver.Result.Problem);
        }
    }

    /// <summary>
    /// First-order shares V(E(Y|X_i))/V(Y) and the pairs' shares beyond them, largest first. Exact for a full grid; for samples the values are sorted
    /// into classes, and what chance alone would explain is taken off. Source: Saltelli et al., Global Sensitivity Analysis. The Primer, 2008, ch. 1 and 4 (from memory).
    /// </summary>
    /// <param name="table">Table of a study; rows without a result are left out.</param>
    /// <param name="quantity">Name of the column of results.</param>
    /// <param name="factors">Names of the columns of factors.</param>
    /// <exception cref="InputException">An unknown column, fewer than eight rows, or results that do not vary.</exception>
    public static IReadOnlyList<VarianceShare> Shares(StudyTable table, string quantity, params IReadOnlyList<string> factors)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(factors);
        ImmutableArray<double> all = table.Numbers(quantity);
        int[] rows = [.. Enumerable.Range(0, table.RowCount).Where(i => double.IsFinite(all[i]))];
        double[] y = [.. rows.Select(i => all[i])];
        double mean = y.Length > 0 ? y.Average() : 0, variance = y.Length > 0 ? y.Average(v => (v - mean) * (v - mean)) : 0;
        if (y.Length < 8 || !(variance > 1e-24 * mean * mean))
        {
            throw new InputException(quantity, y.Length < 8 ? $"{y.Length} results" : "the same everywhere", "eight or more results that vary", "Run a larger study.");
        }

        bool sampled = factors.Any(f => table.Column(f).IsNumber && IsMany(table.Numbers(f)));
        int[][] classes = [.. factors.Select(f => ClassesOf(table, f, rows))];
        double Part(int[] of) => Corrected(Explained(y, of, mean) / variance, sampled ? of.Distinct().Count() : 0, y.Length);
        double[] alone = [.. classes.Select(Part)];
        List<VarianceShare> shares = [.. factors.Select((f, i) => new VarianceShare(f, null, alone[i]))];
        for (int i = 0; i < factors.Count; i++)
        {
            for (int j = i + 1; j < factors.Count; j++)
            {
                int[] both = [.. classes[i].Zip(classes[j], (a, b) => a * 10_000 + b)];
                shares.Add(new(factors[i], factors[j], Part(both) - alone[i] - alone[j]));
            }
        }

        return [.. shares.OrderByDescending(s => s.Share)];
    }

    /// <summary>
    /// Means of classes with few cases differ by chance alone; ε² takes that out of η² (Kelley, 1935, from memory). A full grid has no chance in it.
    /// </summary>
    private static double Corrected(double explained, int classes, int count) => classes > 0 && count > classes
        ? 1 - (1 - explained) * (count - 1) / (count - classes)
        : explained;

    /// <summary>Variance of the means of the classes.</summary>
    private static double Explained(double[] y, int[] classes, double mean) =>
        y.Zip(classes).GroupBy(p => p.Second).Sum(g => g.Count() * Math.Pow(g.Average(p => p.First) - mean, 2)) / y.Length;

    /// <summary>Each value a class where few differ; else classes with equal numbers of rows.</summary>
    private static int[] ClassesOf(StudyTable table, string factor, int[] rows)
    {
        if (!table.Column(factor).IsNumber)
        {
            ImmutableArray<string> words = table.Words(factor);
            return Numbered([.. rows.Select(i => words[i])]);
        }

        ImmutableArray<double> numbers = table.Numbers(factor);
        double[] x = [.. rows.Select(i => numbers[i])];
        if (!IsMany(numbers))
        {
            return Numbered(x);
        }

        int[] order = [.. Enumerable.Range(0, x.Length).OrderBy(i => x[i])], classes = new int[x.Length];
        for (int k = 0; k < order.Length; k++)
        {
            classes[order[k]] = (int)((long)k * Classes / order.Length);
        }

        return classes;
    }

    private static bool IsMany(ImmutableArray<double> values) => values.Distinct().Take(65).Count() > 64;

    private static int[] Numbered<T>(T[] values) where T : notnull
    {
        Dictionary<T, int> names = [];
        return [.. values.Select(v => names.TryGetValue(v, out int n) ? n : names[v] = names.Count)];
    }
}
