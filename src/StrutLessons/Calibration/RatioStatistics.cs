using MathNet.Numerics.Statistics;

namespace StrutLessons.Calibration;

/// <summary>Statistics of a set of ratios. Immutable.</summary>
public sealed record RatioStatistics
{
    private readonly double[] sorted;

    private RatioStatistics(double[] sorted)
    {
        this.sorted = sorted;
        (Mean, StandardDeviation) = sorted.Length > 1 ? sorted.MeanStandardDeviation() : (sorted[0], 0);
    }

    /// <summary>The ratios in rising order.</summary>
    public IReadOnlyList<double> Sorted => sorted;

    /// <summary>Number of ratios.</summary>
    public int Count => sorted.Length;

    /// <summary>Smallest ratio.</summary>
    public double Minimum => sorted[0];

    /// <summary>Largest ratio.</summary>
    public double Maximum => sorted[^1];

    /// <summary>Mean.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation with n − 1; 0 for one ratio.</summary>
    public double StandardDeviation { get; }

    /// <summary>Coefficient of variation, standard deviation over mean.</summary>
    public double Variation => StandardDeviation / Mean;

    /// <summary>Median.</summary>
    public double Median => Fractile(0.5);

    /// <summary>Share of the ratios that are 1 or more: the model is on the safe side.</summary>
    public double SafeShare => (double)sorted.Count(r => r >= 1) / Count;

    /// <summary>Root mean square distance of the ratios from 1.</summary>
    public double DistanceFromOne => Math.Sqrt(sorted.Average(r => (r - 1) * (r - 1)));

    /// <summary>Empirical fractile, linear between the sorted ratios with the extremes at 0 and 1.</summary>
    /// <param name="share">Share of the ratios below it.</param>
    /// <exception cref="InputException">Outside 0 to 1.</exception>
    public double Fractile(double share) => SortedArrayStatistics.QuantileCustom(
        sorted, Guard.Within(share, 0, 1, "share", "", "The 5 % fractile is 0.05."), QuantileDefinition.R7);

    /// <summary>Statistics of ratios.</summary>
    /// <exception cref="InputException">No ratio, or one that is not positive.</exception>
    public static RatioStatistics Of(IReadOnlyList<double> ratios)
    {
        ArgumentNullException.ThrowIfNull(ratios);
        if (ratios.Count == 0)
        {
            throw new InputException("ratios", "none", "at least one", "No strut has a ratio; look at the reasons.");
        }

        return new([.. ratios.Select(r => Guard.Positive(r, "ratio", "", "A ratio of two loads is positive.")).Order()]);
    }
}
