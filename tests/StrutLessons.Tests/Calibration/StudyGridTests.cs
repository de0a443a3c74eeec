using StrutLessons.Calibration;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Calibration;

/// <summary>
/// 420 struts under the assumptions of an independent study of 1080 (reference cases): sharp corners, S355, bolt line, half of an 8 mm gusset, bows L/300 and
/// L/1000 along u, springs as multiples of EI/L. This grid holds more
/// of the longest struts, so that its lower fractile is a little lower. With the lower of both signs of the bow that study finds for the plane model a minimum of 0.83, a 5 %
/// fractile of 1.05 and a median of 1.24; with the exact elastic rod in place of the plane model a minimum of 1.08.
/// </summary>
public class StudyGridTests
{
    private static readonly (string Name, double Connected, double Outstanding, double Thickness, double Gauge)[] Sections =
    [
        ("sharp 60x60x6", 60, 60, 6, 35), ("sharp 70x70x7", 70, 70, 7, 40), ("sharp 90x90x9", 90, 90, 9, 50), ("sharp 100x100x6", 100, 100, 6, 55),
        ("sharp 120x120x10", 120, 120, 10, 65), ("sharp 100x65x8", 100, 65, 8, 55), ("sharp 65x100x8", 65, 100, 8, 35),
    ];

    private static readonly Lazy<RatioGrid> Grid = new(() => RatioGrid.Run(
        [.. from s in Sections from slenderness in new[] { 0.4, 1, 1.6, 3 }
            from inPlane in new[] { 0, 1, double.PositiveInfinity } from outOfPlane in new[] { 0, 0.3, 1, 3, double.PositiveInfinity }
            select Of(s, slenderness, inPlane, outOfPlane)]));

    [Fact]
    public void The_plane_model_has_the_ratios_of_the_independent_study()
    {
        RatioStatistics plane = Grid.Value.Statistics(ElasticModel.Plane);
        Assert.Equal(420, plane.Count);
        Assert.InRange(plane.Minimum, 0.82, 0.84);
        Assert.InRange(plane.Fractile(0.05), 1.01, 1.06);
        Assert.InRange(plane.Median, 1.22, 1.26);
        Assert.InRange(plane.Maximum, 2.0, 2.4);
    }

    [Fact]
    public void The_worst_strut_of_the_plane_model_is_long_and_thin_and_guided_in_the_plane_of_the_gusset()
    {
        RatioCase worst = Grid.Value.Cases.MinBy(c => c.Ratio(ElasticModel.Plane))!;
        Assert.Equal(6, worst.Strut.Section.Thickness);
        Assert.Equal(100, worst.Strut.Section.ConnectedLength);
        Assert.Equal(new EndSpring(double.PositiveInfinity, 0), worst.Strut.End1.Spring);
        Assert.Equal(3, worst.Slenderness, 6);
        Assert.InRange(worst.RollAtPeak, 0.2, 0.3);
        Assert.All(Grid.Value.Cases.Where(c => c.Ratio(ElasticModel.Plane) < 1), c => Assert.True(c.Strut.End1.Spring.InPlane > 0 && c.RollAtPeak > 0.1));
    }

    [Fact]
    public void With_roll_no_strut_is_unsafe_and_only_a_large_roll_takes_the_ratio_below_that_of_the_study()
    {
        RatioGrid grid = Grid.Value;
        Assert.Empty(grid.Failures);
        Assert.InRange(grid.Statistics(ElasticModel.WithRoll).Minimum, 1.03, 1.08);
        Assert.All(grid.Cases.Where(c => c.Ratio(ElasticModel.WithRoll) < 1.08), c => Assert.True(c.RollAtPeak > 0.2, $"{c.Strut.Section}: {c.RollAtPeak} rad"));
        Assert.InRange(grid.Statistics(ElasticModel.WithRoll).Median, 1.24, 1.28);
        Assert.True(grid.Statistics(ElasticModel.WithRoll).Variation < grid.Statistics(ElasticModel.Plane).Variation);
    }

    /// <summary>Where a long thin angle rolls by 0.15 rad before first yield, the linear model is 8 % above the exact rod: that is the whole difference to 1.08.</summary>
    [Fact]
    public void With_the_exact_elastic_rod_the_worst_strut_is_as_safe_as_in_the_study()
    {
        RatioCase worst = Grid.Value.Cases.Where(c => c.StableToPeak).MinBy(c => c.Ratio(ElasticModel.WithRoll))!;
        RollCapacity roll = worst.Strut.Bows.Select(b => RollAnalysis.Capacity(ReferenceStrut.Of(worst.Strut, b, 0))).MinBy(c => c.WithRoll.Load)!;
        double exact = worst.Strut.Bows.Min(b => ElasticRod.FirstYield(ReferenceStrut.Of(worst.Strut, b, 0), 16)?.Load ?? double.PositiveInfinity);
        Assert.True(roll.RollIsLarge);
        Assert.Contains("unsafe", roll.Warning, StringComparison.Ordinal);
        Assert.Contains("exact elastic rod", roll.Warning, StringComparison.Ordinal);
        Assert.InRange(roll.WithRoll.Load / exact, 1.07, 1.1);
        Assert.InRange(worst.Reference / exact, 1.08, 1.14);
    }

