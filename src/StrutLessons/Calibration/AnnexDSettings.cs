namespace StrutLessons.Calibration;

/// <summary>How V_r is put together from V_δ and the basic variables.</summary>
public enum VariationForm
{
    /// <summary>V_rt² = Σ V_X², V_r² = V_δ² + V_rt²: for small variations.</summary>
    Sum,

    /// <summary>V_rt² = Π(V_X² + 1) − 1, V_r² = (V_δ² + 1) Π(V_X² + 1) − 1: for a model that is a product of its variables.</summary>
    Product,
}

/// <summary>Choices of an evaluation by EN 1990:2002, Annex D.8.</summary>
public sealed record AnnexDSettings
{
    private readonly int? countForFractiles;
    private readonly double meanOverNominal = 1;

    /// <summary>V unknown, sum form, n = number of tests, mean properties equal to the nominal ones.</summary>
    public static AnnexDSettings Default { get; } = new();

    /// <summary>Which rows of the tables give k_n and k_d,n.</summary>
    public VariationKnowledge Knowledge { get; init; } = VariationKnowledge.Unknown;

    /// <summary>How V_r is put together.</summary>
    public VariationForm Form { get; init; } = VariationForm.Sum;

    /// <summary>
    /// n for the fractile factors, where the tests are one of several subsets and the factors may follow the whole series
    /// (Annex D.8.2.2.5, from memory). Left out it is the number of tests.
    /// </summary>
    /// <exception cref="InputException">Not between 1 and 1 000 000.</exception>
    public int? CountForFractiles
    {
        get => countForFractiles;
        init => countForFractiles = value is int n
            ? Guard.Within(n, 1, 1_000_000, "count for the fractiles", "Give the number of tests of the whole series, or leave it out.")
            : null;
    }

    /// <summary>g_rt(X_m)/r_nom: resistance with mean properties over resistance with nominal properties.</summary>
    /// <exception cref="InputException">Not between 0.1 and 10.</exception>
    public double MeanOverNominal
    {
        get => meanOverNominal;
        init => meanOverNominal = Guard.Within(value, 0.1, 10, "mean over nominal resistance", "",
            "If the yield strength rules and its mean is 20 % above the nominal value, it is 1.2.");
    }
}
