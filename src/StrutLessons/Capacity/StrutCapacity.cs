using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Stress;

namespace StrutLessons.Capacity;

/// <summary>Finds the load a strut can carry: first yield at a corner, or the critical load if nothing yields before.</summary>
public static class StrutCapacity
{
    /// <summary>Capacity over all the strut's bows, with the whole iteration of each.</summary>
    /// <exception cref="InputException">A constant joint moment makes the strut yield without load.</exception>
    public static CapacityResult Of(Strut strut) => Find(strut) is var result && result.Governing.Reason != CapacityReason.YieldsWithoutLoad
        ? result
        : throw YieldsWithoutLoad();

    /// <summary>As <see cref="Of"/>, but returns false where no capacity exists; the result still tells the reason.</summary>
    public static bool TryOf(Strut strut, out CapacityResult result)
    {
        result = Find(strut);
        return result.Governing.Reason != CapacityReason.YieldsWithoutLoad;
    }

    /// <summary>The lowest capacity of the strut's bows as a plain number, N; no trace, no allocation: for large studies.</summary>
    /// <exception cref="InputException">A constant joint moment makes the strut yield without load.</exception>
    public static double LoadOf(Strut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        StrutNumbers straight = StrutNumbers.Straight(strut);
        double critical = CriticalLoadSolver.Solve(straight), least = double.PositiveInfinity;
        for (int i = 0; i < strut.Bows.Count; i++)
        {
            FirstYieldLoad found = FirstYield.Find(new StrutNumbers(straight, strut.Section, strut.Bows[i]), critical);
            if (found.Reason == CapacityReason.YieldsWithoutLoad)
            {
                throw YieldsWithoutLoad();
            }

            least = Math.Min(least, found.Load);
        }

        return least;
    }

    internal static InputException YieldsWithoutLoad() => new(
        "constant joint moment", "the moment given", "small enough that the unloaded strut stays elastic",
        "The moments at the joints alone make a corner yield: reduce the tie force or its eccentricity.");

    private static CapacityResult Find(Strut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        StrutNumbers straight = StrutNumbers.Straight(strut);
        double critical = CriticalLoadSolver.Solve(straight);
        return new(strut, critical, [.. strut.Bows.Select(bow => ForBow(strut, bow, new StrutNumbers(straight, strut.Section, bow), critical))]);
    }

    private static BowCapacity ForBow(Strut strut, Bow bow, StrutNumbers numbers, double critical)
    {
        List<Trial> pressed = [], pulled = [];
        FirstYieldLoad compression = FirstYield.Find(numbers, critical, YieldCriterion.Compression, pressed);
        FirstYieldLoad tension = FirstYield.Find(numbers, critical, YieldCriterion.Tension, pulled);
        // What yields first decides; the search that found it is the one that is shown.
        (FirstYieldLoad first, List<Trial> trace) = compression.Load <= tension.Load ? (compression, pressed) : (tension, pulled);
        return new(
            bow, first.Load, first.Reason, PlaceOf(first), Yield(compression), Yield(tension),
            [.. trace.Select((t, i) => new CapacityTrial(
                i + 1, t.Load, t.Stress, t.Stress / numbers.YieldStrength, t.Sense, Place(t.Corner, t.Eta, t.Stress)))]);

        StressPlace Place(int corner, double eta, double stress) => new(stress, (Corner)corner, 0.5 * (1 + eta) * strut.BarLength);

        StressPlace? PlaceOf(FirstYieldLoad found) => found.Reason is CapacityReason.Compression or CapacityReason.Tension
            ? Place(found.Corner, found.Eta, numbers.YieldStrength)
            : null;

        FirstYieldPlace? Yield(FirstYieldLoad found) => PlaceOf(found) is { } place ? new(found.Load, place) : null;
    }
}
