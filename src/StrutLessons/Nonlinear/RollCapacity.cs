namespace StrutLessons.Nonlinear;

/// <summary>First yield of the elastic strut with and without roll.</summary>
/// <param name="FlexureOnly">State at first yield with the roll held at zero.</param>
/// <param name="WithRoll">State at first yield with roll.</param>
/// <param name="CriticalFlexural">Critical load without roll (concentric, straight, with the springs), N.</param>
/// <param name="Critical">Critical load with roll, N.</param>
public sealed record RollCapacity(ElasticState FlexureOnly, ElasticState WithRoll, double CriticalFlexural, double Critical)
{
    /// <summary>Capacity with roll over capacity without.</summary>
    public double Ratio => WithRoll.Load / FlexureOnly.Load;

    /// <summary>True if roll changes the capacity by more than 3 %: then the plane model should not be used alone.</summary>
    public bool RollMatters => Math.Abs(Ratio - 1) > 0.03;

    /// <summary>A plain warning if roll matters; empty otherwise.</summary>
    public string Warning => !RollMatters ? ""
        : Ratio < 1 ? $"Roll lowers the capacity by {100 * (1 - Ratio):F0} %: the plane model is unsafe here."
        : $"Roll raises the capacity by {100 * (Ratio - 1):F0} %: the plane model is on the safe side here.";
}
