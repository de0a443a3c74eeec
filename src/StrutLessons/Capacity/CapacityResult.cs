using StrutLessons.Member;
using StrutLessons.Stress;

namespace StrutLessons.Capacity;

/// <summary>One step of the search for the capacity.</summary>
/// <param name="Number">1, 2, 3, …</param>
/// <param name="Load">Trial load, N.</param>
/// <param name="Stress">Largest stress at that load, MPa, in compression or tension.</param>
/// <param name="Utilisation">Stress over yield strength.</param>
/// <param name="Sense">Whether that stress is compression or tension.</param>
/// <param name="Place">Corner and x of that stress.</param>
public readonly record struct CapacityTrial(
    int Number, double Load, double Stress, double Utilisation, CapacityReason Sense, StressPlace Place);

/// <summary>A load at which a corner first yields, and where.</summary>
/// <param name="Load">N.</param>
/// <param name="Place">Stress, corner and place along the bar.</param>
public readonly record struct FirstYieldPlace(double Load, StressPlace Place);

/// <summary>Capacity of the strut with one of its bows.</summary>
/// <param name="Bow">The bow.</param>
/// <param name="Load">Capacity N_R, N.</param>
/// <param name="Reason">What stopped the load.</param>
/// <param name="Place">Where the yield strength is reached; null for bifurcation.</param>
/// <param name="Compression">First yield in compression, if there is one below the critical load.</param>
/// <param name="Tension">First yield in tension, if there is one below the critical load.</param>
/// <param name="Trace">Every trial load of the search, in its order.</param>
public sealed record BowCapacity(
    Bow Bow, double Load, CapacityReason Reason, StressPlace? Place,
    FirstYieldPlace? Compression, FirstYieldPlace? Tension, IReadOnlyList<CapacityTrial> Trace);

/// <summary>What a strut can carry: the lowest capacity of its bows, the critical load, and how the search went. Immutable.</summary>
/// <param name="Strut">The strut.</param>
/// <param name="CriticalLoad">N_cr with the springs, N.</param>
/// <param name="Bows">One result for each bow, in the order of the strut's bows.</param>
public sealed partial record CapacityResult(Strut Strut, double CriticalLoad, IReadOnlyList<BowCapacity> Bows)
{
    /// <summary>The bow with the lowest capacity.</summary>
    public BowCapacity Governing { get; } = Bows.MinBy(b => b.Load)!;

    /// <summary>Capacity N_R, N.</summary>
    public double Load => Governing.Load;

    /// <summary>Capacity over squash load, χ = N_R/(A f_y).</summary>
    public double ReductionFactor => Load / Strut.SquashLoad;

    /// <summary>The strut just at its capacity (a hair below, where the capacity is the critical load).</summary>
    public SecondOrderSolution AtCapacity() =>
        SecondOrderSolution.Of(Strut, Math.Min(Load, CriticalLoad * (1 - 1e-9)), Governing.Bow);
}
