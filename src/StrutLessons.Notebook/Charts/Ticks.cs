using System.Globalization;

namespace StrutLessons.Notebook.Charts;

/// <summary>Round values for the marks on an axis.</summary>
internal sealed record Ticks(double From, double To, IReadOnlyList<double> At, IReadOnlyList<string> Names)
{
    /// <summary>Ticks for an axis over these values; open ends move out to a round value, or stay at the data if tight.</summary>
    internal static Ticks For(ChartAxis axis, IEnumerable<double> values, int most, bool tight = false)
    {
        double[] finite = [.. values.Where(v => double.IsFinite(v) && (!axis.Logarithmic || v > 0))];
        double low = axis.From ?? (finite.Length > 0 ? finite.Min() : axis.Logarithmic ? 1 : 0);
        double high = axis.To ?? (finite.Length > 0 ? finite.Max() : low + 1);
        if (!(high > low))
        {
            (low, high) = axis.Logarithmic ? (low / 2, low * 2) : (low - Spread(low), low + Spread(low));
        }

        return axis.Logarithmic ? Decades(axis, low, high) : Even(axis, low, high, most, tight);
    }

    private static double Spread(double value) => value == 0 ? 1 : 0.1 * Math.Abs(value);

    private static Ticks Even(ChartAxis axis, double low, double high, int most, bool tight)
    {
        // An axis that nearly reaches zero begins there.
        low = axis.From is null && low > 0 && low < 0.4 * high ? 0 : low;
        high = axis.To is null && high < 0 && high > 0.4 * low ? 0 : high;
        double raw = (high - low) / most, power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double step = power * (raw / power) switch { <= 1.0001 => 1, <= 2.0001 => 2, <= 2.5001 => 2.5, <= 5.0001 => 5, _ => 10 };
        double from = axis.From ?? (tight ? low : Math.Floor(low / step + 1e-9) * step), to = axis.To ?? (tight ? high : Math.Ceiling(high / step - 1e-9) * step);
        List<double> at = [];
        for (double k = Math.Ceiling(from / step - 1e-9); k * step <= to + 1e-9 * step; k++)
        {
            at.Add(k * step);
        }

        int decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(step) + 1e-9) + (Math.Abs(step / power - 2.5) < 0.01 ? 1 : 0));
        return new Ticks(from, to, at, [.. at.Select(v => Name(v, decimals))]);
    }

    private static string Name(double value, int decimals)
    {
        string text = Math.Abs(value).ToString("F" + Math.Min(decimals, 9), CultureInfo.InvariantCulture);
        int whole = text.IndexOf('.', StringComparison.Ordinal) is var dot and >= 0 ? dot : text.Length;
        for (int i = whole - 3; i > 0 && whole > 4; i -= 3)
        {
            text = text.Insert(i, "\u2009");
        }

        return value < 0 && text.Any(c => c is > '0' and <= '9') ? "−" + text : text;
    }

    private static Ticks Decades(ChartAxis axis, double low, double high)
    {
        int first = (int)Math.Floor(Math.Log10(low) + 1e-9), last = (int)Math.Ceiling(Math.Log10(high) - 1e-9);
        double[] round = [.. Enumerable.Range(first, last - first + 1).Select(e => Math.Pow(10, e)).SelectMany(p => (double[])[p, 2 * p, 5 * p])];
        double from = axis.From ?? round.Last(v => v <= low * (1 + 1e-9)), to = axis.To ?? round.First(v => v >= high * (1 - 1e-9));
        int[] steps = last - first <= 2 ? [1, 2, 5] : [1];
        double[] at = [.. Enumerable.Range(first, last - first + 1).SelectMany(e => steps.Select(s => s * Math.Pow(10, e)))
            .Where(v => v >= from * (1 - 1e-9) && v <= to * (1 + 1e-9))];
        return new Ticks(from, to, at, [.. at.Select(v => v is >= 1e-3 and < 1e6
            ? v.ToString("0.#####", CultureInfo.InvariantCulture)
            : $"$10^{{{(int)Math.Round(Math.Log10(v))}}}$")]);
    }
}
