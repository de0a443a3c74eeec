using StrutLessons.Capacity;
using StrutLessons.Notebook.Maths;
using StrutLessons.Standards;

namespace StrutLessons.Notebook.Charts;

public static partial class Plot
{
    /// <summary>
    /// Nominal resistance of every rule that answers, below the spring model with hinged, its own and rigid ends. Rules that refuse
    /// have no bar; <see cref="Tables.StandardTables.Resistances"/> says why.
    /// </summary>
    public static BarChart Comparison(StandardComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        IEnumerable<Bar> model =
        [
            new("spring model, hinged ends", comparison.Hinged / 1e3), new("spring model, its own ends", comparison.Real / 1e3, "100 %"),
            new("spring model, rigid ends", comparison.Rigid / 1e3),
        ];
        IEnumerable<Bar> reference = comparison.Reference is { } load ? [new Bar("nonlinear reference", load / 1e3, Share(load))] : [];
        return new BarChart($"One strut, many rules: {comparison.Model.Section.Angle.Name}, {Figures.Text(comparison.Model.SystemLength / 1e3)} m", "Nominal resistance (kN)",
            [.. model, .. reference, .. comparison.Results.Where(r => r.InScope).Select(r => new Bar(r.Rule.Name, r.NominalResistance!.Value / 1e3, Share(r.NominalResistance.Value)))]);

        string Share(double resistance) => $"{Figures.Text(Math.Round(100 * resistance / comparison.Real))} %";
    }

    /// <summary>
    /// Nominal resistance of the rules along the slenderness over the band of the spring model. A marker stands where a rule refuses to go on.
    /// Five rules or fewer stay readable.
    /// </summary>
    public static Chart Curves(StandardCurves curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        CapacityCurve model = curves.Model;
        double squash = model.Strut.SquashLoad;
        double[] x = [.. model.Points.Select(p => p.RelativeSlenderness)];
        double[] hinged = [.. model.Points.Select(p => p.Hinged / squash)], rigid = [.. model.Points.Select(p => p.Rigid / squash)];
        Chart chart = Chart.Of($"Rules over the band of the model, {model.Strut.Section.Angle.Name}", @"Relative slenderness $\bar\lambda_v$ on the system length (–)", "Nominal resistance $N/(A f_y)$ (–)")
            .Between("model between hinged and rigid ends", x, hinged.Zip(rigid, Math.Min), hinged.Zip(rigid, Math.Max));
        foreach (StandardCurve curve in curves.Curves.Where(c => c.Points.Count > 0))
        {
            chart = chart.Line(curve.Rule.Name, curve.Points.Select(p => p.RelativeSlenderness), curve.Points.Select(p => p.Nominal / squash));
        }

        StandardCurvePoint[] ends = [.. curves.Curves.Where(c => c.EndSlenderness is not null).Select(c => c.Points[^1])];
        return (ends.Length > 0 ? chart.Points("here a rule refuses to go on", ends.Select(p => p.RelativeSlenderness), ends.Select(p => p.Nominal / squash)) : chart).YFrom(0, 1);
    }
}
