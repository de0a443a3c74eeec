namespace StrutLessons.Plates;

/// <summary>Lowest buckling loads of a gusset, N, from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Free">The patch free to deflect and turn.</param>
/// <param name="Guided">The patch free to deflect, its slope along the strut held.</param>
/// <param name="Held">The first bolt held, the patch free to turn.</param>
/// <param name="FreeMode">Shape of the first mode of the free patch, largest deflection 1, fine mesh.</param>
public sealed record GussetBuckling(
    GussetPlate Plate, MeshEstimate Free, MeshEstimate Guided, MeshEstimate Held, PlateField FreeMode);
