namespace StrutLessons.Calibration;

public sealed partial record AnnexDEvaluation
{
    private const int MostListed = 20;
    private const string Clause = "EN 1990:2002, Annex D.8";

    /// <summary>From the tests to the partial factors. Single error terms are listed for up to 20 tests, the extremes for more.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        bool sum = Settings.Form == VariationForm.Sum;
        string variables = Variables.Count == 0 ? "0" : string.Join(" + ", Variables.Select(v => Square(v.Variation)));
        string factors = Variables.Count == 0 ? "1" : string.Concat(Variables.Select(v => $@"\left({Square(v.Variation)} + 1\right)"));
        List<WorkedStep> steps =
        [
            Step("Number of tests", "n", "", "", Tests.Count, "given"),
            Step("Slope of the line through the tests", "b", @"\frac{\sum r_e r_t}{\sum r_t^2}",
                $@"\frac{{{Tex.Number(SumMeasuredCalculated)}}}{{{Tex.Number(SumCalculatedSquared)}}}", Slope),
            .. Errors(),
            Step("Mean of the logarithms", @"\bar{\Delta}", @"\frac{1}{n} \sum \ln \delta_i", $@"\frac{{{Tex.Number(SumLogErrors)}}}{{{Tests.Count}}}", MeanLogError),
            Step("Variance of the logarithms", @"s_\Delta^2", @"\frac{1}{n-1} \sum (\Delta_i - \bar{\Delta})^2",
                $@"\frac{{{Tex.Number(SumSquaredDeviations)}}}{{{Tests.Count} - 1}}", LogErrorVariance),
            Step("Variation of the error term", @"V_\delta", @"\sqrt{\exp(s_\Delta^2) - 1}",
                $@"\sqrt{{\exp({Tex.Number(LogErrorVariance)}) - 1}}", ErrorVariation),
            .. Variables.Select(v => Step($"Variation of {v.Name}", "V_X", "", "", v.Variation, "given (prior knowledge)")),
            Step("Variation from the basic variables, sum form", "V_{rt}", @"\sqrt{\sum V_X^2}", $@"\sqrt{{{variables}}}", ModelVariationSum),
            Step("Variation from the basic variables, product form", "V_{rt}", @"\sqrt{\prod (V_X^2 + 1) - 1}", $@"\sqrt{{{factors} - 1}}", ModelVariationProduct),
            Step("Variation of the resistance, sum form", "V_r", @"\sqrt{V_\delta^2 + \sum V_X^2}", $@"\sqrt{{{Square(ErrorVariation)} + {variables}}}", VariationSum),
            Step("Variation of the resistance, product form", "V_r", @"\sqrt{(V_\delta^2 + 1) \prod (V_X^2 + 1) - 1}",
                $@"\sqrt{{\left({Square(ErrorVariation)} + 1\right){factors} - 1}}", VariationProduct),
            Step($"Variation used from here on ({(sum ? "sum" : "product")} form)", "V_r", "", "", Variation, "chosen"),
            Step("Log-normal scatter of the resistance", "Q", @"\sqrt{\ln(V_r^2 + 1)}", Root(Variation), Q),
            Step("Share of the basic variables", "Q_{rt}", @"\sqrt{\ln(V_{rt}^2 + 1)}", Root(ModelVariation), QModel),
            Step("Share of the error term", @"Q_\delta", @"\sqrt{\ln(V_\delta^2 + 1)}", Root(ErrorVariation), QError),
            Step("Weight of the basic variables", @"\alpha_{rt}", @"\frac{Q_{rt}}{Q}", Share(QModel), WeightModel),
            Step("Weight of the error term", @"\alpha_\delta", @"\frac{Q_\delta}{Q}", Share(QError), WeightError),
            Step("Number of tests for the fractile factors", "n", "", "", CountForFractiles, Settings.CountForFractiles is null ? "number of tests" : "given"),
            Step("Fractile factor, many tests", @"k_\infty", "", "", AnnexDTable.CharacteristicMany, "EN 1990:2002, Table D.1 (from memory)"),
            Step("Fractile factor, n tests", "k_n", "", "", CharacteristicFactor, "EN 1990:2002, Table D.1 (from memory), linear in 1/n between columns"),
            Step("Design fractile factor, many tests", @"k_{d,\infty}", "", "", AnnexDTable.DesignMany, "EN 1990:2002, Table D.2 (from memory)"),
            Step("Design fractile factor, n tests", "k_{d,n}", "", "", DesignFactor, "EN 1990:2002, Table D.2 (from memory), linear in 1/n between columns"),
            Value("Characteristic resistance over the model", @"r_k/g_{rt}(X_m)", "k", AnnexDTable.CharacteristicMany, CharacteristicFactor, CharacteristicResistance),
            Value("Design resistance over the model", @"r_d/g_{rt}(X_m)", "k_d", AnnexDTable.DesignMany, DesignFactor, DesignResistance),
            Step("Partial factor", @"\gamma_M", @"\frac{r_k}{r_d}", $@"\frac{{{Tex.Number(CharacteristicResistance)}}}{{{Tex.Number(DesignResistance)}}}", PartialFactor),
            Step("Model with mean properties over model with nominal ones", @"g_{rt}(X_m)/r_{nom}", "", "", Settings.MeanOverNominal, "given"),
            Step("Partial factor on the nominal resistance", @"\gamma_M^*", @"\frac{r_{nom}}{r_d}",
                $@"\frac{{1}}{{{Tex.Number(Settings.MeanOverNominal)} \cdot {Tex.Number(DesignResistance)}}}", PartialFactorOnNominal),
        ];
        return steps;

