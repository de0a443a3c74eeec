using System.Globalization;

namespace StrutLessons.Notebook.Maths;

/// <summary>Numbers where people read them: four significant digits, thin spaces between groups of three, no needless zeros.</summary>
public static class Figures
{
    private const char ThinSpace = '\u2009';

    /// <summary>A number for a sentence, a label or a table; an exact short number (80, 0.5) keeps its short form.</summary>
    /// <param name="value">Any number; NaN and infinity are written as words.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public static string Text(double value, int digits = 4) => Text(value, digits, 0);

    /// <summary>The same number as TeX mathematics.</summary>
    /// <param name="value">Any number.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public static string Tex(double value, int digits = 4) =>
        double.IsPositiveInfinity(value) ? @"\infty" : double.IsNegativeInfinity(value) ? @"-\infty"
        : Write(value, digits, 0, @"\,", @"\cdot 10", p => FormattableString.Invariant($"^{{{p}}}")).Replace('−', '-');

    /// <summary>
    /// The numbers of a column. A short exact one gets as many decimals as the longest has, within its own four significant digits:
    /// 355 below 354.7 reads 355.0.
    /// </summary>
    /// <param name="values">The numbers from top to bottom.</param>
    public static IReadOnlyList<string> Column(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        int most = values.Select(value => Decimals(Text(value))).DefaultIfEmpty().Max();
        return [.. values.Select(value => Text(value, 4, most))];
    }

    private static string Text(double value, int digits, int decimals) => Write(value, digits, decimals, ThinSpace.ToString(), "·10", PlainPower);

    private static int Decimals(string text) =>
        text.Contains('.', StringComparison.Ordinal) && !text.Contains('·', StringComparison.Ordinal) ? text.Length - 1 - text.IndexOf('.', StringComparison.Ordinal) : 0;

    private static string Write(double value, int digits, int kept, string group, string times, Func<int, string> power)
    {
        if (double.IsNaN(value))
        {
            return "not a number";
        }

        if (double.IsInfinity(value))
        {
            return value > 0 ? "∞" : "−∞";
        }

        // What rounding left over is zero to a reader.
        if (Math.Abs(value) < 1e-12)
        {
            return "0";
        }

        string[] parts = Math.Abs(value).ToString("E" + (Math.Clamp(digits, 1, 15) - 1), CultureInfo.InvariantCulture).Split('E');
        int exponent = int.Parse(parts[1], CultureInfo.InvariantCulture);
        string mantissa = parts[0];
        decimal rounded = decimal.Parse(mantissa, CultureInfo.InvariantCulture);
        // A number that its short form states exactly is not padded with zeros.
        bool exact = Math.Abs(Math.Abs(value) - (double)rounded * Math.Pow(10, exponent)) <= 1e-12 * Math.Abs(value);
        string sign = value < 0 ? "−" : "";
        if (exponent is < -3 or >= 7)
        {
            return sign + (exact ? Trim(mantissa, 0) : mantissa) + times + power(exponent);
        }

        int decimals = Math.Max(0, digits - 1 - exponent);
        string text = (rounded * Power(exponent)).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return sign + Grouped(exact ? Trim(text, kept) : text, group);
    }

    private static decimal Power(int exponent)
    {
        decimal power = 1;
        for (int i = 0; i < Math.Abs(exponent); i++)
        {
            power = exponent > 0 ? power * 10 : power / 10;
        }

        return power;
    }

    /// <summary>Takes needless zeros off behind the point, but leaves so many decimals.</summary>
    private static string Trim(string text, int decimals)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        if (point < 0)
        {
            return text;
        }

        int end = Math.Max(text.TrimEnd('0').Length, Math.Min(text.Length, point + 1 + decimals));
        return text[..(end == point + 1 ? point : end)];
    }

    /// <summary>Blanks between groups of three in front of the point, from five digits on.</summary>
    private static string Grouped(string text, string blank)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        string whole = point < 0 ? text : text[..point], rest = point < 0 ? "" : text[point..];
        if (whole.Length < 5)
        {
            return text;
        }

        for (int i = whole.Length - 3; i > 0; i -= 3)
        {
            whole = whole.Insert(i, blank);
        }

        return whole + rest;
    }

    private static string PlainPower(int exponent) =>
        (exponent < 0 ? "⁻" : "") + string.Concat(Math.Abs(exponent).ToString(CultureInfo.InvariantCulture).Select(c => "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0']));
}
