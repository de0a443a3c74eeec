using System.Collections.Concurrent;
using StrutLessons.Calibration;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Calibration;

/// <summary>A small grid: two sections, three slendernesses, three spring pairs; bolt line and half of an 8 mm gusset.</summary>
public class RatioGridTests
{
    private static readonly Lazy<RatioGrid> Grid = new(() => RatioGrid.Run(Struts()));
    private static readonly Lazy<RatioGrid> Ends = new(() => RatioGrid.Run(BowChoice.Borderline([.. Struts().Where((_, i) => i % 3 == 0)])));

    internal static List<Strut> Struts()
    {
        List<Strut> struts = [];
        foreach (string name in new[] { "L 90x90x9", "L 100x65x8" })
        {
            AngleSection section = AngleCatalogue.Find(name).Connected();
            Steel steel = SteelGrade.S355.ForThickness(section.Thickness);
            var load = new Planar(0.55 * section.ConnectedLength - section.CentroidY, section.CentroidZ + 4);
            foreach (double slenderness in new[] { 0.7, 1.3, 2.2 })
            {
                double length = slenderness * Math.PI * section.RadiusV * Math.Sqrt(steel.ElasticModulus / steel.YieldStrength);
                double unit = steel.ElasticModulus / length;
                foreach ((double inPlane, double outOfPlane) in new[] { (0.0, 0.0), (double.PositiveInfinity, 0.0), (3.0, 1.0) })
                {
                    var end = new StrutEnd(load, new EndSpring(inPlane * unit * section.SecondMomentZ, outOfPlane * unit * section.SecondMomentY));
                    struts.Add(new Strut(section, steel, length, end, end));
                }
            }
        }

        return struts;
    }

    [Fact]
    public void Every_strut_of_the_small_grid_has_a_ratio_and_keeps_its_place()
    {
        RatioGrid grid = Grid.Value;
        Assert.Empty(grid.Failures);
        Assert.Equal(Enumerable.Range(0, 18), grid.Cases.Select(c => c.Index));
        Assert.All(grid.Cases, c => Assert.Equal(Struts()[c.Index].SystemLength, c.Strut.SystemLength));
    }

    /// <summary>A study of 1080 struts with one bow sign has ratios with twist between 1.08 and 2.35, without twist from 0.83 on (reference cases).</summary>
    [Fact]
    public void The_model_with_roll_is_safe_where_the_plane_model_is_not()
    {
        RatioStatistics roll = Grid.Value.Statistics(ElasticModel.WithRoll), plane = Grid.Value.Statistics(ElasticModel.Plane);
        Assert.InRange(roll.Minimum, 1.05, 1.3);
        Assert.InRange(roll.Maximum, 1.3, 2.35);
        Assert.True(plane.Minimum < roll.Minimum, $"{plane.Minimum} against {roll.Minimum}");
        RatioCase worst = Grid.Value.Cases.MinBy(c => c.Ratio(ElasticModel.Plane))!;
        Assert.True(double.IsPositiveInfinity(worst.Strut.End1.Spring.InPlane) && worst.RollAtPeak > 0.02, $"{worst.Strut.Section}, {worst.RollAtPeak} rad");
    }

    [Fact]
    public void A_ratio_of_the_grid_is_that_of_the_single_analyses()
    {
        RatioCase c = Grid.Value.Cases[4];
        double e0 = c.Strut.SystemLength / 1000;
        double lowest = new[] { e0, -e0 }.Min(e => ReferenceAnalysis.Follow(
            ReferenceStrut.Of(c.Strut, Bow.AlongU(c.Strut.Section, e), 58.75), RodMesh.Fast, PathSettings.PeakOnly).PeakLoad);
        Closeness.Relative(lowest, c.Reference, 1e-12, "N_u");
        Assert.Equal(c.Reference / c.WithRoll, c.Ratio(ElasticModel.WithRoll));
        Assert.Equal(c.Plane / CriticalLoad.Of(c.Strut), c.LoadRatio(ElasticModel.Plane));
    }

    [Fact]
    public void The_number_of_workers_does_not_change_a_result_and_progress_counts_every_strut()
    {
        var seen = new Counter();
        RatioGrid one = RatioGrid.Run(Struts()[..4], new RatioSettings { Workers = 1 }, seen);
        Assert.Equal(Grid.Value.Cases.Take(4).Select(c => c.Reference), one.Cases.Select(c => c.Reference));
        Assert.Equal([1, 2, 3, 4], seen.Reports.Order());
    }

