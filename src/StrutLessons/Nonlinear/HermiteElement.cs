using System.Runtime.Intrinsics;
using MathNet.Numerics.Integration;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Cubic Hermite interpolation on one element of length l. The four values of a field are: value and slope at the left node, value and slope at the right node.
/// </summary>
internal sealed class HermiteElement
{
    internal HermiteElement(double length, int stations)
    {
        Length = length;
        var rule = new GaussLegendreRule(0, 1, stations);
        Places = rule.Abscissas;
        Weights = [.. rule.Weights.Select(w => w * length)];
        Value = [.. Places.Select(s => ValueAt(s, length))];
        First = [.. Places.Select(s => FirstAt(s, length))];
        Second = [.. Places.Select(s => SecondAt(s, length))];
    }

    internal double Length { get; }

    /// <summary>Gauss places as fractions of the element.</summary>
    internal double[] Places { get; }

    /// <summary>Gauss weights, mm.</summary>
    internal double[] Weights { get; }

    internal Vector256<double>[] Value { get; }

    internal Vector256<double>[] First { get; }

    internal Vector256<double>[] Second { get; }

    internal static Vector256<double> ValueAt(double s, double l) =>
        Vector256.Create(1 - s * s * (3 - 2 * s), l * s * (1 - s) * (1 - s), s * s * (3 - 2 * s), l * s * s * (s - 1));

    internal static Vector256<double> FirstAt(double s, double l) =>
        Vector256.Create(6 * s * (s - 1) / l, 1 + s * (3 * s - 4), 6 * s * (1 - s) / l, s * (3 * s - 2));

    internal static Vector256<double> SecondAt(double s, double l) =>
        Vector256.Create((12 * s - 6) / (l * l), (6 * s - 4) / l, (6 - 12 * s) / (l * l), (6 * s - 2) / l);
}
