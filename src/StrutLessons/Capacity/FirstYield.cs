using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using StrutLessons.Member;

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
/// humps between the steps are climbed; only then is the first crossing closed in, see <see cref="Crossing"/>.
/// </remarks>
internal static class FirstYield
{
    private const int ScanLoads = 12;

    /// <summary>Distance from N_cr, relative, at which the first scan ends and a second, finer one begins.</summary>
    private const double ScanEnd = 1e-3;

    /// <summary>Closer to N_cr than this nothing can be told from N_cr itself.</summary>
    private const double Nearest = 1e-10;

    /// <summary>Between the loads of the scan a hump may rise by a quarter above them.</summary>
    private const double HumpWorthClimbing = 0.8;

    /// <param name="strut">The strut with one bow.</param>
    /// <param name="critical">Its critical load, N.</param>
    /// <param name="criterion">Which yielding counts.</param>
    /// <param name="trace">Collects the trial loads if wanted.</param>
    internal static FirstYieldLoad Find(in StrutNumbers strut, double critical, YieldCriterion criterion = YieldCriterion.Any, List<Trial>? trace = null)
    {
        if (strut.IsConcentric)
        {
            return Concentric(strut, critical, criterion);
        }

        var search = new Crossing(in strut, critical, criterion, trace);
        if (strut.HasConstantMoment)
        {
            Trial atRest = search.Try(1e-9 * strut.EulerU);
            if (atRest.Stress >= strut.YieldStrength)
            {
                return new(0, CapacityReason.YieldsWithoutLoad, atRest.Corner, atRest.Eta);
            }
        }

        // At least the mean stress N/A acts somewhere in compression, so the squash load bounds that criterion.
        double nearest = critical * (1 - Nearest);
        double top = criterion == YieldCriterion.Tension ? nearest : Math.Min(strut.SquashLoad * (1 + 1e-12), nearest);
        double far = Math.Max(1 - top / critical, ScanEnd), near = Math.Max(1 - top / critical, Nearest);
        return Scan(search, 1, far, out FirstYieldLoad found) || (near < far && Scan(search, far, near, out found))
            ? found
            : new(critical, CapacityReason.Bifurcation, 0, 0);
    }

    /// <summary>
    /// As long as one corner and one sign of the mode govern, the stress grows ever faster with the load, or nearly so. Where it
    /// grows much more slowly than before, it may be about to fall, and the scan's loads may lie on both sides of a top that yields.
    /// </summary>
    private static bool MayHideHump(ScanPoint earlier, ScanPoint before, ScanPoint here) =>
        Math.Max(before.Share, here.Share) > HumpWorthClimbing
        && here.Share < 1
        && (here.Share - before.Share) * (before.Load - earlier.Load) < 0.6 * (before.Share - earlier.Share) * (here.Load - before.Load);

    private static FirstYieldLoad Concentric(in StrutNumbers strut, double critical, YieldCriterion criterion) =>
        criterion != YieldCriterion.Tension && strut.SquashLoad <= critical
            ? new(strut.SquashLoad, CapacityReason.Compression, 0, -1)
            : new(critical, CapacityReason.Bifurcation, 0, 0);

    /// <summary>Scans from N = (1 − from) N_cr up to (1 − to) N_cr and closes in on the first crossing.</summary>
    // Kept apart: inlined into one another, the steps of the search have more locals than the compiler follows.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool Scan(in Crossing search, double from, double to, out FirstYieldLoad found)
    {
        // Half a step at first: the slope close to the start tells early whether the stress grows ever faster.
        double half = Math.Exp(Math.Log(to / from) / (2 * ScanLoads - 1));
        double ratio = half * half, ratio2 = ratio * ratio;
        Vector256<double> distance = from / half * Vector256.Create(ratio, ratio2, ratio2 * ratio, ratio2 * ratio2);
        double start = (1 - from) * search.Critical;
        var before = new ScanPoint(start, start > 0 ? search.Share(start) : 0);
        ScanPoint earlier = before;
        for (int i = 0; i < ScanLoads; i += 4)
        {
            Vector256<double> loads = search.Critical * (Vector256<double>.One - distance);
            Vector256<double> shares = LoadScan.Utilisation(search.Strut, new Lane4(loads), search.Compression, search.Tension, out Lane4 hidden).Value;
            for (int j = 0; j < 4; j++)
            {
                var here = new ScanPoint(loads.GetElement(j), shares.GetElement(j));
                if (MayHideHump(earlier, before, here) && search.ClimbHump(earlier.Load, before.Load, here.Load, out ScanPoint top))
                {
                    return search.CloseIn(earlier, earlier, top, out found);
                }

                if (here.Share >= 1)
                {
                    return search.CloseIn(earlier, before, here, out found);
                }

                if (here.Share + hidden.Value.GetElement(j) >= 1)
                {
                    here = here with { Exact = search.Share(here.Load) };
                    if (here.Exact >= 1)
                    {
                        return search.CloseIn(earlier, before, here, out found);
                    }
                }

                (earlier, before) = (before, here);
            }

            distance *= ratio2 * ratio2;
        }

        // The ladder's last step is the end of the range up to rounding: the end itself decides.
        double last = (1 - to) * search.Critical, exactLast = search.Share(last);
        found = default;
        return exactLast >= 1 && search.CloseIn(earlier, before, new ScanPoint(last, exactLast, exactLast), out found);
    }
}
