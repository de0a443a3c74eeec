using System.Globalization;

namespace StrutLessons;

/// <summary>The one place for argument checks: every public door refuses NaN, infinity and values out of range here.</summary>
internal static class Guard
{
    /// <summary>Returns <paramref name="value"/> if it is finite and greater than zero.</summary>
    /// <exception cref="InputException">Zero, negative, NaN or infinite.</exception>
    internal static double Positive(double value, string field, string unit, string advice) =>
        double.IsFinite(value) && value > 0 ? value : throw Fail(value, field, unit, "greater than 0", advice);

    /// <summary>Returns <paramref name="value"/> if it is finite and not negative.</summary>
    /// <exception cref="InputException">Negative, NaN or infinite.</exception>
    internal static double NotNegative(double value, string field, string unit, string advice) =>
        double.IsFinite(value) && value >= 0 ? value : throw Fail(value, field, unit, "0 or more", advice);

    /// <summary>Returns <paramref name="value"/> if it is a finite number of any sign.</summary>
    /// <exception cref="InputException">NaN or infinite.</exception>
    internal static double Finite(double value, string field, string unit, string advice) =>
        double.IsFinite(value) ? value : throw Fail(value, field, unit, "a finite number", advice);

    /// <summary>Returns <paramref name="value"/> if it is 0 or more; positive infinity is a value here (a rigid spring).</summary>
    /// <exception cref="InputException">Negative or NaN.</exception>
    internal static double NotNegativeOrInfinite(double value, string field, string unit, string advice) =>
        value >= 0 ? value : throw Fail(value, field, unit, "0 or more (infinite means rigid)", advice);

    /// <summary>Returns <paramref name="value"/> if it lies in the closed interval.</summary>
    /// <exception cref="InputException">Outside the interval, or NaN.</exception>
    internal static double Within(double value, double min, double max, string field, string unit, string advice) =>
        value >= min && value <= max
            ? value
            : throw Fail(value, field, unit, $"between {Text(min)} and {Text(max)}{Suffix(unit)}", advice);

    /// <summary>Returns <paramref name="value"/> if it lies in the closed interval.</summary>
    /// <exception cref="InputException">Outside the interval.</exception>
    internal static int Within(int value, int min, int max, string field, string advice) =>
        value >= min && value <= max
            ? value
            : throw new InputException(field, value.ToString(CultureInfo.InvariantCulture), $"between {min} and {max}", advice);

    /// <summary>Returns <paramref name="value"/> if it is a named member of its enumeration.</summary>
    /// <exception cref="InputException">A number without a name.</exception>
    internal static T Named<T>(T value, string field) where T : struct, Enum =>
        Enum.IsDefined(value)
            ? value
            : throw new InputException(field, value.ToString(), "one of " + string.Join(", ", Enum.GetNames<T>()), "Choose one of these names.");

    /// <summary>The exception for a number outside its range, for conditions that the ready-made guards do not cover.</summary>
    internal static InputException Fail(double value, string field, string unit, string allowed, string advice) =>
        new(field, Text(value) + Suffix(unit), allowed, advice);

    /// <summary>A number for a message: six significant digits, invariant culture.</summary>
    internal static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    private static string Suffix(string unit) => unit.Length == 0 ? "" : " " + unit;
}
