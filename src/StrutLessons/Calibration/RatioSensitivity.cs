namespace StrutLessons.Calibration;

/// <summary>The ratios at one level of a variable.</summary>
/// <param name="Name">The level in words.</param>
/// <param name="Ratios">Ratios of the cases at this level.</param>
public sealed record RatioLevel(string Name, RatioStatistics Ratios);

/// <summary>How much one variable moves the ratio.</summary>
/// <param name="Variable">The variable.</param>
/// <param name="Share">Share of the scatter that lies between its levels, 0 to 1: variance of the levels' means over the whole variance (correlation ratio η²).</param>
/// <param name="Levels">Its levels in rising order; words in the order of the grid.</param>
public sealed record RatioInfluence(RatioVariable Variable, double Share, IReadOnlyList<RatioLevel> Levels);

/// <summary>Which variables of a grid move the ratio of reference to model, and by how much. Immutable.</summary>
public sealed record RatioSensitivity
{
    private const int MostLevels = 9, Classes = 5;

    private RatioSensitivity(RatioGrid grid, ElasticModel model, RatioInfluence[] influences) => (Grid, Model, Influences) = (grid, model, influences);

    /// <summary>The grid.</summary>
    public RatioGrid Grid { get; }

    /// <summary>The elastic model.</summary>
    public ElasticModel Model { get; }

    /// <summary>The variables that differ within the grid, the most influential one first.</summary>
    public IReadOnlyList<RatioInfluence> Influences { get; }

    /// <summary>Sorts the ratios by the levels of each variable. Up to nine different numbers are levels of their own; more are sorted into five classes of equal size.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="model">The elastic model.</param>
    /// <param name="variables">The variables; <see cref="RatioVariable.Usual"/> if none is given. Those with one level alone are left out.</param>
    /// <exception cref="InputException">No case, no variable that differs, or a name that is none.</exception>
    public static RatioSensitivity Of(RatioGrid grid, ElasticModel model, params IReadOnlyList<RatioVariable> variables)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(variables);
        RatioStatistics all = grid.Statistics(Guard.Named(model, "elastic model"));
        double variance = all.Sorted.Average(r => (r - all.Mean) * (r - all.Mean));
        RatioInfluence[] found = [.. (variables.Count > 0 ? variables : RatioVariable.Usual).Select(v => Influence(grid, model, v, all.Mean, variance))
            .Where(i => i.Levels.Count > 1).OrderByDescending(i => i.Share)];
        return found.Length > 0 ? new(grid, model, found) : throw new InputException("variables", "the same in all cases", "at least one that differs", "Vary something in the grid.");
    }

    private static RatioInfluence Influence(RatioGrid grid, ElasticModel model, RatioVariable variable, double mean, double variance)
    {
        (string Name, RatioCase[] Cases)[] levels = variable.Words is { } words
            ? [.. grid.Cases.GroupBy(words).Select(g => (g.Key, g.ToArray()))]
            : ByNumber(grid.Cases, variable.Number!);
        RatioLevel[] read = [.. levels.Select(l => new RatioLevel(l.Name, RatioStatistics.Of([.. l.Cases.Select(c => c.Ratio(model))])))];
        double between = read.Sum(l => l.Ratios.Count * (l.Ratios.Mean - mean) * (l.Ratios.Mean - mean)) / grid.Cases.Count;
        return new(variable, variance > 0 ? between / variance : 0, read);
    }

    private static (string, RatioCase[])[] ByNumber(IReadOnlyList<RatioCase> cases, Func<RatioCase, double> number)
    {
        // Six digits tell levels apart: what rounding left over is no difference.
        IGrouping<string, RatioCase>[] levels = [.. cases.GroupBy(c => Text(number(c), 6))];
        if (levels.Length <= MostLevels)
        {
            return [.. levels.OrderBy(g => number(g.First())).Select(g => (Text(number(g.First()), 3), g.ToArray()))];
        }

        RatioCase[] rising = [.. cases.OrderBy(number)];
        return [.. Enumerable.Range(0, Classes).Select(k => rising[(k * rising.Length / Classes)..((k + 1) * rising.Length / Classes)])
            .Where(part => part.Length > 0).Select(part => ($"{Text(number(part[0]), 3)} to {Text(number(part[^1]), 3)}", part))];
    }

    private static string Text(double value, int digits) =>
        double.IsPositiveInfinity(value) ? "rigid" : value.ToString($"G{digits}", System.Globalization.CultureInfo.InvariantCulture);
}
