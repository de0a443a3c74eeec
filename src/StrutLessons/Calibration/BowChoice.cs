using StrutLessons.Capacity;
using StrutLessons.Member;

namespace StrutLessons.Calibration;

/// <summary>One bow amplitude on trial.</summary>
/// <param name="Divisor">The bow is L over this number.</param>
/// <param name="Ratios">Reference over elastic model with that bow, over all struts and both borderline supports.</param>
/// <param name="IsSafe">True if the stated share of the ratios is 1 or more.</param>
public sealed record BowCandidate(double Divisor, RatioStatistics Ratios, bool IsSafe)
{
    /// <summary>What is minimised: root mean square distance of the ratios from 1.</summary>
    public double Scatter => Ratios.DistanceFromOne;
}

/// <summary>
/// Choice of the elastic models' bow from borderline supports: every strut once hinged and once rigid. Of the amplitudes that keep a stated share of the
/// ratios on the safe side, the one with the least scatter about 1 is chosen. Immutable.
/// </summary>
public sealed partial record BowChoice
{
    private BowChoice(RatioGrid grid, ElasticModel model, double share, BowCandidate[] candidates)
    {
        (Grid, Model, RequiredShare, Candidates) = (grid, model, share, candidates);
        Chosen = candidates.Where(c => c.IsSafe).MinBy(c => c.Scatter);
    }

    /// <summary>The references: struts hinged and rigid, one after the other.</summary>
    public RatioGrid Grid { get; }

    /// <summary>The elastic model.</summary>
    public ElasticModel Model { get; }

    /// <summary>Share of the ratios that must be 1 or more.</summary>
    public double RequiredShare { get; }

    /// <summary>The amplitudes on trial, in the order given.</summary>
    public IReadOnlyList<BowCandidate> Candidates { get; }

    /// <summary>The chosen amplitude; null if none keeps the stated share on the safe side.</summary>
    public BowCandidate? Chosen { get; }

    /// <summary>Every strut once with hinges and once with rigid ends; load points and arms stay.</summary>
    public static IReadOnlyList<Strut> Borderline(IReadOnlyList<Strut> struts)
    {
        ArgumentNullException.ThrowIfNull(struts);
        return [.. struts.SelectMany(s => new[] { s.WithSprings(EndSpring.Hinged), s.WithSprings(EndSpring.Rigid) })];
    }

    /// <summary>Tries amplitudes on a grid of borderline supports. The references of the grid are used again; only the elastic model runs anew.</summary>
    /// <param name="grid">Grid over <see cref="Borderline"/> struts.</param>
    /// <param name="model">The elastic model.</param>
    /// <param name="divisors">Amplitudes as L over these numbers, each between 50 and 10 000.</param>
    /// <param name="safeShare">Share of the ratios that must be 1 or more, 0.5 to 1.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <exception cref="InputException">A strut of the grid has springs between hinged and rigid; no case; no divisor or one outside its range; a name that is none.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static BowChoice Of(
        RatioGrid grid, ElasticModel model, IReadOnlyList<double> divisors, double safeShare = 0.95, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(divisors);
        Guard.Named(model, "elastic model");
        Guard.Within(safeShare, 0.5, 1, "safe share", "", "1 keeps every case on the safe side.");
        if (divisors.Count == 0)
        {
            throw new InputException("bow divisors", "none", "at least one", "Try for example 200, 300, 500 and 1000.");
        }

        foreach (double divisor in divisors)
        {
            Guard.Within(divisor, 50, 10_000, "bow divisor", "", "300 is a bow of L/300.");
        }

        if (grid.Cases.FirstOrDefault(c => !IsBorderline(c.Strut)) is { } between)
        {
            throw new InputException("springs", $"between the borderline supports at strut {between.Index + 1}", "all hinged or all rigid",
                "Make the struts with BowChoice.Borderline.");
        }

        int cases = grid.Cases.Count;
        var ratios = new double[divisors.Count * cases];
        var options = new ParallelOptions { CancellationToken = cancellationToken, MaxDegreeOfParallelism = grid.Settings.Workers ?? Environment.ProcessorCount };
        Parallel.For(0, ratios.Length, options, i =>
        {
            RatioCase c = grid.Cases[i % cases];
            ratios[i] = c.Reference / Capacity(WithBow(c.Strut, divisors[i / cases]), model);
        });
        return new(grid, model, safeShare, [.. divisors.Select((divisor, d) =>
        {
            RatioStatistics statistics = RatioStatistics.Of(ratios[(d * cases)..((d + 1) * cases)]);
            return new BowCandidate(divisor, statistics, statistics.SafeShare >= safeShare);
        })]);
    }

    private static bool IsBorderline(Strut strut)
    {
        double[] springs = [strut.End1.Spring.InPlane, strut.End1.Spring.OutOfPlane, strut.End2.Spring.InPlane, strut.End2.Spring.OutOfPlane];
        return springs.All(s => s == 0) || springs.All(double.IsPositiveInfinity);
    }

    private static Strut WithBow(Strut strut, double divisor)
    {
        double e0 = strut.SystemLength / divisor;
        return strut.WithBows(Bow.AlongU(strut.Section, e0), Bow.AlongU(strut.Section, -e0));
    }

    private static double Capacity(Strut strut, ElasticModel model) => model == ElasticModel.Plane ? StrutCapacity.LoadOf(strut) : RatioGrid.WithRoll(strut);
}
