namespace StrutLessons.Nonlinear;

/// <summary>
/// Elastic second-order strut with roll, linearised: cheap, and close to the exact elastic rod. Angles roll towards their weak axis when the joint
/// forces bending about a leg; leaving that out is the one systematic unsafe step of the flexure-only model.
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
public static class RollAnalysis
{
    /// <summary>Elements along the strut.</summary>
    private const int Elements = 32;

    /// <summary>State under a load; null at or beyond a critical load.</summary>
    /// <param name="strut">The strut; yield strength and residual stress are ignored.</param>
    /// <param name="load">N, compression positive, N.</param>
    /// <param name="roll">False gives the flexure-only solution.</param>
    /// <exception cref="InputException">The load is not positive.</exception>
    public static ElasticState? StateAt(ReferenceStrut strut, double load, bool roll = true)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Guard.Positive(load, "load", "N", "Compression is positive.");
        var model = new RollModel(strut, Elements);
        return model.Solve(load, roll) ? new RollReader(model).Read(load, roll) : null;
    }

    /// <summary>First yield with and without roll.</summary>
    /// <param name="strut">The strut with a finite yield strength; residual stress is ignored.</param>
    /// <exception cref="InputException">The yield strength is infinite.</exception>
    public static RollCapacity Capacity(ReferenceStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        double yield = strut.Steel.YieldStrength;
        if (double.IsInfinity(yield))
        {
            throw Guard.Fail(yield, "yield strength", "MPa", "finite", "First yield needs a yield strength.");
        }
        var model = new RollModel(strut, Elements);
        var reader = new RollReader(model);
        double criticalFlexure = Critical(model.Flexure, false), critical = Critical(model.Flexure, true);
        return new RollCapacity(
            FirstYield(model, reader, criticalFlexure, false), FirstYield(model, reader, critical, true), criticalFlexure, critical);
    }

    /// <summary>Critical load of the straight strut under a force through its centroid, with its springs, N.</summary>
    /// <param name="strut">The strut; load points, bow, yield strength and residual stress are ignored.</param>
    /// <param name="roll">False holds the roll at zero: flexural buckling alone.</param>
    public static double CriticalLoad(ReferenceStrut strut, bool roll = true)
    {
        ArgumentNullException.ThrowIfNull(strut);
        return Critical(new FlexureModel(strut, Elements), roll);
    }

    /// <summary>Bisection on the number of unstable modes cannot skip a critical load.</summary>
    private static double Critical(FlexureModel model, bool roll)
    {
        ReferenceStrut strut = model.Strut;
        double high = Math.PI * Math.PI * strut.Steel.ElasticModulus * strut.Section.Iv / (strut.Length * strut.Length), low = 0;
        while (model.UnstableModes(high, roll) == 0)
        {
            (low, high) = (high, 2 * high);
        }
        while (high - low > 1e-10 * high)
        {
            double middle = 0.5 * (low + high);
            (low, high) = model.UnstableModes(middle, roll) == 0 ? (middle, high) : (low, middle);
        }
        return 0.5 * (low + high);
    }

    /// <summary>Smallest load at which a corner yields. Loads are scanned from below, denser towards the critical load, before the root is closed in.</summary>
    private static ElasticState FirstYield(RollModel model, RollReader reader, double critical, bool roll)
    {
        ReferenceStrut strut = model.Flexure.Strut;
        const int Scan = 24;
        double yield = strut.Steel.YieldStrength;
        ElasticState? last = null;
        for (int i = 1; i < Scan; i++)
        {
            double away = 1 - (double)i / Scan, load = Math.Min(critical * (1 - away * away), strut.SquashLoad);
            if (!model.Solve(load, roll))
            {
                break;
            }
            ElasticState state = reader.Read(load, roll);
            if (state.LargestStress >= yield)
            {
                return CloseIn(model, reader, last?.Load ?? 0, last?.LargestStress ?? 0, state, yield, roll);
            }
            last = state;
            if (load >= strut.SquashLoad)
            {
                break;
            }
        }
        // No corner yields below the critical load: stability itself is the limit.
        return last!;
    }

    private static ElasticState CloseIn(RollModel model, RollReader reader, double low, double lowStress, ElasticState high, double yield, bool roll)
    {
        double lowGap = lowStress - yield, highGap = high.LargestStress - yield, highLoad = high.Load;
        ElasticState best = high;
        for (int i = 0; i < 60 && highLoad - low > 1e-11 * highLoad; i++)
        {
            double load = low - lowGap * (highLoad - low) / (highGap - lowGap);
            model.Solve(load, roll);
            best = reader.Read(load, roll);
            double gap = best.LargestStress - yield;
            if (Math.Abs(gap) < 1e-9 * yield)
            {
                break;
            }
            // False position; the end that stays is halved (Illinois variant).
            if (gap < 0)
            {
                (low, lowGap, highGap) = (load, gap, highGap / 2);
            }
            else
            {
                (highLoad, highGap, lowGap) = (load, gap, lowGap / 2);
            }
        }
        return best;
    }
}
