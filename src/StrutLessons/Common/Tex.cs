using System.Globalization;

namespace StrutLessons;

/// <summary>Numbers as TeX mathematics for worked steps.</summary>
internal static class Tex
{
    /// <summary>Five significant digits; very large and very small numbers as a power of ten.</summary>
    internal static string Number(double value)
    {
        if (double.IsInfinity(value))
        {
            return value > 0 ? @"\infty" : @"-\infty";
        }

        // What rounding left over is zero to a reader.
        double size = Math.Abs(value) < 1e-12 ? 0 : Math.Abs(value);
        if (size == 0)
        {
            return "0";
        }

        if (size >= 1e-3 && size < 1e6)
        {
            return value.ToString("G5", CultureInfo.InvariantCulture) is var text && text.Contains('E', StringComparison.Ordinal)
                ? Math.Round(value).ToString("F0", CultureInfo.InvariantCulture)
                : text;
        }

        int exponent = (int)Math.Floor(Math.Log10(size));
        string mantissa = (value / Math.Pow(10, exponent)).ToString("G5", CultureInfo.InvariantCulture);
        return $@"{mantissa} \cdot 10^{{{exponent}}}";
    }

    /// <summary>The number in brackets if it is negative, so that it can follow a sign.</summary>
    internal static string Bracketed(double value) => value < 0 ? $"({Number(value)})" : Number(value);
}
