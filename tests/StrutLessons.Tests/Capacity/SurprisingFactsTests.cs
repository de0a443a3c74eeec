using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Capacity;

/// <summary>
/// Facts about eccentric struts that go against intuition. Numbers: reference examples of the strut model, computed by three
/// independent methods (closed form, transfer matrix, finite elements) that agree to nine digits.
/// </summary>
public class SurprisingFactsTests
{
    // L 70x70x7, r1 9, r2 4.5; L = 1050 mm; gauge 40, gusset 10 mm on the outer face; no spring in the plane; bow L/300 along +u; f_y 355.
    [Theory]
    [InlineData(0, 96.53, 329)]
    [InlineData(1e7, 94.91, 347)]
    [InlineData(1e8, 88.99, 463)]
    [InlineData(double.PositiveInfinity, 82.59, 690)]
    public void A_spring_in_one_plane_can_lower_the_capacity_while_the_critical_load_rises(double spring, double capacity, double critical)
    {
        CapacityResult result = StrutCapacity.Of(Short(spring));
        Assert.Equal(capacity, result.Load / 1e3, 2);
        Assert.Equal(critical, result.CriticalLoad / 1e3, 0);
    }

    [Theory]
    [InlineData(0, 0.017)]
    [InlineData(double.PositiveInfinity, 0.52)]
    public void The_spring_turns_the_moment_towards_the_weak_axis(double spring, double weakAxisMoment)
    {
        SecondOrderSolution s = SecondOrderSolution.Of(Short(spring), 60e3);
        Assert.Equal(weakAxisMoment, Math.Abs(s.PrincipalMoment(s.Strut.BarLength / 2).AlongU) / 1e6, weakAxisMoment < 0.1 ? 3 : 2);
    }

    // L 100x100x10, L = 3000, gauge 55, hinged, gusset 10: 140 kN without bow, 163 at 5 mm, 128 at 10 mm.
    [Theory]
    [InlineData(0, 140)]
    [InlineData(5, 163)]
    [InlineData(10, 128)]
    public void A_bow_that_opposes_the_eccentricity_first_raises_the_capacity_then_lowers_it(double bow, double capacity)
    {
        AngleSection section = new Angle("L 100x100x10", 100, 100, 10, 12, 6).Connected();
        var end = new StrutEnd(new Planar(55 - section.CentroidY, section.CentroidZ + 5), EndSpring.Hinged);
        double Load(double sign) => StrutCapacity.LoadOf(
            new Strut(section, Steel.Custom("S355", 355), 3000, end, end, Bow.AlongU(section, sign * bow)));
        Assert.Equal(capacity, Math.Max(Load(1), Load(-1)) / 1e3, 0);
    }

    [Fact]
    public void Rigid_ends_in_both_planes_make_the_eccentricity_disappear()
    {
        AngleSection section = Short(0).Section;
        double Load(Planar e)
        {
            var end = new StrutEnd(e, EndSpring.Rigid);
            return StrutCapacity.LoadOf(new Strut(section, Steel.Custom("S355", 355), 1050, end, end));
        }

        Closeness.Relative(Load(Planar.Zero), Load(new Planar(25, 30)), 1e-12, "capacity");
    }

    [Theory]
    [InlineData(2.09, 2.10)]
    public void One_plane_rigid_and_the_other_hinged_buckle_far_below_the_uncoupled_value(double low, double high)
    {
        // The naive value is I_y/I_v = 2.41 to 2.43 for equal legs.
        double ratio = CriticalLoad.RatioToEuler(Short(double.PositiveInfinity));
        Assert.InRange(ratio, low, high);
    }

    private static Strut Short(double spring)
    {
        AngleSection section = new Angle("L 70x70x7", 70, 70, 7, 9, 4.5).Connected();
        var end = new StrutEnd(new Planar(40 - section.CentroidY, section.CentroidZ + 5), new EndSpring(0, spring));
        return new Strut(section, Steel.Custom("S355", 355), 1050, end, end, Bow.AlongU(section, 3.5));
    }
}
