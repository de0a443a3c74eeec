using CsCheck;
using StrutLessons.Joints;

namespace StrutLessons.Tests.Joints;

public class JointHingeTests
{
    private static readonly Gen<JointContribution> Part =
        Gen.Select(Gen.Double[1e-10, 1e-7], Gen.Double[0, 300], (f, d) => new JointContribution("part", f, d, "test"));

    private static readonly Gen<JointContribution[]> Parts = Part.Array[1, 5];

    [Fact]
    public void Parts_in_series_turn_and_move_the_first_bolt_like_their_sum() => Parts.Sample(parts =>
    {
        JointHinge h = JointHinge.InSeries(parts, 2);
        // A unit moment turns each part by f and lowers the first bolt by f d.
        double rotation = parts.Sum(p => p.Compliance), deflection = parts.Sum(p => p.Compliance * p.HingeDistance);
        Closeness.Relative(rotation, 1 / h.OutOfPlaneStiffness, 1e-12, "rotation");
        Closeness.Relative(deflection, h.HingeDistance / h.OutOfPlaneStiffness, 1e-12, "deflection", rotation);
    });

    [Fact]
    public void A_joint_is_softer_than_its_softest_part() => Parts.Sample(parts =>
        Assert.True(JointHinge.InSeries(parts, 2).OutOfPlaneStiffness <= parts.Min(p => 1 / p.Compliance) * (1 + 1e-12)));

    [Fact]
    public void The_elastic_centre_lies_between_the_hinges_of_the_parts() => Parts.Sample(parts =>
        Assert.InRange(JointHinge.InSeries(parts, 2).HingeDistance, parts.Min(p => p.HingeDistance) - 1e-9, parts.Max(p => p.HingeDistance) + 1e-9));

    [Fact]
    public void The_transverse_compliance_of_a_series_is_never_negative() => Parts.Sample(parts =>
        Assert.True(JointHinge.InSeries(parts, 2).TransverseCompliance >= -1e-12 * parts.Sum(p => p.Compliance * 1e5)));

    [Fact]
    public void A_part_of_no_compliance_changes_nothing()
    {
        var gusset = new JointContribution("gusset", 2e-8, 30, "test");
        JointHinge one = JointHinge.InSeries([gusset], 2);
        JointHinge two = JointHinge.InSeries([gusset, new("stiff girder", 0, 80, "test")], 2);
        Assert.Equal((one.OutOfPlaneStiffness, one.HingeDistance), (two.OutOfPlaneStiffness, two.HingeDistance));
    }

    [Fact]
    public void A_joint_without_any_compliance_is_rigid() =>
        Assert.Equal(double.PositiveInfinity, JointHinge.InSeries([new("wall", 0, 0, "test")], 2).OutOfPlaneStiffness);

    [Fact]
    public void The_spring_can_be_placed_at_the_bolts_or_at_the_weld_to_show_the_error()
    {
        JointHinge h = JointHinge.InSeries([new("gusset", 2e-8, 30, "test")], 2);
        Assert.Equal(0, h.PlacedAt(SpringPlace.BoltLine, 65).HingeDistance);
        Assert.Equal(65, h.PlacedAt(SpringPlace.Weld, 65).HingeDistance);
        Assert.Equal(30, h.PlacedAt(SpringPlace.Weld, 65).PlacedAt(SpringPlace.ElasticCentre, 65).HingeDistance, 12);
    }

    [Fact]
    public void One_bolt_passes_on_no_imposed_rotation()
    {
        JointContribution[] parts = [new("web", 1e-8, 65, "test")];
        Assert.Equal(3e-8, JointHinge.InSeries(parts, 2, InPlaneEnd.Rigid, 3e-8).ImposedRotationPerNewton);
        Assert.Equal(0, JointHinge.InSeries(parts, 1, InPlaneEnd.Rigid, 3e-8).ImposedRotationPerNewton);
    }
}
