using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Joints;

public class AdjacentTieTests
{
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();
    private static readonly LoadPoint Outer = LoadPoint.Of(L80, new BoltLine(45, 2, 20, 60, 40), 10);
    private static readonly LoadPoint Inner = LoadPoint.Of(L80, new BoltLine(45, 2, 20, 60, 40), 10, GussetFace.Inner);
    private static readonly LoadPoint OneBolt = LoadPoint.Of(L80, new BoltLine(45, 1, 20, 0, 40), 10);

    [Fact]
    public void A_pulling_tie_on_the_other_side_adds_to_the_moment_and_on_the_same_side_takes_away()
    {
        AdjacentTie tie = AdjacentTie.Constant(50_000, 25, TieSide.OppositeToStrut);
        double alone = 40_000 * Outer.Offset.Z;
        // Equilibrium by hand: 50 kN on a lever of 25 mm is 1.25 kNm.
        Closeness.Relative(alone + 1.25e6, tie.On(Outer).MomentAt(40_000), 1e-12, "opposite");
        Closeness.Relative(alone - 1.25e6, tie.Mirrored().On(Outer).MomentAt(40_000), 1e-12, "same");
        Assert.Equal(1.25e6, tie.On(Outer).ConstantMoment.Z, 6);
        Assert.Equal(Planar.Zero, tie.On(Outer).EccentricityShift);
    }

    [Fact]
    public void A_tie_in_proportion_to_the_load_shifts_the_eccentricity()
    {
        TieMoment t = AdjacentTie.Proportional(0.8, 25, TieSide.OppositeToStrut).On(Outer);
        Assert.Equal(20, t.EccentricityShift.Z, 12);
        Assert.Equal(Planar.Zero, t.ConstantMoment);
    }

    [Fact]
    public void The_side_is_counted_from_the_strut_not_from_the_axes()
    {
        // Gusset on the inner face, centroid still on the same side of it: z_e = c_z − t − t_g/2 > 0.
        Assert.True(Inner.Offset.Z > 0);
        Assert.True(AdjacentTie.Constant(1000, 25, TieSide.OppositeToStrut).On(Inner).ConstantMoment.Z > 0);
        LoadPoint other = LoadPoint.OfOtherLeg(L80, new BoltLine(45, 2, 20, 60, 40), 10);
        TieMoment turned = AdjacentTie.Constant(1000, 25, TieSide.OppositeToStrut).On(other);
        Assert.Equal(new Planar(-25_000, 0), turned.ConstantMoment);
    }

    [Fact]
    public void With_one_bolt_the_moment_stays_in_the_plate()
    {
        TieMoment t = AdjacentTie.Constant(50_000, 25, TieSide.OppositeToStrut).On(OneBolt);
        Assert.False(t.Transferred);
        Assert.Equal(Planar.Zero, t.ConstantMoment);
    }

    [Theory]
    [InlineData(0.999, true)]
    [InlineData(1.001, false)]
    public void Even_on_the_same_side_a_tie_is_worse_than_none_while_the_strut_is_lightly_loaded(double part, bool worse)
    {
        TieMoment t = AdjacentTie.Constant(50_000, 25, TieSide.SameAsStrut).On(Outer);
        double load = part * t.WorseThanNoTieBelow;
        Closeness.Relative(50_000 * 25 / (2 * Outer.Offset.Z), t.WorseThanNoTieBelow, 1e-12, "N*");
        Assert.Equal(worse, Math.Abs(t.MomentAt(load)) > Math.Abs(load * t.StrutEccentricity));
    }

    [Fact]
    public void A_tie_in_proportion_is_worse_on_the_same_side_at_every_load_or_at_none()
    {
        Assert.Equal(0, AdjacentTie.Proportional(0.8, 25, TieSide.SameAsStrut).On(Outer).WorseThanNoTieBelow);
        Assert.Equal(double.PositiveInfinity, AdjacentTie.Proportional(5, 25, TieSide.SameAsStrut).On(Outer).WorseThanNoTieBelow);
    }

    [Fact]
    public void The_other_side_is_the_worse_one_at_every_load_for_every_pull()
    {
        foreach (double pull in new[] { 1e3, 2e4, 5e5 })
        {
            foreach (double load in new[] { 1.0, 1e4, 1e5, 1e6 })
            {
                AdjacentTie tie = AdjacentTie.Constant(pull, 25, TieSide.OppositeToStrut);
                Assert.True(Math.Abs(tie.On(Outer).MomentAt(load)) > Math.Abs(tie.Mirrored().On(Outer).MomentAt(load)));
            }
        }
    }
}
