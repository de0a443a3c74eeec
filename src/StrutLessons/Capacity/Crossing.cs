using StrutLessons.Member;
using StrutLessons.Stress;

namespace StrutLessons.Capacity;

/// <summary>A load and the share of the yield strength that the largest stress reaches there.</summary>
internal readonly record struct ScanPoint(double Load, double Share);

/// <summary>
/// Exact evaluation of the largest stress at trial loads, and the root of s = f_y between two of them.
/// </summary>
/// <remarks>
/// The root is found on (s/f_y − 1)(1 − N/N_cr), which is almost straight because the pole of the buckling mode is taken out:
/// the secant of the scan, then secants of exact values, with bisection as their guard.
/// </remarks>
internal readonly ref struct Crossing
{
    private readonly ref readonly StrutNumbers strut;
    private readonly List<Trial>? trace;

    internal Crossing(ref readonly StrutNumbers strut, double critical, YieldCriterion criterion, List<Trial>? trace)
    {
        this.strut = ref strut;
        this.trace = trace;
        Critical = critical;
        Compression = criterion != YieldCriterion.Tension;
        Tension = criterion != YieldCriterion.Compression;
    }

    internal ref readonly StrutNumbers Strut => ref strut;

    internal double Critical { get; }

    internal bool Compression { get; }

    internal bool Tension { get; }

    /// <summary>Largest stress in the sense that counts, at one load.</summary>
    internal Trial Try(double load)
    {
        Peak peak = new StressWave(in strut, load).Largest(Compression, Tension);
        var trial = new Trial(
            load, peak.Stress, peak.Sense > 0 ? CapacityReason.Compression : CapacityReason.Tension, peak.Corner, peak.Eta);
        trace?.Add(trial);
        return trial;
    }

    internal double Share(double load) => Try(load).Stress / strut.YieldStrength;

    /// <summary>Golden-section search for a local maximum of the stress between two loads; true as soon as it yields.</summary>
    internal bool ClimbHump(double low, double middle, double high, out ScanPoint top)
    {
        const double golden = 0.381966011250105;
        top = new ScanPoint(middle, Share(middle));
        for (int i = 0; i < 60 && top.Share < 1 && high - low > 1e-9 * high; i++)
        {
            bool up = high - top.Load > top.Load - low;
            double next = up ? top.Load + golden * (high - top.Load) : top.Load - golden * (top.Load - low);
            double share = Share(next);
            if (share > top.Share)
            {
                (low, high) = up ? (top.Load, high) : (low, top.Load);
                top = new ScanPoint(next, share);
            }
            else
            {
                (low, high) = up ? (low, next) : (next, high);
            }
        }

        return top.Share >= 1;
    }

    /// <summary>The crossing between two loads of which the upper one yields.</summary>
    /// <param name="earlier">The scan's load before the lower one; it only improves the first guess.</param>
    /// <param name="lower">A load that does not yield as far as the scan can tell.</param>
    /// <param name="upper">A load that yields.</param>
    /// <param name="found">The crossing.</param>
    internal bool CloseIn(ScanPoint earlier, ScanPoint lower, ScanPoint upper, out FirstYieldLoad found)
    {
        if (lower.Share > 0.9 && Share(lower.Load) >= 1)
        {
            // The scan's stations hid a crossing below its last load.
            return CloseIn(earlier, new ScanPoint(0.95 * lower.Load, 0), lower with { Share = 1 }, out found);
        }

        double low = lower.Load, high = upper.Load;
        double fLow = Straight(low, lower.Share), fHigh = Straight(high, upper.Share);
        double slope = (fHigh - fLow) / (high - low);
        double load = high - fHigh / slope;
        if (earlier.Load > 0 && earlier.Load < low)
        {
            // Parabola through three points of the scan: one correction of the secant, and its slope there.
            double bend = (slope - (fLow - Straight(earlier.Load, earlier.Share)) / (low - earlier.Load)) / (high - earlier.Load);
            double there = slope + bend * (2 * load - low - high);
            load -= bend * (load - low) * (load - high) / there;
            slope = there > 0 ? there : slope;
        }

        Trial trial = default, last = default;
        double fLast = 0;
        for (int i = 0; i < 100; i++)
        {
            load = load > low && load < high && i % 12 != 11 ? load : 0.5 * (low + high);
            trial = Try(load);
            double f = Straight(load, trial.Stress / strut.YieldStrength);
            (low, high) = f >= 0 ? (low, load) : (load, high);
            slope = i == 0 || f == fLast ? slope : (f - fLast) / (load - last.Load);
            double step = -f / slope;
            // A secant step leaves an error of the order of this step times the one before, as long as the same corner governs.
            double left = i > 0 && trial.Corner == last.Corner && trial.Sense == last.Sense
                ? Math.Abs(step) * Math.Abs(load - last.Load) / load
                : 1e-3 * Math.Abs(step);
            (last, fLast) = (trial, f);
            load += step;
            if (left <= 1e-12 * load || high - low <= 4e-16 * high)
            {
                break;
            }
        }

        found = new(Math.Clamp(load, low, high), trial.Sense, trial.Corner, trial.Eta);
        return true;
    }

    private double Straight(double load, double share) => (share - 1) * (1 - load / Critical);
}
