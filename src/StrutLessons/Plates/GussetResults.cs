namespace StrutLessons.Plates;

/// <summary>Flexibility of a gusset from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMoment">Deflection (mm per N mm) under a unit moment at the first bolt, fine mesh.</param>
public sealed record GussetFlexibility(GussetPlate Plate, BoltFlexibility Coarse, BoltFlexibility Fine, PlateField UnitMoment)
{
    /// <summary>The limit of the two meshes.</summary>
    public BoltFlexibility Limit { get; } = BoltFlexibility.Limit(Coarse, Fine);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}

/// <summary>Lowest buckling loads of a gusset, N, from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Free">The patch free to deflect and turn.</param>
/// <param name="Guided">The patch free to deflect, its slope along the strut held.</param>
/// <param name="Held">The first bolt held, the patch free to turn.</param>
/// <param name="FreeMode">Shape of the first mode of the free patch, largest deflection 1, fine mesh.</param>
public sealed record GussetBuckling(
    GussetPlate Plate, MeshEstimate Free, MeshEstimate Guided, MeshEstimate Held, PlateField FreeMode);
