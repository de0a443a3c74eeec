namespace StrutLessons.Standards;

/// <summary>Member capacity in compression, AS 4100, 6.3.3 (from memory).</summary>
public static class As4100Column
{
    /// <summary>α_c from the modified slenderness λ_n and the section constant α_b.</summary>
    /// <param name="modifiedSlenderness">λ_n = (l_e/r) √k_f √(f_y/250), more than 0.</param>
    /// <param name="sectionConstant">α_b between −1 and 1; 0.5 for hot-rolled angles.</param>
    /// <exception cref="InputException">Out of range.</exception>
    public static double ReductionFactor(double modifiedSlenderness, double sectionConstant)
    {
        Guard.Positive(modifiedSlenderness, "modified slenderness λ_n", "", "Give (l_e/r) √k_f √(f_y/250).");
        Guard.Within(sectionConstant, -1, 1, "section constant α_b", "", "Hot-rolled angles have 0.5.");
        return Find(modifiedSlenderness, sectionConstant).AlphaC;
    }

    internal static Factors Find(double modified, double sectionConstant)
    {
        double alphaA = 2100 * (modified - 13.5) / (modified * modified - 15.3 * modified + 2050);
        double slenderness = modified + alphaA * sectionConstant;
        double eta = Math.Max(0, 0.00326 * (slenderness - 13.5));
        double square = slenderness * slenderness / 8100;
        double xi = (square + 1 + eta) / (2 * square);
        // ξ{1 − √[1 − (90/(ξλ))²]} written without the difference of nearly equal numbers.
        double inner = 1 / (xi * xi * square);
        double alphaC = Math.Min(1, xi * inner / (1 + Math.Sqrt(Math.Max(0, 1 - inner))));
        return new(alphaA, slenderness, eta, xi, alphaC);
    }

    internal readonly record struct Factors(double AlphaA, double Slenderness, double Eta, double Xi, double AlphaC);
}
