using System.Runtime.CompilerServices;
using StrutLessons.Member;
using StrutLessons.Stress;

namespace StrutLessons.Capacity;

/// <summary>A load and the share of the yield strength that the largest stress reaches there, as the scan sees it and exactly.</summary>
/// <param name="Load">N.</param>
/// <param name="Share">Largest stress at the scan's stations over f_y.</param>
/// <param name="Exact">Largest stress of the whole strut over f_y; not a number where nobody has looked.</param>
internal readonly record struct ScanPoint(double Load, double Share, double Exact = double.NaN);

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
    internal Trial Try(double load) => Note(load, new StressWave(in strut, load).Largest(Compression, Tension));

    internal double Share(double load) => Try(load).Stress / strut.YieldStrength;

    /// <summary>Golden-section search for a local maximum of the stress between two loads; true as soon as it yields.</summary>
    internal bool ClimbHump(double low, double middle, double high, out ScanPoint top)
    {
        const double golden = 0.381966011250105;
        double found = Share(middle);
        top = new ScanPoint(middle, found, found);
        for (int i = 0; i < 60 && top.Share < 1 && high - low > 1e-5 * high; i++)
        {
            bool up = high - top.Load > top.Load - low;
            double next = up ? top.Load + golden * (high - top.Load) : top.Load - golden * (top.Load - low);
            double share = Share(next);
            if (share > top.Share)
            {
                (low, high) = up ? (top.Load, high) : (low, top.Load);
                top = new ScanPoint(next, share, share);
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
    /// <param name="lower">A load that does not yield: the scan and its bound, or an exact look, say so.</param>
    /// <param name="upper">A load that yields.</param>
    /// <param name="found">The crossing.</param>
    /// <param name="follow">
    /// True to follow the peak that was largest at the first trial: quicker than looking everywhere at every trial. At the end the
    /// whole strut is looked at; if another peak is larger there, or the peak jumps, all is done again without following.
    /// </param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal bool CloseIn(ScanPoint earlier, ScanPoint lower, ScanPoint upper, out FirstYieldLoad found, bool follow = true)
    {
        double low = lower.Load, high = upper.Load;
        double fLow = Straight(low, lower.Share), fHigh = Straight(high, upper.Share);
        double slope = (fHigh - fLow) / (high - low);
        // The scan's curve, shifted onto an exact value at one of its ends.
        double shift = !double.IsNaN(lower.Exact) ? Straight(low, lower.Exact) - fLow : !double.IsNaN(upper.Exact) ? Straight(high, upper.Exact) - fHigh : 0;
        double load = high - (fHigh + shift) / slope;
        if (earlier.Load > 0 && earlier.Load < low)
        {
            // Parabola through three points of the scan: one correction of the secant, and its slope there.
            double bend = (slope - (fLow - Straight(earlier.Load, earlier.Share)) / (low - earlier.Load)) / (high - earlier.Load);
            double there = slope + bend * (2 * load - low - high);
            load -= bend * (load - low) * (load - high) / there;
            slope = there > 0 ? there : slope;
        }

        Peak peak = default;
        Trial trial = default, last = default;
        double fLast = 0, chordLast = 0, before = 0;
        int alike = 0;
        for (int i = 0; i < 100; i++)
        {
            load = load > low && load < high && i % 12 != 11 ? load : 0.5 * (low + high);
            var wave = new StressWave(in strut, load);
            bool follows = follow && i > 0;
            if (!follows)
            {
                peak = wave.Largest(Compression, Tension);
            }
            else if (!wave.Follow(ref peak))
            {
                return CloseIn(earlier, lower, upper, out found, follow: false);
            }

            trial = Note(load, peak);
            double f = Straight(load, trial.Stress / strut.YieldStrength);
            (low, high) = f >= 0 ? (low, load) : (load, high);
            double way = load - last.Load, chord = i == 0 || f == fLast ? slope : (f - fLast) / way;
            bool same = trial.Corner == last.Corner && trial.Sense == last.Sense && Math.Abs(trial.Eta - last.Eta) < 0.3;
            alike = i > 0 && same ? alike + 1 : 0;
            // Three trials at the same corner lie on a parabola: its slope at the last of them is better than the chord's.
            double curved = alike > 1 ? chord + way * (chord - chordLast) / (load - before) : chord;
            slope = curved > 0.5 * chord ? curved : chord;
            double step = -f / slope;
            // What a step leaves is of the order of this step times the ones before, as long as the same corner governs, in terms of
            // the load or of its distance to the pole at N_cr.
            double scale = Math.Min(load, Critical - load);
            double left = Math.Abs(step) * alike switch
            {
                0 => 1e-3,
                1 => 10 * Math.Abs(way) / scale,
                _ => Math.Abs(way) / scale * Math.Min(1, 30 * Math.Abs(load - before) / scale),
            };
            (before, chordLast, last, fLast) = (last.Load, chord, trial, f);
            load += step;
            if (left <= 1e-11 * load || high - low <= 4e-16 * high)
            {
                if (follows)
                {
                    Peak largest = wave.Largest(Compression, Tension);
                    if (largest.Stress > peak.Stress + 1e-12 * Math.Abs(peak.Stress))
                    {
                        return CloseIn(earlier, lower, upper, out found, follow: false);
                    }

                    trial = TrialOf(last.Load, largest);
                }

                break;
            }
        }

        found = new(Math.Clamp(load, low, high), trial.Sense, trial.Corner, trial.Eta);
        // A stress that grows ever faster yields before the line through the last two loads of the scan does. If it yields much
        // later, it has fallen on the way, perhaps after yielding for a while.
        double line = (1 - lower.Share) * (lower.Load - earlier.Load) / (lower.Share - earlier.Share);
        return !(line > 0 && found.Load - lower.Load > 1.3 * line
                && ClimbHump(lower.Load, lower.Load + line, found.Load * (1 - 1e-6), out ScanPoint top))
            || CloseIn(earlier, lower, top, out found);
    }

    private static Trial TrialOf(double load, in Peak peak) =>
        new(load, peak.Stress, peak.Sense > 0 ? CapacityReason.Compression : CapacityReason.Tension, peak.Corner, peak.Eta);

    private Trial Note(double load, in Peak peak)
    {
        Trial trial = TrialOf(load, peak);
        trace?.Add(trial);
        return trial;
    }

    private double Straight(double load, double share) => (share - 1) * (1 - load / Critical);
}
