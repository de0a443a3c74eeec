using System.Runtime.Intrinsics;
using StrutLessons.Member;
using StrutLessons.Stress;

namespace StrutLessons.Capacity;

/// <summary>Which yielding counts.</summary>
internal enum YieldCriterion
{
    Any,
    Compression,
    Tension,
}

/// <summary>One trial load of the search: the load (N) and the largest stress in the sense that counts (MPa).</summary>
internal readonly record struct Trial(double Load, double Stress, CapacityReason Sense, int Corner, double Eta);

/// <summary>The first load at which a corner yields, as plain numbers.</summary>
/// <param name="Load">N.</param>
/// <param name="Reason">What stopped it.</param>
/// <param name="Corner">Corner 0…4 that yields.</param>
/// <param name="Eta">Place 2x/L − 1.</param>
internal readonly record struct FirstYieldLoad(double Load, CapacityReason Reason, int Corner, double Eta);

/// <summary>
/// The smallest load below the critical load at which the largest stress reaches the yield strength.
/// </summary>
/// <remarks>
/// The largest stress need not grow steadily with the load: where bow and eccentricity oppose each other, the buckling mode's
/// share changes its sign close to N_cr, and the stress may cross the yield strength three times. Therefore the loads are
/// scanned first, in steps that shrink with the distance to N_cr (the scale on which the mode's share 1/(N_cr − N) changes);
/// humps between the steps are climbed; only then is the first crossing closed in. The root is found on
/// (s − f_y)(1 − N/N_cr), which is nearly a parabola because the pole is taken out.
/// </remarks>
internal static class FirstYield
{
    private const int ScanLoads = 24;

    /// <summary>Distance from N_cr, relative, at which the first scan ends and a second, finer one begins.</summary>
    private const double ScanEnd = 3e-4;

    /// <summary>Closer to N_cr than this nothing can be told from N_cr itself.</summary>
    private const double Nearest = 1e-10;

    /// <summary>Station values may miss up to a tenth of a stress that waves along the strut: humps above this share are climbed.</summary>
    private const double HumpShare = 0.85;

    /// <param name="strut">The strut with one bow.</param>
    /// <param name="critical">Its critical load, N.</param>
    /// <param name="criterion">Which yielding counts.</param>
    /// <param name="trace">Collects the trial loads if wanted.</param>
    internal static FirstYieldLoad Find(in StrutNumbers strut, double critical, YieldCriterion criterion = YieldCriterion.Any, List<Trial>? trace = null)
    {
        double squash = strut.SquashLoad;
        if (strut.IsConcentric)
        {
            return Concentric(strut, critical, criterion);
        }

        if (strut.Moment1 != default || strut.Moment2 != default)
        {
            Trial atRest = Try(strut, 1e-9 * strut.EulerU, criterion, out Peak peak);
            if (atRest.Stress >= strut.YieldStrength)
            {
                return new(0, CapacityReason.YieldsWithoutLoad, peak.Corner, peak.Eta);
            }
        }

        // At least the mean stress N/A acts somewhere in compression, so the squash load bounds that criterion.
        double nearest = critical * (1 - Nearest);
        double top = criterion == YieldCriterion.Tension ? nearest : Math.Min(squash * (1 + 1e-12), nearest);
        double far = Math.Max(1 - top / critical, ScanEnd);
        if (Scan(strut, critical, 1, far, criterion, trace, out FirstYieldLoad found))
        {
            return found;
        }

        double near = Math.Max(1 - top / critical, Nearest);
        if (near < far && Scan(strut, critical, far, near, criterion, trace, out found))
        {
            return found;
        }

        return new(critical, CapacityReason.Bifurcation, 0, 0);
    }

    /// <summary>Largest stress in the sense that counts, at one load.</summary>
    private static Trial Try(in StrutNumbers strut, double load, YieldCriterion criterion, out Peak peak)
    {
        var wave = new StressWave(strut, load);
        Peak pressed = criterion == YieldCriterion.Tension ? new(double.NegativeInfinity, 0, 0) : wave.Largest(1);
        Peak pulled = criterion == YieldCriterion.Compression ? new(double.NegativeInfinity, 0, 0) : wave.Largest(-1);
        bool tension = pulled.Stress > pressed.Stress;
        peak = tension ? pulled : pressed;
        return new(load, peak.Stress, tension ? CapacityReason.Tension : CapacityReason.Compression, peak.Corner, peak.Eta);
    }

    private static FirstYieldLoad Concentric(in StrutNumbers strut, double critical, YieldCriterion criterion) =>
        criterion != YieldCriterion.Tension && strut.SquashLoad <= critical
            ? new(strut.SquashLoad, CapacityReason.Compression, 0, -1)
            : new(critical, CapacityReason.Bifurcation, 0, 0);

