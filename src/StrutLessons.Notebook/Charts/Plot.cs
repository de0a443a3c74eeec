using StrutLessons.Capacity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;
using StrutLessons.Stress;

namespace StrutLessons.Notebook.Charts;

/// <summary>Charts of the library's results.</summary>
public static partial class Plot
{
    private const string Position = "Position $x$ along the bar (mm)";

    /// <summary>Stress at the five corners along the strut.</summary>
    public static Chart StressAlong(SecondOrderSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        double[] x = Positions(solution);
        Chart chart = Chart.Of($"Stress along the strut under {Figures.Text(solution.Load / 1e3)} kN, bow ${solution.Bow.Name}$", Position, @"Stress $\sigma$, compression positive (MPa)");
        return solution.Strut.Section.Corners.Aggregate(chart, (c, corner) => c.Line(CornerNames.Words(corner.Corner), x, x.Select(at => solution.StressAt(corner.Corner, at))));
    }

    /// <summary>The two principal bending moments along the strut.</summary>
    public static Chart MomentsAlong(SecondOrderSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        double[] x = Positions(solution);
        return Chart.Of($"Bending moments along the strut under {Figures.Text(solution.Load / 1e3)} kN, bow ${solution.Bow.Name}$", Position, "Bending moment $M$ (kNm)")
            .Line("about the weak axis v–v", x, x.Select(at => solution.PrincipalMoment(at).AlongU / 1e6))
            .Line("about the strong axis u–u", x, x.Select(at => solution.PrincipalMoment(at).AlongV / 1e6));
    }

    /// <summary>Utilisation against load for every bow, with the loads the search tried for the governing one.</summary>
    /// <param name="capacity">The capacity with its trace.</param>
    public static Chart Iteration(CapacityResult capacity)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        double critical = capacity.CriticalLoad / 1e3, strength = capacity.Strut.Steel.YieldStrength;
        Chart chart = Chart.Of("Search for the load at which the first corner yields", "Load $N$ (kN)", @"Utilisation $\sigma_{max}/f_y$ (–)");
        double[] loads = [.. Enumerable.Range(1, 160).Select(i => capacity.CriticalLoad * (1 - Math.Pow(1 - i / 160.0, 1.6)) * (1 - 1e-6))];
        foreach (BowCapacity bow in capacity.Bows)
        {
            (double Load, double Share)[] curve =
                [.. loads.Select(n => (n / 1e3, SecondOrderSolution.Of(capacity.Strut, n, bow.Bow).Extremes().Largest / strength)).TakeWhile(p => p.Item2 < 4)];
            chart = chart.Line($"bow ${bow.Bow.Name}$", curve.Select(p => p.Load), curve.Select(p => p.Share));
        }

        BowCapacity governing = capacity.Governing;
        CapacityTrial[] shown = [.. governing.Trace.Where(t => t.Utilisation <= 1.6)];
        chart = shown.Length > 0 ? chart.Points($"trial loads for the bow ${governing.Bow.Name}$", shown.Select(t => t.Load / 1e3), shown.Select(t => t.Utilisation)) : chart;
        return chart.AtY(1, "first yield").AtX(critical, $"$N_{{cr}}$ = {Figures.Text(critical)} kN")
            .Mark(capacity.Load / 1e3, 1, $"$N_R$ = {Figures.Text(capacity.Load / 1e3)} kN").XFrom(0, null).YFrom(0, 1.6);
    }

    /// <summary>Capacity against slenderness: hinged and rigid ends as a band, the strut's own ends between or outside, the strut itself marked.</summary>
    public static Chart Curve(CapacityCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double squash = curve.Strut.SquashLoad;
        double[] x = [.. curve.Points.Select(p => p.RelativeSlenderness)];
        double[] hinged = [.. curve.Points.Select(p => p.Hinged / squash)], rigid = [.. curve.Points.Select(p => p.Rigid / squash)];
        double own = StrutCapacity.LoadOf(curve.Strut) / squash;
        Chart chart = Chart.Of($"Capacity against slenderness, {curve.Strut.Section.Angle.Name}", @"Relative slenderness $\bar\lambda_v$ on the system length (–)", "Capacity $N_R/N_{pl}$ (–)")
            .Between("between hinged and rigid ends", x, hinged.Zip(rigid, Math.Min), hinged.Zip(rigid, Math.Max))
            .Line("hinged ends", x, hinged).Line("rigid ends", x, rigid).Line("the strut's own ends", x, curve.Points.Select(p => p.Real / squash));
        double slenderness = curve.Strut.RelativeSlendernessV;
        return (slenderness >= x[0] && slenderness <= x[^1] ? chart.Mark(slenderness, own, $"this strut: {Figures.Text(own * squash / 1e3)} kN") : chart).YFrom(0, 1);
    }

    /// <summary>How much each part of a joint gives way under a moment, and the sum.</summary>
    public static BarChart Contributions(JointHinge joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        // 1 rad/(N mm) = 1e9 mrad/kNm.
        IEnumerable<Bar> parts = joint.Contributions.Select(c => new Bar(c.Name, 1e9 * c.Compliance, joint.Compliance > 0 ? $"{Figures.Text(100 * c.Compliance / joint.Compliance, 2)} %" : ""));
        return new BarChart("Compliance of the joint: parts in series add up", "Compliance $f$ (mrad/kNm)",
            [.. parts, .. joint.Contributions.Count > 1 ? [new Bar("joint, sum", 1e9 * joint.Compliance, "100 %")] : Array.Empty<Bar>()]);
    }

    private static double[] Positions(SecondOrderSolution solution) => [.. Enumerable.Range(0, 121).Select(i => solution.Strut.BarLength * i / 120)];
}
