namespace StrutLessons.Plates;

/// <summary>Flexibility of a gusset from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMoment">Deflection (mm per N mm) under a unit moment at the first bolt, fine mesh.</param>
public sealed record GussetFlexibility(GussetPlate Plate, BoltFlexibility Coarse, BoltFlexibility Fine, PlateField UnitMoment)
{
    /// <summary>The limit of the two meshes.</summary>
    public BoltFlexibility Limit => BoltFlexibility.Limit(Coarse, Fine);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}
