namespace StrutLessons.Calibration;

public sealed partial record CorrectionFunction : IWorked
{
    private const string Regression = "least squares (any textbook of statistics)";

    /// <summary>The fit, how much it explains, how far it is lowered, and the factor in the middle of the grid.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        double middle = 0.5 * (From + To);
        string variable = Variable == CorrectionVariable.LoadRatio ? "x" : @"\bar\lambda_v";
        string[] terms = ["c_0", $"c_1 {variable}", $"c_2 {variable}^2"];
        string form = string.Join(" + ", terms.Take(Coefficients.Count));
        string[] powers = ["", $@" \cdot {Tex.Number(middle)}", $@" \cdot {Tex.Number(middle)}^2"];
        string numbers = string.Join(" + ", Coefficients.Select((c, i) => Tex.Bracketed(c) + powers[i]));
        bool capped = Cap is double cap && Lowering * FitAt(middle) > cap;
        return
        [
            new("Number of cases", "n", "", "", Grid.Cases.Count, "", "given"),
            .. Coefficients.Select((c, i) => new WorkedStep(i == 0 ? "Constant" : $"Coefficient {i}", $"c_{i}",
                @"\min \sum (r_i - \hat r_i)^2", "", c, "", Regression)),
            new("Share of the scatter that the fit explains", "R^2", @"1 - \frac{\sum (r_i - \hat r_i)^2}{\sum (r_i - \bar r)^2}", "", Explained, "", Regression),
            new("Variation left about the fit", "V", @"\frac{s(r/\hat r)}{m(r/\hat r)}",
                $@"\frac{{{Tex.Number(Fitted.StandardDeviation)}}}{{{Tex.Number(Fitted.Mean)}}}", Fitted.Variation, "", "definition"),
            new("Share of the cases to be kept on the safe side", "p", "", "", RequiredShare, "", "chosen"),
            new("The whole fit is lowered by this factor", "k", @"\min\left(1, \left(\tfrac{r}{\hat r}\right)_{1-p}\right)", "", Lowering, "",
                "ratio in rising order below which a share 1 − p of the cases lies"),
            .. Cap is double c ? [new WorkedStep("Largest factor allowed", "f_{max}", "", "", c, "", "chosen")] : Array.Empty<WorkedStep>(),
            new("The variable in the middle of the grid", variable, @"\frac{1}{2}(" + variable + "_{min} + " + variable + "_{max})",
                $@"\frac{{1}}{{2}} \cdot ({Tex.Number(From)} + {Tex.Number(To)})", middle, "", "example"),
            new("The factor there", "f", capped ? "f_{max}" : $@"k \left({form}\right)", capped ? "" : $@"{Tex.Number(Lowering)} \cdot \left({numbers}\right)", At(middle), "", "example"),
            new("Lowest reference over corrected model", @"\min \frac{N_u}{f N_R}", "", "", Corrected.Minimum, "", "the grid"),
        ];
    }
}
