using MathNet.Numerics.Distributions;
using StrutLessons.Calibration;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

public static partial class Plot
{
    private const string RatioAxis = "Reference over model $N_u/N_R$ (–)", SlendernessAxis = @"Relative slenderness $\bar\lambda_v$ on the system length (–)";
    private const string Branch = "branch: the lower peak counts";

    /// <summary>
    /// Ratios of reference to both elastic models against slenderness, the plane model drawn a little to the left and the one with roll to the right.
    /// Cases whose reference turns off into a branch before its peak are marked on top.
    /// </summary>
    /// <param name="grid">The grid.</param>
    /// <exception cref="InputException">No strut has a ratio.</exception>
    public static Chart Ratios(RatioGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        Chart chart = Chart.Of($"Reference over elastic model, {grid.Cases.Count} struts", SlendernessAxis, RatioAxis);
        if (grid.Cases.Count == 0)
        {
            throw new InputException("grid", "no case", "at least one", "Look at the reasons in Failures.");
        }

        double widest = grid.Cases.Max(c => c.Slenderness), aside = 0.008 * widest;
        foreach (ElasticModel model in Enum.GetValues<ElasticModel>())
        {
            double by = model == ElasticModel.Plane ? -aside : aside;
            chart = chart.Points(ModelWords(model), grid.Cases.Select(c => c.Slenderness + by), grid.Cases.Select(c => c.Ratio(model)));
        }

        return WithBranches(chart, grid, c => c.Slenderness + aside, ElasticModel.WithRoll).AtY(1, "equal").XFrom(0, 1.1 * widest);
    }

    /// <summary>
    /// Ratios of the corrected model against the variable of the correction, with the fit, the factor that is kept, and the range in which 90 % of the cases
    /// lie about the fit.
    /// </summary>
    /// <param name="correction">The correction function.</param>
    public static Chart Correction(CorrectionFunction correction)
    {
        ArgumentNullException.ThrowIfNull(correction);
        RatioGrid grid = correction.Grid;
        double[] x = [.. Enumerable.Range(0, 81).Select(i => Math.Min(correction.To, correction.From + (correction.To - correction.From) * i / 80))];
        double low = correction.Fitted.Fractile(0.05), high = correction.Fitted.Fractile(0.95);
        Chart chart = Chart.Of($"Correction of the {ModelWords(correction.Model)}, {grid.Cases.Count} struts",
                correction.Variable == CorrectionVariable.Slenderness ? SlendernessAxis : "Load ratio $x = N_R/N_{cr}$ (–)", RatioAxis)
            .Between("90 % of the cases about the fit", x, x.Select(v => low * correction.FitAt(v)), x.Select(v => high * correction.FitAt(v)))
            .Line($"factor, safe for {Figures.Text(100 * correction.RequiredShare)} % of the cases", x, x.Select(correction.At))
            .Line("fit", x, x.Select(correction.FitAt))
            .Points("cases", grid.Cases.Select(correction.ValueOf), grid.Cases.Select(c => c.Ratio(correction.Model)));
        return WithBranches(chart, grid, correction.ValueOf, correction.Model).AtY(1, "factor 1").XFrom(0, correction.To + 0.2 * Math.Abs(correction.To));
    }

    /// <summary>
    /// Probability paper: sorted ratios against the standard normal fractile of (i − 0.5)/n. On normal paper a normal distribution is a straight line; on
    /// log-normal paper, over ln r, a log-normal one is.
    /// </summary>
    /// <param name="ratios">The ratios.</param>
    /// <param name="lognormal">True for log-normal paper.</param>
    public static Chart ProbabilityPaper(RatioStatistics ratios, bool lognormal = false)
    {
        ArgumentNullException.ThrowIfNull(ratios);
        double[] logs = [.. ratios.Sorted.Select(r => Math.Log(r))], own = lognormal ? logs : [.. ratios.Sorted];
        double meanLog = logs.Average(), deviationLog = Deviation(logs, meanLog);
        double[] z = [.. Enumerable.Range(1, ratios.Count).Select(i => Normal.InvCDF(0, 1, (i - 0.5) / ratios.Count))];
        double[] line = [.. Enumerable.Range(0, 41).Select(i => z[0] + (z[^1] - z[0]) * i / 40)];
        double[] normal = [.. line.Select(v => ratios.Mean + v * ratios.StandardDeviation)], logNormal = [.. line.Select(v => Math.Exp(meanLog + v * deviationLog))];
        Func<double, double> onPaper = lognormal ? v => v > 0 ? Math.Log(v) : double.NaN : v => v;
        return Chart.Of(lognormal ? "Log-normal probability paper" : "Normal probability paper",
                lognormal ? "Logarithm of the ratio, $\\ln r$ (–)" : "Ratio $r$ (–)", "Standard normal fractile $z$ (–)")
            .Line("normal distribution", normal.Select(onPaper), line).Line("log-normal distribution", logNormal.Select(onPaper), line)
            .Points("ratios", own, z)
            .AtY(Normal.InvCDF(0, 1, 0.05), "5 % fractile").AtY(0, "50 %").AtY(Normal.InvCDF(0, 1, 0.95), "95 %");
    }

    /// <summary>Which variable moves the ratio: share of the scatter between its levels, with the levels of the lowest and the highest mean.</summary>
    /// <param name="sensitivity">The comparison.</param>
    public static BarChart Influences(RatioSensitivity sensitivity)
    {
        ArgumentNullException.ThrowIfNull(sensitivity);
        return new BarChart($"What moves the ratio, {ModelWords(sensitivity.Model)}", "Share of the scatter between the levels (–)",
            [.. sensitivity.Influences.Select(i => new Bar(i.Variable.Name, Math.Round(i.Share, 4),
                $"mean {Figures.Text(i.Levels.Min(l => l.Ratios.Mean), 3)} to {Figures.Text(i.Levels.Max(l => l.Ratios.Mean), 3)}"))]);
    }

    /// <summary>Lowest ratio, 5 % fractile and median for each bow on trial; the chosen bow is marked.</summary>
    /// <param name="choice">The choice.</param>
    public static Chart Bows(BowChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        BowCandidate[] rising = [.. choice.Candidates.OrderBy(c => c.Divisor)];
        double[] x = [.. rising.Select(c => c.Divisor)];
        Chart chart = Chart.Of($"Bow from borderline supports, {ModelWords(choice.Model)}", "Length over bow $L/e_0$ (–)", RatioAxis)
            .LineAndPoints("median", x, rising.Select(c => c.Ratios.Median)).LineAndPoints("5 % fractile", x, rising.Select(c => c.Ratios.Fractile(0.05)))
            .LineAndPoints("lowest", x, rising.Select(c => c.Ratios.Minimum))
            // Room for the words at the line, which would stand on the last points.
            .AtY(1, "above: safe").XFrom(0, 1.35 * x[^1]);
        return choice.Chosen is { } best ? chart.AtX(best.Divisor, $"chosen: L/{Figures.Text(best.Divisor)}") : chart;
    }

    internal static string ModelWords(ElasticModel model) => model == ElasticModel.Plane ? "plane model" : "model with roll";

    private static Chart WithBranches(Chart chart, RatioGrid grid, Func<RatioCase, double> x, ElasticModel model) => grid.Branching is { Count: > 0 } branching
        ? chart.Points($"{branching.Count} with a {Branch}", branching.Select(x), branching.Select(c => c.Ratio(model)))
        : chart;

    private static double Deviation(double[] values, double mean) =>
        values.Length > 1 ? Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1)) : 0;
}
