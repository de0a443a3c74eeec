using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>Rigid arms from bolts to hinge, and the elastic limit, against the member's closed-form second-order solution.</summary>
public class ArmTests
{
    [Theory]
    [InlineData(0, 0, 0, 0)]
    [InlineData(80, 80, 0, 0)]
    [InlineData(120, 40, 3e7, 2e8)]
    [InlineData(60, 150, 1e9, 1e7)]
    public void The_elastic_rod_and_the_linear_flexure_model_follow_the_closed_form_with_arms(double arm1, double arm2, double spring1, double spring2)
    {
        AngleSection section = new Angle("sharp 90x90x9", 90, 90, 9, 0, 0).Connected();
        const double Bar = 1800;
        Planar point = new(20, 30), bow = 4 * section.AxisU;
        var member = new Strut(section, StrutLessons.Materials.Steel.Custom("elastic", 355), Bar + arm1 + arm2,
            new StrutEnd(point, new EndSpring(spring1, spring2), arm1), new StrutEnd(point, new EndSpring(spring2, spring1), arm2), Bow.AlongU(section, 4));
        var strut = new ReferenceStrut(ReferenceSection.Angle(90, 90, 9), ReferenceSteel.WithYield(355), Bar, bow, 0,
            new ReferenceEnd(point, spring1, spring2, arm1), new ReferenceEnd(point, spring2, spring1, arm2));
        double load = 0.4 * RollAnalysis.CriticalLoad(strut, roll: false);
        SecondOrderSolution closed = SecondOrderSolution.Of(member, load);
        Closeness.Relative(closed.CriticalLoad, RollAnalysis.CriticalLoad(strut, roll: false), 1e-4, "critical load");

        Planar middle = closed.Deflection(Bar / 2);
        ElasticState linear = RollAnalysis.StateAt(strut, load, roll: false)!, rod = ElasticRod.StatesAt(strut, [load], 16, twist: false)[0];
        Assert.True((linear.CentroidMid - middle).Length < 2e-5 * middle.Length, $"linear {linear.CentroidMid} against {middle}");
        // The rod is shortened and turns by finite angles: some thousandths.
        Assert.True((rod.CentroidMid - middle).Length < 5e-3 * middle.Length, $"rod {rod.CentroidMid} against {middle}");
    }

    [Fact]
    public void A_short_arm_costs_little_and_a_long_one_much()
    {
        ReferenceStrut a = NonlinearCase.Get("P10").Strut;
        double Peak(double arm)
        {
            ReferenceEnd end = new(a.End1.LoadPoint, a.End1.InPlaneSpring, a.End1.OutOfPlaneSpring, arm);
            return ReferenceAnalysis.Follow(new ReferenceStrut(a.Section, a.Steel, a.Length, a.Bow, a.ResidualPeak, end, end), RodMesh.Fast, PathSettings.PeakOnly).PeakLoad;
        }
        double none = Peak(0);
        Closeness.Relative(none, Peak(0.01), 1e-4, "arm of nothing");
        Assert.InRange(Peak(50) / none, 0.9, 0.99);
        Assert.True(Peak(200) < Peak(100) && Peak(100) < Peak(50));
    }
}
