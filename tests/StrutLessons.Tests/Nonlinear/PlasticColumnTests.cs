using StrutLessons.Nonlinear;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>Eccentric rectangular columns of elastic, perfectly plastic steel.</summary>
public class PlasticColumnTests(ITestOutputHelper output)
{
    private const double Depth = 20, Width = 40, E = 210000, Yield = 235;

    /// <summary>
    /// Ježek's critical stresses in MPa for m = 6e/h and slenderness L/i: closed form for a deflection of half-sine shape
    /// (Ježek 1934 to 1937; Bleich, Buckling Strength of Metal Structures, 1952; from memory, derived again). The shape is an assumption:
    /// the exact column carries up to 2.5 % more or less.
    /// </summary>
    [Theory]
    [InlineData(0.2, 20, 213.283)]
    [InlineData(0.2, 60, 192.898)]
    [InlineData(0.2, 100, 146.216)]
    [InlineData(0.2, 150, 82.504)]
    [InlineData(0.2, 200, 49.125)]
    [InlineData(0.5, 20, 188.124)]
    [InlineData(0.5, 60, 159.012)]
    [InlineData(0.5, 100, 118.595)]
    [InlineData(0.5, 150, 72.912)]
    [InlineData(0.5, 200, 45.794)]
    [InlineData(1.0, 20, 158.237)]
    [InlineData(1.0, 60, 127.457)]
    [InlineData(1.0, 100, 95.415)]
    [InlineData(1.0, 150, 62.570)]
    [InlineData(1.0, 200, 41.483)]
    public void An_eccentric_rectangle_carries_what_the_moment_curvature_law_gives_and_nearly_Jezeks_load(double m, double slenderness, double jezek)
    {
        double rod = RodPeak(m, slenderness), exact = ColumnPeak(m, slenderness) * Yield;
        output.WriteLine($"m {m} slenderness {slenderness}: rod/exact law {rod / exact:F5}, rod/Jezek {rod / jezek:F5}, exact/Jezek {exact / jezek:F5}");
        Closeness.Relative(exact, rod, 1.5e-3, "exact law");
        Closeness.Relative(jezek, rod, 0.025, "half-sine shape");
    }

    private static double RodPeak(double m, double slenderness)
    {
        ReferenceSection section = ReferenceSection.Rectangle(Depth, Width);
        var end = new ReferenceEnd(new Planar(m * Depth / 6, 0), 0, 0);
        var strut = new ReferenceStrut(section, new ReferenceSteel(E, 80769, Yield), slenderness * Depth / Math.Sqrt(12), Planar.Zero, 0, end, end);
        var mesh = new RodMesh(32, 4, 1, 24);
        return ReferenceAnalysis.Follow(strut, mesh, PathSettings.PeakOnly with { Twist = false, LargestStep = 0.03 }).PeakLoad / section.Area;
    }

    /// <summary>
    /// Largest n = N/(A f_y) of a hinged column of given length: for a load and a curvature at mid-length the deflected shape is integrated outwards
    /// to the end, where the moment is N e; the length so found has a maximum over the curvature, and that maximum falls with the load.
    /// </summary>
    private static double ColumnPeak(double m, double slenderness)
    {
        double low = 0, high = 1;
        while (high - low > 1e-7)
        {
            double n = 0.5 * (low + high);
            (low, high) = LongestSlenderness(n, m) > slenderness ? (n, high) : (low, n);
        }
        return low;
    }

    private static double LongestSlenderness(double n, double m)
    {
        // Moments in units of M_y: at mid-length between the end moment n·m and the plastic moment 1.5 (1 − n²).
        double start = n * m, full = 1.5 * (1 - n * n);
        if (start >= full)
        {
            return 0;
        }
        double low = 0, high = 1, golden = 0.5 * (Math.Sqrt(5) - 1);
        double Length(double share) => Slenderness(n, start, start + share * (full - start));
        double a = high - golden * (high - low), b = low + golden * (high - low), fa = Length(a), fb = Length(b);
        while (high - low > 1e-6)
        {
            if (fa > fb)
            {
                (high, b, fb) = (b, a, fa);
                a = high - golden * (high - low);
                fa = Length(a);
            }
            else
            {
                (low, a, fa) = (a, b, fb);
                b = low + golden * (high - low);
                fb = Length(b);
            }
        }
        return Math.Max(fa, fb);
    }

    /// <summary>
    /// With μ = M/M_y and N y'' = −N φ: (dμ/dx)² = 2 N/M_y ∫ φ dμ from μ to μ at mid-length. The substitution μ = μ_mid − (μ_mid − μ_end) s²
    /// takes the root out of ∫ dμ/|dμ/dx|; Gauss-Legendre points do the rest.
    /// </summary>
    private static double Slenderness(double n, double end, double mid)
    {
        double yieldCurvature = 2 * Yield / (E * Depth), perMoment = n * Yield * Depth * Width / (Yield * Depth * Depth * Width / 6);
        var rule = new MathNet.Numerics.Integration.GaussLegendreRule(0, 1, 64);
        double top = CurvatureIntegral(n, mid), half = 0;
        for (int i = 0; i < rule.Order; i++)
        {
            double s = rule.GetAbscissa(i), mu = mid - (mid - end) * s * s;
            double slope = Math.Sqrt(2 * perMoment * yieldCurvature * (top - CurvatureIntegral(n, mu)));
            half += rule.GetWeight(i) * 2 * (mid - end) * s / slope;
        }
        return 2 * half * Math.Sqrt(12) / Depth;
    }

    /// <summary>
    /// ∫ φ/φ_y dμ from 0, with φ/φ_y = μ up to 1 − n, then 4(1 − n)³/(3(1 − n) − μ)² up to (1 − n)(1 + 2n), then (3(1 − n²) − 2μ)^(−1/2).
    /// </summary>
    private static double CurvatureIntegral(double n, double mu)
    {
        double k = 1 - n, one = k, two = k * (1 + 2 * n);
        double sum = 0.5 * Math.Min(mu, one) * Math.Min(mu, one);
        if (mu > one)
        {
            sum += 4 * k * k * k * (1 / (3 * k - Math.Min(mu, two)) - 1 / (3 * k - one));
        }
        if (mu > two)
        {
            sum += Math.Sqrt(3 * (1 - n * n) - 2 * two) - Math.Sqrt(3 * (1 - n * n) - 2 * mu);
        }
        return sum;
    }
}