    [Fact]
    public void Where_the_roll_is_small_the_linear_model_is_close_to_the_exact_rod()
    {
        foreach (double slenderness in new[] { 0.8, 1.6, 3 })
        {
            foreach ((string, double, double, double, double) section in Sections)
            {
                Strut strut = Of(section, slenderness, double.PositiveInfinity, 0);
                // The bow to the side of the eccentricity: the other one snaps through.
                var (roll, exact) = strut.Bows.Select(b => ReferenceStrut.Of(strut, b, 0)).Select(s => (RollAnalysis.Capacity(s), ElasticRod.FirstYield(s, 16)!)).MinBy(p => p.Item1.WithRoll.Load);
                Assert.InRange(roll.WithRoll.Load / exact.Load, 0.995, roll.RollIsLarge ? 1.1 : 1.03);
            }
        }
    }

    [Fact]
    public void Only_the_thin_angles_held_in_both_planes_turn_off_into_a_branch_and_they_can_be_left_out()
    {
        RatioGrid grid = Grid.Value, stable = grid.Where(c => c.StableToPeak);
        Assert.NotEmpty(grid.Branching);
        Assert.Equal(grid.Cases.Count, stable.Cases.Count + grid.Branching.Count);
        Assert.Empty(stable.Branching);
        // As in the study: the symmetric set-up hides the torsional-flexural branch of thin legs.
        Assert.All(grid.Branching, c => Assert.True(c.Strut.Section.Thickness == 6 && c.Strut.Section.ConnectedLength == 100 && c.Strut.End1.Spring == EndSpring.Rigid));
        Assert.All(grid.Branching, c => Assert.InRange(c.Ratio(ElasticModel.WithRoll), 1.1, 1.3));
    }

    [Fact]
    public void With_roll_one_variable_explains_more_than_in_the_plane_model()
    {
        // As in the study without struts held in both planes and without those whose plastic end hinge feeds a spring that has no limit.
        RatioGrid grid = Grid.Value.Where(c => c.Strut.End1.Spring != EndSpring.Rigid && !(c.Slenderness < 1 && c.Strut.End1.Spring.InPlane is > 0 and < double.PositiveInfinity));
        var roll = CorrectionFunction.Of(grid, ElasticModel.WithRoll, CorrectionForm.Linear, CorrectionVariable.LoadRatio);
        var plane = CorrectionFunction.Of(grid, ElasticModel.Plane, CorrectionForm.Linear, CorrectionVariable.LoadRatio);
        // The study fits 1.35 − 0.29 x with a standard deviation of 4.5 %.
        Assert.InRange(roll.Coefficients[0], 1.31, 1.39);
        Assert.InRange(roll.Coefficients[1], -0.36, -0.22);
        Assert.InRange(roll.Fitted.Variation, 0.03, 0.06);
        Assert.True(plane.Fitted.Variation > 1.2 * roll.Fitted.Variation, $"{plane.Fitted.Variation} against {roll.Fitted.Variation}");
    }

    private static Strut Of((string Name, double Connected, double Outstanding, double Thickness, double Gauge) s, double slenderness, double inPlane, double outOfPlane)
    {
        AngleSection section = new Angle(s.Name, Math.Max(s.Connected, s.Outstanding), Math.Min(s.Connected, s.Outstanding), s.Thickness, 0, 0)
            .Connected(s.Connected < s.Outstanding ? ConnectedLeg.Short : ConnectedLeg.Long);
        Steel steel = SteelGrade.S355.ForThickness(s.Thickness);
        double length = slenderness * Math.PI * section.RadiusV * Math.Sqrt(steel.ElasticModulus / steel.YieldStrength), unit = steel.ElasticModulus / length;
        double Spring(double share, double moment) => share == 0 ? 0 : share * unit * moment;
        var end = new StrutEnd(new Planar(s.Gauge - section.CentroidY, section.CentroidZ + 4), new(Spring(inPlane, section.SecondMomentZ), Spring(outOfPlane, section.SecondMomentY)));
        return new Strut(section, steel, length, end, end);
    }
}
