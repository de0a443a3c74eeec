namespace StrutLessons.Torsion;

/// <summary>Ratios of hyperbolic functions that do not overflow for long bars.</summary>
internal static class Hyperbolic
{
    /// <summary>1/sinh q.</summary>
    internal static double InverseSinh(double q) => 2 * Math.Exp(-q) / Lost(q);

    /// <summary>sinh p/sinh q for 0 ≤ p ≤ q.</summary>
    internal static double SinhRatio(double p, double q) => Math.Exp(p - q) * Lost(p) / Lost(q);

    /// <summary>cosh p/sinh q for 0 ≤ p ≤ q.</summary>
    internal static double CoshRatio(double p, double q) => Math.Exp(p - q) * (2 - Lost(p)) / Lost(q);

    /// <summary>sinh p sinh r/sinh q for p + r ≤ q.</summary>
    internal static double SinhSinh(double p, double r, double q) => 0.5 * Math.Exp(p + r - q) * Lost(p) * Lost(r) / Lost(q);

    /// <summary>cosh p sinh r/sinh q for p + r ≤ q.</summary>
    internal static double CoshSinh(double p, double r, double q) => 0.5 * Math.Exp(p + r - q) * (2 - Lost(p)) * Lost(r) / Lost(q);

    /// <summary>1 − e^(−2p) without loss of digits for small p.</summary>
    private static double Lost(double p)
    {
        double t = Math.Tanh(p);
        return 2 * t / (1 + t);
    }
}
