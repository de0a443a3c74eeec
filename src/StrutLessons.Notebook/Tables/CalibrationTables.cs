using StrutLessons.Calibration;
using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Tables;

/// <summary>Tables of a calibration.</summary>
public static class CalibrationTables
{
    /// <summary>Fractiles and scatter of the ratios of both elastic models side by side, then without the cases whose reference turns off into a branch before its peak.</summary>
    /// <param name="grid">The grid.</param>
    /// <exception cref="InputException">No strut has a ratio.</exception>
    public static Table Statistics(RatioGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        int branching = grid.Branching.Count;
        string flagged = branching == 0 ? "" : $"; {branching} that turn off into a branch are in it with the lower peak";
        string failed = grid.Failures.Count == 0 ? "" : $"; {grid.Failures.Count} without a peak are not";
        Table table = Heads($"Reference over elastic model, {grid.Cases.Count} struts{flagged}{failed}");
        ElasticModel[] models = Enum.GetValues<ElasticModel>();
        table = table.For(models, m => Row(Short(m), grid.Statistics(m)));
        return branching > 0 && branching < grid.Cases.Count
            ? table.For(models, m => Row($"{Short(m)}, no branch", grid.Where(c => c.StableToPeak).Statistics(m)))
            : table;
    }

    /// <summary>Several corrections side by side: what is fitted, and what is left of the scatter.</summary>
    /// <param name="corrections">The corrections.</param>
    public static Table Corrections(params IReadOnlyList<CorrectionFunction> corrections)
    {
        ArgumentNullException.ThrowIfNull(corrections);
        return Table.Of("Corrections side by side; minimum, median and safe share are those of reference over corrected model", "model", "variable", "form", "$R^2$", "$V$ left", "lowered by", "minimum", "median", "safe")
            .For(corrections, c => [Short(c.Model), c.Variable == CorrectionVariable.LoadRatio ? "$N_R/N_{cr}$" : @"$\bar\lambda_v$", c.Form, Math.Round(c.Explained, 3),
                Math.Round(c.Fitted.Variation, 4), Math.Round(c.Lowering, 3), Math.Round(c.Corrected.Minimum, 3), Math.Round(c.Corrected.Median, 3), $"{Figures.Text(Math.Round(100 * c.Corrected.SafeShare, 1))} %"]);
    }

    /// <summary>The ratios at every level of the variables, the most influential variable first.</summary>
    /// <param name="sensitivity">The comparison.</param>
    /// <param name="most">Most variables listed.</param>
    public static Table Levels(RatioSensitivity sensitivity, int most = 4)
    {
        ArgumentNullException.ThrowIfNull(sensitivity);
        return Table.Of($"Ratios by level, {Plot.ModelWords(sensitivity.Model)}", "variable", "level", "cases", "minimum", "median", "maximum", "$V$")
            .For(sensitivity.Influences.Take(most).SelectMany(i => i.Levels.Select((l, k) => (Name: k == 0 ? i.Variable.Name : "", Level: l))), r =>
                [r.Name, r.Level.Name, r.Level.Ratios.Count, Math.Round(r.Level.Ratios.Minimum, 3), Math.Round(r.Level.Ratios.Median, 3), Math.Round(r.Level.Ratios.Maximum, 3), Math.Round(r.Level.Ratios.Variation, 3)]);
    }

    internal static Table Of(RatioStatistics statistics) => Heads("Ratios").Row(Row("all", statistics));

    private static Table Heads(string title) =>
        Table.Of(title, "model", "cases", "minimum", "1 %", "5 %", "median", "95 %", "maximum", "$V$", "safe");

    private static IReadOnlyList<object> Row(string name, RatioStatistics s) =>
        [name, s.Count, Three(s.Minimum), Three(s.Fractile(0.01)), Three(s.Fractile(0.05)), Three(s.Median), Three(s.Fractile(0.95)), Three(s.Maximum), Three(s.Variation), $"{Figures.Text(Math.Round(100 * s.SafeShare, 1))} %"];

    private static string Short(ElasticModel model) => model == ElasticModel.Plane ? "plane" : "with roll";

    private static double Three(double value) => Math.Round(value, 3);
}
