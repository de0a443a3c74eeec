using StrutLessons.Eccentricity;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Eccentricity;

public class LoadPointTests
{
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();
    private static readonly BoltLine Bolts = new(gauge: 45, count: 2, diameter: 20, pitch: 60, endDistance: 40);

    [Fact]
    public void Gauge_and_half_the_gusset_give_the_eccentricity_of_a_hand_calculation()
    {
        // c_y = c_z = 22.6 mm printed in EN 10056-1 tables (2.26 cm): 45 − 22.6 and 22.6 + 10/2, to the table's three digits.
        LoadPoint p = LoadPoint.Of(L80, Bolts, 10);
        Assert.Equal(22.4, p.Offset.Y, 0.05);
        Assert.Equal(27.6, p.Offset.Z, 0.05);
    }

    [Fact]
    public void Principal_components_of_an_equal_angle_are_sum_and_difference_over_root_two()
    {
        LoadPoint p = LoadPoint.Of(L80, Bolts, 10);
        Closeness.Relative((p.Offset.Z - p.Offset.Y) / Math.Sqrt(2), p.AlongU, 1e-12, "e_u");
        Closeness.Relative((p.Offset.Y + p.Offset.Z) / Math.Sqrt(2), p.AlongV, 1e-12, "e_v");
    }

    [Theory]
    [InlineData(GussetFace.Outer, LoadPlane.GussetMidPlane, 5)]
    [InlineData(GussetFace.Outer, LoadPlane.Interface, 0)]
    [InlineData(GussetFace.Outer, LoadPlane.LegMidPlane, -4)]
    [InlineData(GussetFace.Inner, LoadPlane.GussetMidPlane, -13)]
    [InlineData(GussetFace.Inner, LoadPlane.Interface, -8)]
    [InlineData(GussetFace.Inner, LoadPlane.LegMidPlane, -4)]
    public void The_load_plane_is_counted_from_the_outer_face_of_the_leg(GussetFace face, LoadPlane plane, double fromOuterFace)
    {
        LoadPoint p = LoadPoint.Of(L80, Bolts, 10, face, plane);
        Closeness.Relative(L80.CentroidZ + fromOuterFace, p.Offset.Z, 1e-12, "z_e");
        Closeness.Relative(45 - L80.CentroidY, p.Offset.Y, 1e-12, "y_e");
    }

    [Fact]
    public void Opposite_gussets_are_the_outer_face_at_one_end_and_the_inner_face_at_the_other()
    {
        EndLoadPoints ends = LoadPoint.BothEnds(L80, Bolts, 10, Bolts, 12, GussetSides.Opposite);
        Assert.Equal((GussetFace.Outer, GussetFace.Inner), (ends.End1.Face, ends.End2.Face));
        Closeness.Relative(L80.CentroidZ - 8 - 6, ends.End2.Offset.Z, 1e-12, "z_e2");
    }

    [Fact]
    public void An_end_bolted_through_the_other_leg_mirrors_in_the_symmetry_axis_of_an_equal_angle()
    {
        Planar one = LoadPoint.Of(L80, Bolts, 10).Offset;
        Planar other = LoadPoint.OfOtherLeg(L80, Bolts, 10).Offset;
        Closeness.Relative(-one.Z, other.Y, 1e-12, "y_e");
        Closeness.Relative(-one.Y, other.Z, 1e-12, "z_e");
    }

    [Fact]
    public void For_usual_gauges_the_eccentricity_points_almost_along_v()
    {
        LoadPoint p = LoadPoint.Of(L80, Bolts, 10);
        Assert.True(Math.Abs(p.AlongU) < 0.15 * Math.Abs(p.AlongV));
    }

    [Theory]
    [InlineData(12, 13)]
    [InlineData(14, 15)]
    [InlineData(16, 18)]
    [InlineData(24, 26)]
    [InlineData(27, 30)]
    public void Holes_are_larger_than_bolts_by_the_usual_clearance(double bolt, double hole) =>
        Assert.Equal(hole, new BoltLine(100, 1, bolt, 0, 100).HoleDiameter); // EN 1090-2, normal round holes, from memory

    [Fact]
    public void Worked_steps_carry_the_values_of_the_result()
    {
        LoadPoint p = LoadPoint.Of(L80, Bolts, 10);
        Dictionary<string, double> steps = p.WorkedSteps().ToDictionary(s => s.Symbol, s => s.Value);
        Assert.Equal((p.Offset.Y, p.Offset.Z, p.AlongU, p.AlongV), (steps["y_e"], steps["z_e"], steps["e_u"], steps["e_v"]));
    }
}
