using StrutLessons.Sections;

namespace StrutLessons.Tests.Sections;

public class AngleStepsTests
{
    public static TheoryData<string, ConnectedLeg> Some => new()
    {
        { "L 80x80x8", ConnectedLeg.Long },
        { "L 100x65x8", ConnectedLeg.Long },
        { "L 100x65x8", ConnectedLeg.Short },
        { "L 75x75x4", ConnectedLeg.Long },
        { "L 200x100x10", ConnectedLeg.Short },
    };

    [Theory]
    [MemberData(nameof(Some))]
    public void Five_pieces_by_hand_give_the_same_section_as_the_outline(string name, ConnectedLeg leg)
    {
        AngleSection s = AngleCatalogue.Find(name).Connected(leg);
        IReadOnlyList<AnglePart> parts = AnglePart.Of(s);
        double Sum(Func<AnglePart, double> f) => parts.Sum(f);
        Closeness.Relative(s.Area, Sum(p => p.Area), 1e-12, "A");
        Closeness.Relative(s.CentroidY, Sum(p => p.Area * p.Y) / s.Area, 1e-12, "c_y");
        Closeness.Relative(s.CentroidZ, Sum(p => p.Area * p.Z) / s.Area, 1e-12, "c_z");
        Closeness.Relative(s.SecondMomentY, Sum(p => p.OwnY + p.Area * Math.Pow(p.Z - s.CentroidZ, 2)), 1e-12, "I_y");
        Closeness.Relative(s.SecondMomentZ, Sum(p => p.OwnZ + p.Area * Math.Pow(p.Y - s.CentroidY, 2)), 1e-12, "I_z");
        Closeness.Relative(s.ProductMoment, -Sum(p => p.OwnYZ + p.Area * (p.Y - s.CentroidY) * (p.Z - s.CentroidZ)), 1e-12, "I_yz");
    }

    [Fact]
    public void Worked_steps_carry_the_values_of_the_section()
    {
        AngleSection s = AngleCatalogue.Find("L 80x80x8").Connected();
        Dictionary<string, double> steps = s.WorkedSteps().ToDictionary(x => x.Symbol, x => x.Value);
        Assert.Equal(s.Area / 1e2, steps["A"]);
        Assert.Equal(s.CentroidY, steps["c_y"]);
        Assert.Equal(s.SecondMomentV / 1e4, steps["I_v"]);
        Assert.Equal(s.RadiusV, steps["i_v"]);
        Assert.Equal(135, steps[@"\varphi_u"], 9);
    }

    [Fact]
    public void Printed_section_moduli_are_those_of_the_toe()
    {
        // W_y = I_y/(a − c): 12.6 cm³ for L 80x80x8, 24.6 cm³ for L 100x100x10 (EN 10056-1 tables, from memory).
        Assert.Equal(12.6, AngleCatalogue.Find("L 80x80x8").Connected().Moduli().ToeSideY / 1e3, 0.05);
        Assert.Equal(24.6, AngleCatalogue.Find("L 100x100x10").Connected().Moduli().ToeSideZ / 1e3, 0.1);
    }

    [Fact]
    public void Bending_about_the_symmetry_axis_leaves_the_heel_of_an_equal_angle_without_stress()
    {
        AngleModuli w = AngleCatalogue.Find("L 80x80x8").Connected().Moduli();
        Assert.Equal(double.PositiveInfinity, w.At(Corner.Heel).AboutU);
        Assert.Equal(w.At(Corner.ConnectedToeOuter).AboutU, w.At(Corner.OutstandingToeOuter).AboutU, 6);
        Assert.True(w.LeastV <= w.At(Corner.Heel).AboutV);
    }
}
