using System.Collections.Concurrent;
using StrutLessons.Capacity;
using StrutLessons.Member;
using StrutLessons.Nonlinear;

namespace StrutLessons.Calibration;

/// <summary>
/// Ratios of the reference to both elastic models over a list of struts. Immutable.
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
public sealed record RatioGrid
{
    private RatioGrid(RatioSettings settings, RatioCase[] cases, RatioFailure[] failures) => (Settings, Cases, Failures) = (settings, cases, failures);

    /// <summary>How the reference was calculated.</summary>
    public RatioSettings Settings { get; }

    /// <summary>The struts with ratios, in the order given.</summary>
    public IReadOnlyList<RatioCase> Cases { get; }

    /// <summary>The struts without a ratio, in the order given. They are in no statistic.</summary>
    public IReadOnlyList<RatioFailure> Failures { get; }

    /// <summary>
    /// Cases whose reference turns off into a branch before its peak (see <see cref="RatioCase.StableToPeak"/>). They are in the statistics with the
    /// lower peak of the branch; <see cref="Where"/> leaves them out.
    /// </summary>
    public IReadOnlyList<RatioCase> Branching => [.. Cases.Where(c => !c.StableToPeak)];

    /// <summary>The same grid with fewer cases, for a closer look; nothing is calculated again.</summary>
    /// <param name="keep">Which cases stay.</param>
    public RatioGrid Where(Func<RatioCase, bool> keep)
    {
        ArgumentNullException.ThrowIfNull(keep);
        return new(Settings, [.. Cases.Where(keep)], [.. Failures]);
    }

    /// <summary>
    /// Minimum, fractiles, median and scatter of the ratios. Cases whose reference turns off into a branch are in it with their lower peak
    /// (see <see cref="RatioCase.StableToPeak"/>).
    /// </summary>
    /// <param name="model">The elastic model.</param>
    /// <exception cref="InputException">No strut has a ratio, or a model without a name.</exception>
    public RatioStatistics Statistics(ElasticModel model) => RatioStatistics.Of([.. Cases.Select(c => c.Ratio(model))]);

    /// <summary>Runs the reference and both models for every strut, in parallel. The result does not depend on the number of workers.</summary>
    /// <param name="struts">The struts with the bows of the elastic models (usually L/300 in both signs).</param>
    /// <param name="settings">How the reference is calculated; <see cref="RatioSettings.Default"/> if left out.</param>
    /// <param name="progress">Receives the number of struts done.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <exception cref="InputException">No strut is given, or one carries a constant joint moment.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static RatioGrid Run(
        IReadOnlyList<Strut> struts, RatioSettings? settings = null, IProgress<int>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(struts);
        RatioSettings chosen = settings ?? RatioSettings.Default;
        if (struts.Count == 0)
        {
            throw new InputException("struts", "none", "at least one", "Give the struts of the grid.");
        }

        // A wrong strut is told before hours are spent on the others.
        ReferenceStrut[][] references = [.. struts.Select(s => References(s, chosen))];
        var cases = new RatioCase?[struts.Count];
        var failures = new RatioFailure?[struts.Count];
        int done = 0;
        var options = new ParallelOptions { CancellationToken = cancellationToken, MaxDegreeOfParallelism = chosen.Workers ?? Environment.ProcessorCount };
        // Struts differ in their time: workers take them one by one.
        Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, struts.Count), EnumerablePartitionerOptions.NoBuffering), options, i =>
        {
            (cases[i], failures[i]) = Solve(i, struts[i], references[i], chosen, cancellationToken);
            progress?.Report(Interlocked.Increment(ref done));
        });
        return new(chosen, [.. cases.OfType<RatioCase>()], [.. failures.OfType<RatioFailure>()]);
    }

    /// <summary>Lowest first yield with roll over the strut's bows, N.</summary>
    internal static double WithRoll(Strut strut) =>
        strut.Bows.Min(b => RollAnalysis.Capacity(ReferenceStrut.Of(strut, b, 0)).WithRoll.Load);

    private static ReferenceStrut[] References(Strut strut, RatioSettings settings)
    {
        ArgumentNullException.ThrowIfNull(strut);
        double e0 = settings.BowRatio * strut.SystemLength;
        double[] amplitudes = e0 == 0 ? [0] : [e0, -e0];
        return [.. amplitudes.Select(e => ReferenceStrut.Of(strut, Bow.AlongU(strut.Section, e), settings.ResidualPeak))];
    }

    private static (RatioCase?, RatioFailure?) Solve(
        int index, Strut strut, ReferenceStrut[] references, RatioSettings settings, CancellationToken cancellationToken)
    {
        LoadPath? lowest = null;
        foreach (ReferenceStrut reference in references)
        {
            LoadPath path = ReferenceAnalysis.Follow(reference, settings.Mesh, PathSettings.PeakOnly, null, cancellationToken);
            if (path.Peak is null)
            {
                return (null, new(index, strut, $"The reference with the bow ({Guard.Text(reference.Bow.Y)}, {Guard.Text(reference.Bow.Z)}) mm has no peak: {path.Reason}."));
            }

            lowest = lowest is null || path.LowestPeakLoad < lowest.LowestPeakLoad ? path : lowest;
        }

        double roll = lowest!.Peak!.Shape.Max(s => Math.Abs(s.Twist));
        return (new(index, strut, CriticalLoad.Of(strut), lowest.LowestPeakLoad, StrutCapacity.LoadOf(strut), WithRoll(strut), roll, lowest.StableToPeak), null);
    }
}
