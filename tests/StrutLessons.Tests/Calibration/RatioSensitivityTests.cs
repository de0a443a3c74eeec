using StrutLessons.Calibration;
using StrutLessons.Member;
using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Calibration;

public class RatioSensitivityTests
{
    private static readonly Lazy<RatioGrid> Grid = new(() => RatioGrid.Run(RatioGridTests.Struts()));

    private static RatioInfluence Share(RatioVariable variable) => RatioSensitivity.Of(Grid.Value, ElasticModel.Plane, variable).Influences.Single();

    [Fact]
    public void A_variable_that_names_every_case_explains_all_and_one_that_is_the_same_everywhere_is_left_out()
    {
        Closeness.Relative(1, Share(RatioVariable.OfWords("case", c => $"{c.Index}")).Share, 1e-12, "share");
        var both = RatioSensitivity.Of(Grid.Value, ElasticModel.Plane, RatioVariable.YieldStrength, RatioVariable.Section);
        Assert.Equal([RatioVariable.Section], both.Influences.Select(i => i.Variable));
    }

    [Fact]
    public void The_share_is_the_correlation_ratio_of_the_textbook()
    {
        RatioInfluence slenderness = Share(RatioVariable.Slenderness);
        Assert.Equal(["0.7", "1.3", "2.2"], slenderness.Levels.Select(l => l.Name));
        (double X, double Y)[] all = [.. Grid.Value.Cases.Select(c => (Math.Round(c.Slenderness, 3), c.Ratio(ElasticModel.Plane)))];
        double mean = all.Average(p => p.Y), within = all.GroupBy(p => p.X).Sum(g => g.Sum(p => Math.Pow(p.Y - g.Average(q => q.Y), 2)));
        Closeness.Relative(1 - within / all.Sum(p => Math.Pow(p.Y - mean, 2)), slenderness.Share, 1e-9, "share");
    }

    [Fact]
    public void Many_numbers_are_sorted_into_five_classes_that_hold_every_case_once()
    {
        RatioInfluence place = Share(RatioVariable.Of("place in the list", c => c.Index));
        Assert.Equal(5, place.Levels.Count);
        Assert.Equal(Grid.Value.Cases.Count, place.Levels.Sum(l => l.Ratios.Count));
        Assert.Equal("0 to 2", place.Levels[0].Name);
    }

    [Fact]
    public void Springs_are_told_as_multiples_of_the_bending_stiffness_and_the_usual_variables_come_in_falling_order()
    {
        Assert.Equal(["0", "3", "rigid"], Share(RatioVariable.InPlaneSpring).Levels.Select(l => l.Name));
        var usual = RatioSensitivity.Of(Grid.Value, ElasticModel.WithRoll);
        Assert.Equal(usual.Influences.Select(i => i.Share).OrderDescending(), usual.Influences.Select(i => i.Share));
        Assert.All(usual.Influences, i => Assert.InRange(i.Share, 0, 1 + 1e-12));
    }

    [Fact]
    public void Yielded_shares_in_compression_and_tension_add_up_to_the_yielded_share()
    {
        YieldMap map = ReferenceAnalysis.Follow(ReferenceStrut.Of(RatioGridTests.Struts()[0], Bow.None), RodMesh.Fast).Peak!.Yielding!;
        for (int i = 0; i < map.Stations.Count; i++)
        {
            (double compression, double tension) = map.Shares(i);
            Closeness.Relative(map.YieldedShare(i), compression + tension, 1e-12, "share", 1);
        }
    }
}
