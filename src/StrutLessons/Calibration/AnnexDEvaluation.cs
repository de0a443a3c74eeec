namespace StrutLessons.Calibration;

/// <summary>
/// Standard evaluation of a resistance model against tests, EN 1990:2002, Annex D.8 (from memory), with every value on the way. Immutable.
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
public sealed partial record AnnexDEvaluation : IWorked
{
    /// <summary>From this number of tests on, k_∞ and k_d,∞ act on the whole scatter.</summary>
    public const int ManyTests = 100;

    private AnnexDEvaluation(AnnexDTest[] tests, BasicVariable[] variables, AnnexDSettings settings)
    {
        (Tests, Variables, Settings) = (tests, variables, settings);
        SumMeasuredCalculated = tests.Sum(t => t.Measured * t.Calculated);
        SumCalculatedSquared = tests.Sum(t => t.Calculated * t.Calculated);
        Slope = SumMeasuredCalculated / SumCalculatedSquared;
        ErrorTerms = [.. tests.Select(t => t.Measured / (Slope * t.Calculated))];
        LogErrors = [.. ErrorTerms.Select(d => Math.Log(d))];
        SumLogErrors = LogErrors.Sum();
        MeanLogError = SumLogErrors / tests.Length;
        SumSquaredDeviations = LogErrors.Sum(d => (d - MeanLogError) * (d - MeanLogError));
        LogErrorVariance = SumSquaredDeviations / (tests.Length - 1);
        ErrorVariation = Math.Sqrt(Math.Exp(LogErrorVariance) - 1);

        double sum = variables.Sum(v => v.Variation * v.Variation);
        double product = variables.Aggregate(1.0, (p, v) => p * (v.Variation * v.Variation + 1));
        double error = ErrorVariation * ErrorVariation;
        (ModelVariationSum, ModelVariationProduct) = (Math.Sqrt(sum), Math.Sqrt(product - 1));
        (VariationSum, VariationProduct) = (Math.Sqrt(error + sum), Math.Sqrt((error + 1) * product - 1));
        (ModelVariation, Variation) = settings.Form == VariationForm.Sum
            ? (ModelVariationSum, VariationSum)
            : (ModelVariationProduct, VariationProduct);

        (Q, QModel, QError) = (Log(Variation), Log(ModelVariation), Log(ErrorVariation));
        // Without any scatter there is nothing to share out.
        (WeightModel, WeightError) = Q == 0 ? (0, 0) : (QModel / Q, QError / Q);
        CountForFractiles = settings.CountForFractiles ?? tests.Length;
        CharacteristicFactor = AnnexDTable.Characteristic(CountForFractiles, settings.Knowledge);
        DesignFactor = AnnexDTable.Design(CountForFractiles, settings.Knowledge);
        CharacteristicResistance = Resistance(AnnexDTable.CharacteristicMany, CharacteristicFactor);
        DesignResistance = Resistance(AnnexDTable.DesignMany, DesignFactor);

        static double Log(double variation) => Math.Sqrt(Math.Log(variation * variation + 1));
    }

    /// <summary>The tests.</summary>
    public IReadOnlyList<AnnexDTest> Tests { get; }

    /// <summary>The basic variables.</summary>
    public IReadOnlyList<BasicVariable> Variables { get; }

    /// <summary>The choices made.</summary>
    public AnnexDSettings Settings { get; }

    /// <summary>Σ r_e r_t.</summary>
    public double SumMeasuredCalculated { get; }

    /// <summary>Σ r_t².</summary>
    public double SumCalculatedSquared { get; }

    /// <summary>b, least-squares slope of the line r_e = b r_t.</summary>
    public double Slope { get; }

    /// <summary>δ_i = r_e,i/(b r_t,i) in the order of the tests.</summary>
    public IReadOnlyList<double> ErrorTerms { get; }

    /// <summary>Δ_i = ln δ_i.</summary>
    public IReadOnlyList<double> LogErrors { get; }

