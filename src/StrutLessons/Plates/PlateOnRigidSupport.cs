namespace StrutLessons.Plates;

/// <summary>
/// Plate analysis of a gusset that is clamped along a rigid support line. Linear thin plate; bolt slip, weld size and the leg's own
/// flexibility are left out.
/// </summary>
public static class PlateOnRigidSupport
{
    /// <summary>Number of parts per half free length next to the patch: errors stay near 1 % and below.</summary>
    public const int DefaultFineness = 4;

    /// <summary>Flexibility at the first bolt.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension that no gusset can have.</exception>
    public static GussetFlexibility Flexibility(GussetPlate plate, PlateMaterial? material = null, int fineness = DefaultFineness)
    {
        var (coarse, fine) = GussetPanel.Pair(plate, material, fineness);
        return new(plate, coarse.Flexibility, fine.Flexibility, fine.UnitMomentField());
    }

    /// <summary>
    /// Lowest loads at which the gusset buckles under a force along the strut that enters at the patch. The force keeps its
    /// direction; the patch itself adds no geometric stiffness.
    /// </summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension that no gusset can have.</exception>
    public static GussetBuckling Buckling(GussetPlate plate, PlateMaterial? material = null, int fineness = DefaultFineness)
    {
        var (coarse, fine) = GussetPanel.Pair(plate, material, fineness);
        var free = fine.Buckle();
        return new(
            plate,
            new(coarse.Buckle().Factor, free.Factor),
            new(coarse.Buckle(RigidPatch.Slope).Factor, fine.Buckle(RigidPatch.Slope).Factor),
            new(coarse.Buckle(RigidPatch.Deflection).Factor, fine.Buckle(RigidPatch.Deflection).Factor),
            fine.ModeField(free));
    }

    /// <summary>Flexibility at the first bolt while a compression acts along the strut.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="compression">Compression N, N; negative for tension; below the lowest buckling load of both meshes.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension that no gusset can have, or a compression that buckles it.</exception>
    public static GussetFlexibility FlexibilityUnder(
        GussetPlate plate, double compression, PlateMaterial? material = null, int fineness = DefaultFineness)
    {
        Guard.Finite(compression, "compression", "N", "Give the force along the strut.");
        var (coarse, fine) = GussetPanel.Pair(plate, material, fineness);
        var field = fine.UnitMomentField(compression);
        return new(plate, coarse.FlexibilityUnder(compression), fine.FlexibilityUnder(compression), field);
    }
}
