using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Capacity;

/// <summary>A tie on the same gusset as the strut, in the search for the capacity.</summary>
public class TieComparisonTests(ITestOutputHelper output)
{
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();
    private static readonly LoadPoint Point = LoadPoint.Of(L80, new BoltLine(45, 2, 20, 60, 40), 10);
    private static readonly JointHinge Joint = GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 65, 40), L80, Point.Bolts).Hinge;

    private static Strut Diagonal(JointHinge joint) =>
        new(L80, SteelGrade.S355.ForThickness(8), 2150, StrutEnd.Of(Point, joint), StrutEnd.Of(Point, joint));

    [Theory]
    [InlineData(40_000)]
    [InlineData(80_000)]
    public void A_constant_force_and_the_same_force_in_proportion_meet_at_the_capacity(double force)
    {
        Strut strut = Diagonal(Joint);
        TieComparison constant = TieComparison.Of(strut, Point, AdjacentTie.Constant(force, 25, TieSide.SameAsStrut));
        foreach ((double load, TieSide side) in new[] { (constant.SameSide.Load, TieSide.SameAsStrut), (constant.OppositeSide.Load, TieSide.OppositeToStrut) })
        {
            TieComparison growing = TieComparison.Of(strut, Point, AdjacentTie.Proportional(force / load, 25, TieSide.SameAsStrut));
            Closeness.Relative(load, (side == TieSide.SameAsStrut ? growing.SameSide : growing.OppositeSide).Load, 1e-7, side.ToString());
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void On_the_gallery_strut_the_other_side_is_the_worse_one(double ratio)
    {
        TieComparison t = TieComparison.Of(Diagonal(Joint), Point, AdjacentTie.Proportional(ratio, 25, TieSide.SameAsStrut));
        output.WriteLine($"τ = {ratio}: without {t.WithoutTie.Load / 1e3:F2}, same {t.SameSide.Load / 1e3:F2}, opposite {t.OppositeSide.Load / 1e3:F2} kN");
        Assert.Equal(TieSide.OppositeToStrut, t.WorseSide);
        Assert.True(t.OppositeSide.Load < t.WithoutTie.Load);
    }

    [Fact]
    public void A_tie_that_cancels_the_eccentricity_leaves_the_part_in_the_plane_of_the_gusset()
    {
        Strut strut = Diagonal(Joint);
        TieComparison t = TieComparison.Of(strut, Point, AdjacentTie.Proportional(Math.Abs(Point.Offset.Z) / 25, 25, TieSide.SameAsStrut));
        var end = new StrutEnd(new Planar(Point.Offset.Y, 0), strut.End1.Spring, strut.End1.ArmLength);
        Closeness.Relative(StrutCapacity.Of(strut.WithEnds(end, end)).Load, t.SameSide.Load, 1e-9, "N_R");
    }

    [Fact]
    public void A_joint_without_any_compliance_keeps_the_tie_from_the_strut()
    {
        JointHinge rigid = JointHinge.InSeries([new("wall", 0, 0, "test")], 2);
        TieComparison t = TieComparison.Of(Diagonal(rigid), Point, AdjacentTie.Constant(60_000, 25, TieSide.SameAsStrut));
        Assert.Equal(t.WithoutTie.Load, t.SameSide.Load);
        Assert.Equal(t.WithoutTie.Load, t.OppositeSide.Load);
    }

    [Fact]
    public void A_tie_at_either_end_of_a_symmetric_strut_does_the_same()
    {
        AdjacentTie tie = AdjacentTie.Constant(60_000, 25, TieSide.OppositeToStrut);
        TieComparison one = TieComparison.Of(Diagonal(Joint), Point, tie, TieEnds.End1), two = TieComparison.Of(Diagonal(Joint), Point, tie, TieEnds.End2);
        Closeness.Relative(one.OppositeSide.Load, two.OppositeSide.Load, 1e-9, "opposite");
        Closeness.Relative(one.SameSide.Load, two.SameSide.Load, 1e-9, "same");
        Assert.NotEqual(one.OppositeSide.Load, TieComparison.Of(Diagonal(Joint), Point, tie).OppositeSide.Load);
    }

    [Fact]
    public void The_side_of_the_tie_given_does_not_matter_for_the_comparison()
    {
        AdjacentTie tie = AdjacentTie.Constant(60_000, 25, TieSide.OppositeToStrut);
        TieComparison one = TieComparison.Of(Diagonal(Joint), Point, tie), two = TieComparison.Of(Diagonal(Joint), Point, tie.Mirrored());
        Assert.Equal(one.SameSide.Load, two.SameSide.Load);
        Assert.Equal(one.OppositeSide.Load, two.OppositeSide.Load);
    }

    [Fact]
    public void A_tie_that_makes_the_strut_yield_alone_leaves_no_capacity()
    {
        TieComparison t = TieComparison.Of(Diagonal(Joint), Point, AdjacentTie.Constant(2e6, 50, TieSide.OppositeToStrut));
        Assert.Equal((0, CapacityReason.YieldsWithoutLoad), (t.OppositeSide.Load, t.OppositeSide.Governing.Reason));
        Assert.True(t.WithoutTie.Load > 0);
    }
}