    [Fact]
    public void A_cancelled_grid_stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => RatioGrid.Run(Struts(), null, null, source.Token));
    }

    [Theory]
    [InlineData(CorrectionForm.Constant, CorrectionVariable.LoadRatio, 1.0)]
    [InlineData(CorrectionForm.Linear, CorrectionVariable.LoadRatio, 0.9)]
    [InlineData(CorrectionForm.Quadratic, CorrectionVariable.Slenderness, 0.8)]
    public void The_lowered_function_keeps_the_stated_share_on_the_safe_side_and_no_more_than_needed(CorrectionForm form, CorrectionVariable variable, double share)
    {
        foreach (ElasticModel model in Enum.GetValues<ElasticModel>())
        {
            var f = CorrectionFunction.Of(Grid.Value, model, form, variable, share);
            Assert.InRange(f.Corrected.SafeShare, share, 1);
            // One of the cases lies on the function.
            Assert.Contains(f.Corrected.Sorted, r => Math.Abs(r - 1) < 1e-9);
        }
    }

    [Fact]
    public void A_richer_form_never_explains_less_and_a_mean_explains_nothing()
    {
        double[] explained = [.. Enum.GetValues<CorrectionForm>()
            .Select(form => CorrectionFunction.Of(Grid.Value, ElasticModel.WithRoll, form, CorrectionVariable.LoadRatio).Explained)];
        Assert.InRange(explained[0], -1e-12, 1e-12);
        Assert.True(explained[1] >= explained[0] && explained[2] >= explained[1], string.Join(", ", explained));
    }

    [Fact]
    public void A_straight_line_is_the_regression_of_the_textbook_and_a_cap_holds()
    {
        var f = CorrectionFunction.Of(Grid.Value, ElasticModel.WithRoll, CorrectionForm.Linear, CorrectionVariable.LoadRatio, 0.95, 1.1);
        double[] x = [.. Grid.Value.Cases.Select(c => c.LoadRatio(ElasticModel.WithRoll))], y = [.. Grid.Value.Cases.Select(c => c.Ratio(ElasticModel.WithRoll))];
        double mx = x.Average(), my = y.Average(), slope = x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
        Closeness.Relative(slope, f.Coefficients[1], 1e-9, "c₁");
        Closeness.Relative(my - slope * mx, f.Coefficients[0], 1e-9, "c₀");
        Assert.All(x, v => Assert.True(f.At(v) <= 1.1));
    }

    [Fact]
    public void A_larger_bow_is_safer_and_the_chosen_one_has_the_least_scatter_of_the_safe_ones()
    {
        foreach (ElasticModel model in Enum.GetValues<ElasticModel>())
        {
            var choice = BowChoice.Of(Ends.Value, model, [150, 300, 600, 1200], 0.9);
            Assert.Equal(choice.Candidates.Select(c => c.Ratios.Median).OrderDescending(), choice.Candidates.Select(c => c.Ratios.Median));
            Assert.NotNull(choice.Chosen);
            Assert.All(choice.Candidates, c => Assert.True(c.Ratios.SafeShare < 0.9 || c.Scatter >= choice.Chosen.Scatter));
            Assert.True(choice.Chosen.Ratios.SafeShare >= 0.9);
        }
    }

    [Fact]
    public void Statistics_are_those_of_a_hand_calculation()
    {
        var s = RatioStatistics.Of([1.4, 0.9, 1.1, 1.2]);
        Closeness.Relative(1.15, s.Median, 1e-12, "median");
        Closeness.Relative(1.15, s.Mean, 1e-12, "mean");
        Closeness.Relative(Math.Sqrt(0.13 / 3), s.StandardDeviation, 1e-12, "deviation");
        Closeness.Relative(1.05, s.Fractile(0.25), 1e-12, "quarter fractile");
        Assert.Equal((0.9, 1.4, 0.75), (s.Minimum, s.Maximum, s.SafeShare));
    }

    private sealed class Counter : IProgress<int>
    {
        internal ConcurrentBag<int> Reports { get; } = [];

        public void Report(int value) => Reports.Add(value);
    }
}
