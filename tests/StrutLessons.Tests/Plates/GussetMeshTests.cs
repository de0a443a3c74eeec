using CsCheck;
using StrutLessons.Plates;

namespace StrutLessons.Tests.Plates;

/// <summary>Random gussets: whatever passes the checks of the input can be meshed and analysed.</summary>
public class GussetMeshTests
{
    private static readonly Gen<double> Side = Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 150]);

    private static readonly Gen<GussetPlate> Plates = Gen.Select(
        Gen.Double[4, 40], Gen.Double[40, 160], Side, Side, Gen.Double[20, 300],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[30, 250]), Gen.Double[15, 80], Gen.Select(Gen.Double[20, 90], Gen.Double[0, 0.5]),
        (t, patch, left, right, free, group, end, shape) =>
            new GussetPlate(t, patch / 2 + left, patch / 2 + right, patch, free, group, end, shape.Item1 * Math.PI / 180, shape.Item2))
        .Where(IsSound);

    [Fact]
    public void Every_element_is_convex_and_the_mesh_covers_the_plate() => Plates.Sample(plate =>
    {
        foreach (bool fine in new[] { false, true })
        {
            var gusset = new GussetMesh(plate, PlateMaterial.Steel, new(4, fine), new());
            double area = 0;
            for (int e = 0; e < gusset.Mesh.Elements; e++)
            {
                var corners = gusset.Mesh.CornersOf(e);
                area += corners.Area;
                for (int k = 0; k < 4; k++)
                {
                    Assert.True(corners.JacobianAt(QuadCorners.Xi[k], QuadCorners.Eta[k]).Determinant > 0, $"element {e} of {plate}");
                }
            }

            Closeness.Relative(Outline(plate) - plate.PatchWidth * plate.GroupLength, area, 1e-9, "area beside the patch");
        }
    }, iter: 400);

    [Fact]
    public void Flexibilities_are_positive_and_fall_with_the_cube_of_the_thickness() => Plates.Sample(plate =>
    {
        var thin = PlateOnRigidSupport.Flexibility(plate, fineness: 2).Fine;
        var thick = PlateOnRigidSupport.Flexibility(plate with { Thickness = 2 * plate.Thickness }, fineness: 2).Fine;
        Assert.True(thin.ShearStiffness > 0 && thin.RotationalStiffness > 0);
        Assert.InRange(thin.HingeDistance, 0, plate.FreeLength);
        Closeness.Relative(8, thick.RotationalStiffness / thin.RotationalStiffness, 1e-6, "stiffness ratio");
    }, iter: 100);

    // The free patch can do all that the guided and the held one can, so it buckles first.
    [Fact]
    public void A_free_patch_buckles_before_a_guided_or_a_held_one() => Plates.Sample(plate =>
    {
        var buckling = PlateOnRigidSupport.Buckling(plate, fineness: 2);
        Assert.True(buckling.Free.Fine > 0);
        Assert.True(buckling.Free.Fine <= buckling.Guided.Fine * (1 + 1e-6) && buckling.Free.Fine <= buckling.Held.Fine * (1 + 1e-6));
    }, iter: 60);

    [Fact]
    public void A_hair_of_plate_beside_the_leg_changes_nothing()
    {
        var plate = new GussetPlate(10, 50, 50, 100, 120, 60, 30, Math.PI / 3);
        double without = PlateOnRigidSupport.Flexibility(plate).Limit.SlopePerMoment;
        var hair = plate with { Left = 50 + 1e-12, Right = 50 + 1e-7 };
        Closeness.Relative(without, PlateOnRigidSupport.Flexibility(hair).Limit.SlopePerMoment, 1e-9, "slope per moment");
    }

    /// <summary>Area of the plate from its outline.</summary>
    private static double Outline(GussetPlate plate)
    {
        double cot = plate.Cotangent, left = plate.LeftFoot, right = plate.RightFoot;
        (double N, double S)[] corners =
        [
            (-left, -left * cot), (right, right * cot), (plate.Right, Math.Max(plate.FreeLength, right * cot)),
            (plate.Right, plate.End), (-plate.Left, plate.End), (-plate.Left, plate.FreeLength),
        ];
        double twice = 0;
        for (int k = 0; k < corners.Length; k++)
        {
            var (a, b) = (corners[k], corners[(k + 1) % corners.Length]);
            twice += a.N * b.S - b.N * a.S;
        }

        return Math.Abs(twice) / 2;
    }

    private static bool IsSound(GussetPlate plate)
    {
        try
        {
            plate.Checked();
            return true;
        }
        catch (InputException)
        {
            return false;
        }
    }
}
