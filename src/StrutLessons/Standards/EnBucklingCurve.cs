namespace StrutLessons.Standards;

/// <summary>Buckling curves of EN 1993-1-1:2005, 6.3.1.2: the reduction factor χ as a function of the relative slenderness.</summary>
public static class EnBucklingCurve
{
    /// <summary>Imperfection factor α of curve b, which Table 6.2 gives for angles about any axis (value of Table 6.1 from memory).</summary>
    public const double AlphaForAngles = 0.34;

    /// <summary>χ = 1/(Φ + √(Φ² − λ̄²)) ≤ 1 with Φ = ½[1 + α(λ̄ − 0.2) + λ̄²]; 1 for λ̄ ≤ 0.2. EN 1993-1-1:2005, (6.49).</summary>
    /// <param name="slenderness">λ̄, 0 to 20.</param>
    /// <param name="alpha">α, 0 to 1: 0.13 (a₀), 0.21 (a), 0.34 (b), 0.49 (c), 0.76 (d).</param>
    /// <exception cref="InputException">Out of range.</exception>
    public static double ReductionFactor(double slenderness, double alpha = AlphaForAngles)
    {
        Guard.Within(slenderness, 0, 20, "relative slenderness", "", "Give λ̄ = √(A f_y/N_cr), not the ratio L/i.");
        Guard.Within(alpha, 0, 1, "imperfection factor α", "", "Curve b has 0.34.");
        double phi = Phi(slenderness, alpha);
        return slenderness <= 0.2 ? 1 : Math.Min(1, 1 / (phi + Math.Sqrt(phi * phi - slenderness * slenderness)));
    }

    internal static double Phi(double slenderness, double alpha) => 0.5 * (1 + alpha * (slenderness - 0.2) + slenderness * slenderness);
}
