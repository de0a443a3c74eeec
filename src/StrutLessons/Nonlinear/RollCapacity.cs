using System.Globalization;

namespace StrutLessons.Nonlinear;

/// <summary>First yield of the elastic strut with and without roll.</summary>
/// <param name="FlexureOnly">State at first yield with the roll held at zero.</param>
/// <param name="WithRoll">State at first yield with roll.</param>
/// <param name="CriticalFlexural">Critical load without roll (concentric, straight, with the springs), N.</param>
/// <param name="Critical">Critical load with roll, N.</param>
public sealed partial record RollCapacity(ElasticState FlexureOnly, ElasticState WithRoll, double CriticalFlexural, double Critical)
{
    /// <summary>Roll beyond which the linear equations are no longer close, rad.</summary>
    public const double LargeRoll = 0.1;

    /// <summary>Capacity with roll over capacity without.</summary>
    public double Ratio => WithRoll.Load / FlexureOnly.Load;

    /// <summary>True if roll changes the capacity by more than 3 %: then the plane model should not be used alone.</summary>
    public bool RollMatters => Math.Abs(Ratio - 1) > 0.03;

    /// <summary>
    /// True if the section rolls by more than 0.1 rad before first yield. The equations are linear in the roll: beyond it their capacity lies up to
    /// some 10 % above that of the exact elastic rod (<see cref="ElasticRod.FirstYield"/>).
    /// </summary>
    public bool RollIsLarge => Math.Abs(WithRoll.TwistMid) > LargeRoll;

    /// <summary>A plain warning if roll matters or is large; empty otherwise.</summary>
    public string Warning
    {
        get
        {
            CultureInfo words = CultureInfo.InvariantCulture;
            string matters = !RollMatters ? ""
                : Ratio < 1 ? string.Create(words, $"Roll lowers the capacity by {100 * (1 - Ratio):F0} %: the plane model is unsafe here.")
                : string.Create(words, $"Roll raises the capacity by {100 * (Ratio - 1):F0} %: the plane model is on the safe side here.");
            string large = !RollIsLarge ? ""
                : string.Create(words, $"The section rolls by {Math.Abs(WithRoll.TwistMid):F2} rad: the linear model with roll is too high here, ask the exact elastic rod.");
            return matters.Length > 0 && large.Length > 0 ? $"{matters} {large}" : matters + large;
        }
    }
}
