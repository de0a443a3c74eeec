namespace StrutLessons.Plates;

/// <summary>
/// The part of a gusset that the connected leg holds straight. It moves as a rigid body about the first bolt:
/// w = w0 + s·θ + n·ω out of the plane; sideways, lengthways and turning in the plane.
/// </summary>
internal static class RigidPatch
{
    /// <summary>Numbers of the out-of-plane movements: deflection w0, slope θ along the strut, slope ω across it.</summary>
    internal const int Deflection = 0, Slope = 1, Roll = 2;

    /// <summary>Number of movements, in and out of the plane.</summary>
    internal const int Movements = 3;

    /// <summary>Numbers of the in-plane movements: across, along the strut, turning.</summary>
    internal const int Sideways = 0, Lengthways = 1, Turning = 2;

    /// <summary>Ties the patch for bending.</summary>
    internal static void TieOutOfPlane(GussetMesh gusset, Constraints constraints)
    {
        var (along, across) = (gusset.Along, gusset.Across);
        int w = constraints.Body(Deflection), theta = constraints.Body(Slope), omega = constraints.Body(Roll);
        foreach (int node in gusset.Patch)
        {
            var (n, s) = gusset.FromFirstBolt(node);
            constraints.Tie(constraints.Dof(node, PlateModel.Deflection), new(w, 1), new(theta, s), new(omega, n));
            constraints.Tie(constraints.Dof(node, PlateModel.SlopeX), new(theta, along.X), new(omega, across.X));
            constraints.Tie(constraints.Dof(node, PlateModel.SlopeY), new(theta, along.Y), new(omega, across.Y));
        }
    }

    /// <summary>Ties the patch for plane stress.</summary>
    internal static void TieInPlane(GussetMesh gusset, Constraints constraints)
    {
        var (along, across) = (gusset.Along, gusset.Across);
        int n0 = constraints.Body(Sideways), s0 = constraints.Body(Lengthways), turn = constraints.Body(Turning);
        foreach (int node in gusset.Patch)
        {
            var (n, s) = gusset.FromFirstBolt(node);
            constraints.Tie(
                constraints.Dof(node, 0), new(n0, across.X), new(s0, along.X), new(turn, n * along.X - s * across.X));
            constraints.Tie(
                constraints.Dof(node, 1), new(n0, across.Y), new(s0, along.Y), new(turn, n * along.Y - s * across.Y));
        }
    }
}
