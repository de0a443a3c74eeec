using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Stress;

/// <summary>A stress and where it acts.</summary>
/// <param name="Stress">MPa, in the sense of the list it stands in (compression or tension).</param>
/// <param name="Corner">Corner of the section.</param>
/// <param name="X">Place along the bar, mm.</param>
public readonly record struct StressPlace(double Stress, Corner Corner, double X);

/// <summary>
/// The largest stresses of a strut under one load. Symmetric struts and equal angles have several places with the same stress;
/// the first named has the smallest x, then comes the order of the corners.
/// </summary>
/// <param name="Compression">Places of the largest compressive stress, MPa.</param>
/// <param name="Tension">Places of the largest tensile stress, MPa; negative if no corner is in tension.</param>
public sealed record StressExtremes(IReadOnlyList<StressPlace> Compression, IReadOnlyList<StressPlace> Tension)
{
    /// <summary>Largest compressive stress, MPa.</summary>
    public double LargestCompression => Compression[0].Stress;

    /// <summary>Largest tensile stress, MPa; negative if no corner is in tension.</summary>
    public double LargestTension => Tension[0].Stress;

    /// <summary>Larger of the two, MPa.</summary>
    public double Largest => Math.Max(LargestCompression, LargestTension);

    /// <summary>The largest stresses of a solution and every place where they act.</summary>
    public static StressExtremes Of(SecondOrderSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        var wave = new StressWave(in solution.Numbers, solution.Load);
        return new(Places(wave.AllLargest(1)), Places(wave.AllLargest(-1)));

        IReadOnlyList<StressPlace> Places(List<Peak> peaks) =>
            [.. peaks.Select(p => new StressPlace(p.Stress, (Corner)p.Corner, 0.5 * (1 + p.Eta) * solution.Strut.BarLength))
                .OrderBy(p => Math.Round(p.X, 6)).ThenBy(p => p.Corner)];
    }
}

/// <summary>Stresses asked of a solution.</summary>
public static class StressQuestions
{
    /// <summary>The largest compressive and tensile stresses and where they are.</summary>
    public static StressExtremes Extremes(this SecondOrderSolution solution) => StressExtremes.Of(solution);
}
