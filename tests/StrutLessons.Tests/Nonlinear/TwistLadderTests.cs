using StrutLessons.Nonlinear;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>Reference cases twist_ladders.json: elastic struts from an exact rod and from a linearised solution.</summary>
public class TwistLadderTests
{
    public static TheoryData<string> Ids => [.. TwistLadder.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_elastic_rod_climbs_the_ladder_with_and_without_twist(string id)
    {
        TwistLadder ladder = TwistLadder.All.Single(t => t.Id == id);
        foreach (bool twist in new[] { false, true })
        {
            IReadOnlyList<ElasticState> states = ElasticRod.StatesAt(ladder.Strut, ladder.Loads, 16, twist);
            for (int i = 0; i < states.Count; i++)
            {
                Compare(ladder.State(i, twist ? "exact" : "exact_no_twist"), states[i], 0.005);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_linear_flexure_solution_climbs_the_ladder(string id)
    {
        TwistLadder ladder = TwistLadder.All.Single(t => t.Id == id);
        for (int i = 0; i < ladder.Loads.Count; i++)
        {
            Compare(ladder.State(i, "linearised"), RollAnalysis.StateAt(ladder.Strut, ladder.Loads[i], roll: false)!, 5e-4);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void First_yield_of_the_elastic_rod_follows_the_ladder(string id)
    {
        TwistLadder ladder = TwistLadder.All.Single(t => t.Id == id);
        Closeness.Relative(ladder.Number("N_first_yield_exact"), ElasticRod.FirstYield(ladder.Strut)!.Load, 1e-5, "with twist");
        Closeness.Relative(ladder.Number("N_first_yield_exact_no_twist"), ElasticRod.FirstYield(ladder.Strut, twist: false)!.Load, 1e-5, "without twist");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_cheap_model_with_roll_finds_the_first_yield_of_the_exact_rod(string id)
    {
        TwistLadder ladder = TwistLadder.All.Single(t => t.Id == id);
        RollCapacity capacity = RollAnalysis.Capacity(ladder.Strut);
        Closeness.Relative(ladder.Number("N_first_yield_exact"), capacity.WithRoll.Load, 0.005, "with roll");
        Closeness.Relative(ladder.Number("N_first_yield_linearised"), capacity.FlexureOnly.Load, 5e-4, "flexure only");
        Closeness.Relative(ladder.Number("Ncr_flexural"), capacity.CriticalFlexural, 1e-7, "critical load");
    }

    private static void Compare(LadderState expected, ElasticState actual, double tolerance)
    {
        Assert.True((actual.CentroidMid - expected.CentroidMid).Length <= tolerance * expected.CentroidMid.Length, $"{actual.CentroidMid} against {expected.CentroidMid}");
        // A roll below 1e-5 rad is nothing.
        Closeness.Relative(expected.Twist, actual.TwistMid, tolerance, "twist", Math.Max(Math.Abs(expected.Twist), 1e-5));
        double scale = Math.Max(expected.LargestCompression, Math.Abs(expected.LargestTension));
        Closeness.Relative(expected.LargestCompression, actual.LargestCompression, tolerance, "compression", scale);
        Closeness.Relative(expected.LargestTension, actual.LargestTension, tolerance, "tension", scale);
    }
}
