using System.Globalization;

namespace StrutLessons.Tests.Standards;

/// <summary>Compares with a number as a source prints it: the difference may be half a unit of its last digit.</summary>
internal static class Printed
{
    internal static void Agrees(string printed, double? actual, string what)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        double half = 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length);
        Assert.True(actual.HasValue, $"{what}: no value");
        // The small addition lets a number that lies on the edge of rounding pass.
        Closeness.Relative(double.Parse(printed, CultureInfo.InvariantCulture), actual.Value, half * (1 + 1e-9), what, scale: 1);
    }
}
