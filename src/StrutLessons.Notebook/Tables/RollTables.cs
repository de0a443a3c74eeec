using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Tables;

/// <summary>Tables of what roll does to a strut.</summary>
public static class RollTables
{
    /// <summary>Plane model and model with roll side by side; the title carries the plain warning where the two differ by more than 3 % or the roll is large.</summary>
    /// <param name="capacity">Both capacities.</param>
    public static Table Capacities(RollCapacity capacity)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        string words = capacity.Warning.Length > 0 ? $"Warning. {capacity.Warning}" : $"Roll changes the capacity by {Figures.Text(100 * (capacity.Ratio - 1), 2)} % only.";
        return Table.Of(words, "", "plane model", "with roll", "with roll over plane (–)")
            .Row("capacity at first yield (kN)", capacity.FlexureOnly.Load / 1e3, capacity.WithRoll.Load / 1e3, Math.Round(capacity.Ratio, 3))
            .Row("critical load (kN)", capacity.CriticalFlexural / 1e3, capacity.Critical / 1e3, Math.Round(capacity.Critical / capacity.CriticalFlexural, 3))
            .Row("roll at mid-length (°)", 0.0, capacity.WithRoll.TwistMid * 180 / Math.PI, double.NaN);
    }
}
