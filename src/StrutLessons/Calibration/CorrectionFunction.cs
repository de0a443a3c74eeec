using MathNet.Numerics;

namespace StrutLessons.Calibration;

/// <summary>Form of a correction function.</summary>
public enum CorrectionForm
{
    /// <summary>c₀.</summary>
    Constant,

    /// <summary>c₀ + c₁ x.</summary>
    Linear,

    /// <summary>c₀ + c₁ x + c₂ x².</summary>
    Quadratic,
}

/// <summary>Variable of a correction function.</summary>
public enum CorrectionVariable
{
    /// <summary>x = N_R/N_cr of the corrected model.</summary>
    LoadRatio,

    /// <summary>λ̄_v on the system length.</summary>
    Slenderness,
}

/// <summary>
/// A factor on the capacity of an elastic model, fitted to the ratios of a grid by least squares, then lowered as a whole until model times factor
/// stays on the safe side of the reference for a stated share of the cases. Immutable.
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
public sealed partial record CorrectionFunction
{
    private CorrectionFunction(RatioGrid grid, ElasticModel model, CorrectionForm form, CorrectionVariable variable, double share, double? cap, double[] x, double[] ratio)
    {
        (Grid, Model, Form, Variable, RequiredShare, Cap) = (grid, model, form, variable, share, cap);
        (From, To) = (x.Min(), x.Max());
        double[] coefficients = form == CorrectionForm.Constant ? [ratio.Average()] : Fit.Polynomial(x, ratio, (int)form);
        Coefficients = coefficients;
        double[] fitted = [.. x.Select(v => Polynomial.Evaluate(v, coefficients))];
        if (fitted.Min() <= 0)
        {
            throw Guard.Fail(fitted.Min(), "fitted correction", "", "greater than 0 at every case", "Choose a simpler form or a grid of one kind of strut.");
        }

        Fitted = RatioStatistics.Of([.. ratio.Zip(fitted, (r, f) => r / f)]);
        // The share (1 − p) of the cases may lie below: the next ratio in rising order sets the level. A hair keeps that case itself above 1.
        int allowed = (int)Math.Floor((1 - share) * ratio.Length + 1e-9);
        Lowering = Math.Min(1, Fitted.Sorted[Math.Min(allowed, ratio.Length - 1)]) * (1 - 1e-12);
        double mean = ratio.Average(), spread = ratio.Sum(r => (r - mean) * (r - mean));
        double left = ratio.Zip(fitted, (r, f) => (r - f) * (r - f)).Sum();
        // Ratios that are all alike leave nothing to explain.
        Explained = spread == 0 ? 0 : 1 - left / spread;
        Corrected = RatioStatistics.Of([.. ratio.Zip(x, (r, v) => r / At(v))]);
    }

    /// <summary>The grid it was fitted to.</summary>
    public RatioGrid Grid { get; }

    /// <summary>The corrected model.</summary>
    public ElasticModel Model { get; }

    /// <summary>Form of the function.</summary>
    public CorrectionForm Form { get; }

    /// <summary>Variable of the function.</summary>
    public CorrectionVariable Variable { get; }

    /// <summary>Stated share of the cases that stay on the safe side.</summary>
    public double RequiredShare { get; }

    /// <summary>Largest factor allowed; null without a limit.</summary>
    public double? Cap { get; }

    /// <summary>Smallest value of the variable in the grid.</summary>
    public double From { get; }

    /// <summary>Largest value of the variable in the grid.</summary>
    public double To { get; }

    /// <summary>c₀, c₁, c₂ of the fit, before lowering.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Factor by which the fit is lowered, at most 1.</summary>
    public double Lowering { get; }

    /// <summary>R², share of the scatter of the ratios that the fit explains.</summary>
    public double Explained { get; }

    /// <summary>Ratios over the fit, before lowering.</summary>
    public RatioStatistics Fitted { get; }

    /// <summary>Reference over (model times factor): what is left after the correction.</summary>
    public RatioStatistics Corrected { get; }

    /// <summary>The variable of one case.</summary>
    /// <param name="c">A case of any grid.</param>
    public double ValueOf(RatioCase c)
    {
        ArgumentNullException.ThrowIfNull(c);
        return ValueOf(Variable, Model, c);
    }

    /// <summary>The fit before it is lowered and capped: the middle of the ratios.</summary>
    /// <param name="x">Value of the variable.</param>
    /// <exception cref="InputException">Outside the grid: nothing is known there.</exception>
    public double FitAt(double x) => Polynomial.Evaluate(Guard.Within(x, From, To, "variable of the correction", "",
        "The function holds inside its grid alone; calibrate on a wider grid."), [.. Coefficients]);

    /// <summary>The factor.</summary>
    /// <param name="x">Value of the variable.</param>
    /// <exception cref="InputException">Outside the grid: nothing is known there.</exception>
    public double At(double x)
    {
        double value = Lowering * FitAt(x);
        return Cap is double cap ? Math.Min(cap, value) : value;
    }

    /// <summary>Fits and lowers a correction.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="model">The model to correct.</param>
    /// <param name="form">Form of the function.</param>
    /// <param name="variable">Its variable.</param>
    /// <param name="safeShare">Share of the cases that must stay on the safe side, 0.5 to 1.</param>
    /// <param name="cap">Largest factor allowed, 0.5 to 3; left out there is no limit. 1.35 keeps clear of plastic reserves that rest on springs without limit.</param>
    /// <exception cref="InputException">Fewer cases than three per coefficient, one value of the variable, a share or cap outside its range, or a name that is none.</exception>
    public static CorrectionFunction Of(
        RatioGrid grid, ElasticModel model, CorrectionForm form, CorrectionVariable variable, double safeShare = 0.95, double? cap = null)
    {
        ArgumentNullException.ThrowIfNull(grid);
        Guard.Named(form, "form of the correction");
        Guard.Named(variable, "variable of the correction");
        Guard.Within(safeShare, 0.5, 1, "safe share", "", "1 keeps every case on the safe side.");
        if (cap is double limit)
        {
            Guard.Within(limit, 0.5, 3, "cap of the correction", "", "Leave it out for no limit.");
        }

        int least = 3 * ((int)form + 1);
        if (grid.Cases.Count < least)
        {
            throw Guard.Fail(grid.Cases.Count, "number of cases", "", $"{least} or more for this form", "Run a larger grid.");
        }

        double[] ratio = [.. grid.Cases.Select(c => c.Ratio(model))];
        double[] x = [.. grid.Cases.Select(c => ValueOf(variable, model, c))];
        if (x.Distinct().Count() <= (int)form)
        {
            throw Guard.Fail(x.Distinct().Count(), "different values of the variable", "", $"more than {(int)form}", "Vary it in the grid, or choose a simpler form.");
        }

        return new(grid, model, form, variable, safeShare, cap, x, ratio);
    }

    private static double ValueOf(CorrectionVariable variable, ElasticModel model, RatioCase c) =>
        variable == CorrectionVariable.LoadRatio ? c.LoadRatio(model) : c.Slenderness;
}