        static string Square(double value) => $"({Tex.Number(value)})^2";

        static string Root(double variation) => $@"\sqrt{{\ln\left({Square(variation)} + 1\right)}}";

        string Share(double part) => Q == 0 ? "" : $@"\frac{{{Tex.Number(part)}}}{{{Tex.Number(Q)}}}";
    }

    private IEnumerable<WorkedStep> Errors()
    {
        if (Tests.Count > MostListed)
        {
            return
            [
                Step("Smallest error term", @"\delta_{min}", "", "", ErrorTerms.Min()),
                Step("Largest error term", @"\delta_{max}", "", "", ErrorTerms.Max()),
            ];
        }

        return Tests.Select((t, i) => Step($"Error term of test {i + 1}", $@"\delta_{{{i + 1}}}", @"\frac{r_{e,i}}{b\, r_{t,i}}",
            $@"\frac{{{Tex.Number(t.Measured)}}}{{{Tex.Number(Slope)} \cdot {Tex.Number(t.Calculated)}}}", ErrorTerms[i]));
    }

    private WorkedStep Value(string title, string symbol, string k, double many, double few, double value)
    {
        string b = Tex.Number(Slope), q = Tex.Number(Q);
        string infinite = k == "k" ? @"k_\infty" : @"k_{d,\infty}", finite = k == "k" ? "k_n" : "k_{d,n}";
        return HasManyTests
            ? Step(title, symbol, $@"b \exp(-{infinite} Q - 0.5 Q^2)", $@"{b} \cdot \exp\left(-{Tex.Number(many)} \cdot {q} - 0.5 \cdot ({q})^2\right)", value)
            : Step(title, symbol, $@"b \exp(-{infinite} \alpha_{{rt}} Q_{{rt}} - {finite} \alpha_\delta Q_\delta - 0.5 Q^2)",
                $@"{b} \cdot \exp\left(-{Tex.Number(many)} \cdot {Tex.Number(WeightModel)} \cdot {Tex.Number(QModel)} - "
                + $@"{Tex.Number(few)} \cdot {Tex.Number(WeightError)} \cdot {Tex.Number(QError)} - 0.5 \cdot ({q})^2\right)", value);
    }

    private static WorkedStep Step(string title, string symbol, string formula, string numbers, double value, string source = Clause + " (from memory)") =>
        new(title, symbol, formula, numbers, value, "", source);
}