    /// <summary>Scans from N = (1 − from) N_cr up to (1 − to) N_cr and closes in on the first crossing.</summary>
    private static bool Scan(
        in StrutNumbers strut, double critical, double from, double to, YieldCriterion criterion, List<Trial>? trace, out FirstYieldLoad found)
    {
        double ratio = Math.Pow(to / from, 1.0 / ScanLoads);
        double ratio2 = ratio * ratio;
        Vector256<double> distance = from * Vector256.Create(ratio, ratio2, ratio2 * ratio, ratio2 * ratio2);
        double before = (1 - from) * critical, beforeShare = 0;
        double earlier = before, earlierShare = 0;
        for (int i = 0; i < ScanLoads; i += 4)
        {
            Vector256<double> loads = critical * (Vector256<double>.One - distance);
            Vector256<double> shares = LoadScan.Utilisation(
                strut, new Lane4(loads), criterion != YieldCriterion.Tension, criterion != YieldCriterion.Compression).Value;
            for (int j = 0; j < 4; j++)
            {
                double load = loads.GetElement(j), share = shares.GetElement(j);
                bool hump = beforeShare > HumpShare && beforeShare >= earlierShare && beforeShare >= share;
                if (hump && ClimbHump(strut, earlier, before, load, criterion, trace, out double top))
                {
                    return CloseIn(strut, critical, earlier, top, criterion, trace, out found);
                }

                // The scan's ten stations may lie below the true peak by a little: leave the verdict to the exact search.
                if (share >= 1 - 1e-3 && CloseIn(strut, critical, before, load, criterion, trace, out found))
                {
                    return true;
                }

                (earlier, earlierShare, before, beforeShare) = (before, beforeShare, load, share);
            }

            distance *= ratio2 * ratio2;
        }

        return CloseIn(strut, critical, before, (1 - to) * critical, criterion, trace, out found);
    }

    /// <summary>Golden-section search for a local maximum of the stress between two loads; true as soon as it yields.</summary>
    private static bool ClimbHump(
        in StrutNumbers strut, double low, double middle, double high, YieldCriterion criterion, List<Trial>? trace, out double top)
    {
        const double golden = 0.381966011250105;
        double best = middle, value = Note(Try(strut, middle, criterion, out _), trace).Stress;
        for (int i = 0; i < 40 && value < strut.YieldStrength && high - low > 1e-9 * high; i++)
        {
            double next = high - best > best - low ? best + golden * (high - best) : best - golden * (best - low);
            double stress = Note(Try(strut, next, criterion, out _), trace).Stress;
            if (stress > value)
            {
                (low, high) = next > best ? (best, high) : (low, best);
                (best, value) = (next, stress);
            }
            else
            {
                (low, high) = next > best ? (low, next) : (next, high);
            }
        }

        top = best;
        return value >= strut.YieldStrength;
    }

    private static Trial Note(Trial trial, List<Trial>? trace)
    {
        trace?.Add(trial);
        return trial;
    }

    /// <summary>
    /// The crossing between two loads, if the upper one yields: inverse quadratic interpolation with bisection as its guard
    /// (Chandrupatla, Advances in Engineering Software 28, 1997), on (s − f_y)(1 − N/N_cr).
    /// </summary>
    private static bool CloseIn(
        in StrutNumbers strut, double critical, double low, double high, YieldCriterion criterion, List<Trial>? trace, out FirstYieldLoad found)
    {
        double Residual(in StrutNumbers s, double load, out Peak p, out CapacityReason sense)
        {
            Trial trial = Note(Try(s, load, criterion, out p), trace);
            sense = trial.Sense;
            return (trial.Stress - s.YieldStrength) * (1 - load / critical);
        }

        double fHigh = Residual(strut, high, out Peak peak, out CapacityReason reason);
        if (fHigh < 0)
        {
            found = default;
            return false;
        }

        double fLow = low > 0 ? Residual(strut, low, out Peak lowPeak, out CapacityReason lowReason) : -strut.YieldStrength;
        if (low > 0 && fLow >= 0)
        {
            // Station values hid a crossing in the interval before: it lies just below.
            return CloseIn(strut, critical, low * 0.98, low, criterion, trace, out found);
        }

        double a = high, fa = fHigh, b = low, fb = fLow, c = b, fc = fb, t = 0.5;
        // First a secant: the pole is out, the function is almost straight.
        t = fa / (fa - fb);
        for (int i = 0; i < 80; i++)
        {
            double load = a + t * (b - a);
            double f = Residual(strut, load, out Peak p, out CapacityReason r);
            if (f >= 0 == fa >= 0)
            {
                (c, fc) = (a, fa);
            }
            else
            {
                (c, fc, b, fb) = (b, fb, a, fa);
            }

            (a, fa) = (load, f);
            (peak, reason) = (p, r);
            double gap = Math.Abs(b - a), tolerance = 2e-15 * load;
            if (f == 0 || Math.Abs(f) <= 2e-15 * strut.YieldStrength * (1 - load / critical) || gap <= tolerance)
            {
                break;
            }

            double xi = (a - b) / (c - b), phi = (fa - fb) / (fc - fb);
            bool quadratic = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
            t = quadratic
                ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb))
                : 0.5;
            double least = 0.5 * tolerance / gap;
            t = Math.Clamp(t, least, 1 - least);
        }

        found = new(a, reason, peak.Corner, peak.Eta);
        return true;
    }
}
