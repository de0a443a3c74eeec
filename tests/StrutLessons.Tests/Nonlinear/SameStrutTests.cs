using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>One strut in the plane model, in the cheap model with roll and in the rod: three programs must mean the same thing.</summary>
public class SameStrutTests
{
    public static TheoryData<string, ConnectedLeg, double, double, double, double> Struts => new()
    {
        { "L 90x90x9", ConnectedLeg.Long, 2400, 0, 0, 0 },
        { "L 90x90x9", ConnectedLeg.Long, 2400, 40e6, 150e6, 60 },
        { "L 100x65x8", ConnectedLeg.Long, 2000, 0, 60e6, 40 },
        { "L 100x65x8", ConnectedLeg.Short, 2600, 30e6, 30e6, 0 },
        { "L 80x80x8", ConnectedLeg.Long, 1800, double.PositiveInfinity, 20e6, 50 },
    };

    [Theory]
    [MemberData(nameof(Struts))]
    public void First_yield_without_roll_is_the_same_by_exact_functions_and_by_elements(
        string name, ConnectedLeg leg, double length, double inPlane, double outOfPlane, double arm)
    {
        foreach (Strut strut in BothBows(name, leg, length, inPlane, outOfPlane, arm, 355))
        {
            RollCapacity capacity = RollAnalysis.Capacity(ReferenceStrut.Of(strut, strut.Bows[0]));
            // What differs: slivers in place of the fillet's arc, and elements in place of exact functions.
            Closeness.Relative(CriticalLoad.Of(strut), capacity.CriticalFlexural, 5e-4, "critical load");
            Closeness.Relative(StrutCapacity.LoadOf(strut), capacity.FlexureOnly.Load, 5e-4, "first yield");
        }
    }

    [Theory]
    [MemberData(nameof(Struts))]
    public void The_elastic_rod_without_twist_bends_like_the_plane_model_while_slopes_are_small(
        string name, ConnectedLeg leg, double length, double inPlane, double outOfPlane, double arm)
    {
        foreach (Strut strut in BothBows(name, leg, length, inPlane, outOfPlane, arm, 2000))
        {
            double load = 0.2 * CriticalLoad.Of(strut);
            Planar plane = SecondOrderSolution.Of(strut, load, strut.Bows[0]).Deflection(strut.BarLength / 2);
            Planar rod = ElasticRod.StatesAt(ReferenceStrut.Of(strut, strut.Bows[0]), [load], 16, twist: false)[0].CentroidMid;
            Assert.True((rod - plane).Length <= 0.01 * plane.Length, $"{rod} against {plane}");
        }
    }

    [Fact]
    public void The_section_of_the_reference_has_the_properties_of_the_catalogue_angle()
    {
        foreach (AngleSection angle in new[] { AngleCatalogue.Find("L 100x65x8").Connected(ConnectedLeg.Short), AngleCatalogue.Find("L 100x100x10").Connected() })
        {
            var end = new StrutEnd(Planar.Zero, EndSpring.Hinged);
            ReferenceSection section = ReferenceStrut.Of(new Strut(angle, SteelGrade.S355.ForThickness(10), 2000, end, end), Bow.None).Section;
            Closeness.Relative(angle.Area, section.Area, 1e-6, "A");
            Closeness.Relative(angle.SecondMomentU, section.Iu, 5e-4, "I_u");
            Closeness.Relative(angle.SecondMomentV, section.Iv, 5e-4, "I_v");
            Assert.True((section.ShearCentre - section.Centroid - angle.ShearCentre).Length < 0.02);
        }
    }

    /// <summary>Two ends that are not alike, and the bow to either side.</summary>
    private static IEnumerable<Strut> BothBows(
        string name, ConnectedLeg leg, double length, double inPlane, double outOfPlane, double arm, double yieldStrength)
    {
        AngleSection section = AngleCatalogue.Find(name).Connected(leg);
        var end1 = new StrutEnd(new Planar(18, 30), new EndSpring(inPlane, outOfPlane), arm);
        var end2 = new StrutEnd(new Planar(12, 28), new EndSpring(0.5 * inPlane, outOfPlane), 0.5 * arm);
        double bow = length / 300;
        return new[] { bow, -bow }.Select(b => new Strut(section, Steel.Custom("test", yieldStrength), length, end1, end2, Bow.AlongU(section, b)));
    }
}