    /// <summary>Σ Δ_i.</summary>
    public double SumLogErrors { get; }

    /// <summary>Δ̄, mean of Δ_i.</summary>
    public double MeanLogError { get; }

    /// <summary>Σ (Δ_i − Δ̄)².</summary>
    public double SumSquaredDeviations { get; }

    /// <summary>s_Δ², variance of Δ_i.</summary>
    public double LogErrorVariance { get; }

    /// <summary>V_δ, coefficient of variation of the error term.</summary>
    public double ErrorVariation { get; }

    /// <summary>V_rt of the basic variables, sum form.</summary>
    public double ModelVariationSum { get; }

    /// <summary>V_rt of the basic variables, product form.</summary>
    public double ModelVariationProduct { get; }

    /// <summary>V_rt in the chosen form.</summary>
    public double ModelVariation { get; }

    /// <summary>V_r, sum form.</summary>
    public double VariationSum { get; }

    /// <summary>V_r, product form.</summary>
    public double VariationProduct { get; }

    /// <summary>V_r in the chosen form.</summary>
    public double Variation { get; }

    /// <summary>Q = √ln(V_r² + 1).</summary>
    public double Q { get; }

    /// <summary>Q_rt = √ln(V_rt² + 1).</summary>
    public double QModel { get; }

    /// <summary>Q_δ = √ln(V_δ² + 1).</summary>
    public double QError { get; }

    /// <summary>α_rt = Q_rt/Q; 0 if nothing scatters.</summary>
    public double WeightModel { get; }

    /// <summary>α_δ = Q_δ/Q; 0 if nothing scatters.</summary>
    public double WeightError { get; }

    /// <summary>n for the fractile factors.</summary>
    public int CountForFractiles { get; }

    /// <summary>k_n.</summary>
    public double CharacteristicFactor { get; }

    /// <summary>k_d,n.</summary>
    public double DesignFactor { get; }

    /// <summary>True if n ≥ 100: one fractile factor acts on the whole scatter.</summary>
    public bool HasManyTests => CountForFractiles >= ManyTests;

    /// <summary>r_k/g_rt(X_m), characteristic resistance over the model with mean properties.</summary>
    public double CharacteristicResistance { get; }

    /// <summary>r_d/g_rt(X_m), design resistance over the model with mean properties.</summary>
    public double DesignResistance { get; }

    /// <summary>γ_M = r_k/r_d.</summary>
    public double PartialFactor => CharacteristicResistance / DesignResistance;

    /// <summary>γ_M* = r_nom/r_d, to be used with the model and nominal properties.</summary>
    public double PartialFactorOnNominal => 1 / (Settings.MeanOverNominal * DesignResistance);

    /// <summary>Evaluates a resistance model.</summary>
    /// <param name="tests">Tests with the model's resistance for each.</param>
    /// <param name="variables">Basic variables with their coefficients of variation; may be empty.</param>
    /// <param name="settings">Choices; <see cref="AnnexDSettings.Default"/> if left out.</param>
    /// <exception cref="InputException">Fewer than 2 tests, or too few for the tables: 4 with V unknown.</exception>
    public static AnnexDEvaluation Of(IReadOnlyList<AnnexDTest> tests, IReadOnlyList<BasicVariable> variables, AnnexDSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        ArgumentNullException.ThrowIfNull(variables);
        settings ??= AnnexDSettings.Default;
        Guard.Named(settings.Form, "form of the variation");
        if (tests.Count < 2)
        {
            throw Guard.Fail(tests.Count, "number of tests", "", "2 or more", "One test shows no scatter.");
        }

        // A value made without its constructor holds zeros.
        return new([.. tests.Select(t => new AnnexDTest(t.Measured, t.Calculated))], [.. variables], settings);
    }

    private double Resistance(double many, double few) => Slope * Math.Exp(HasManyTests
        ? -many * Q - 0.5 * Q * Q
        : -many * WeightModel * QModel - few * WeightError * QError - 0.5 * Q * Q);
}
