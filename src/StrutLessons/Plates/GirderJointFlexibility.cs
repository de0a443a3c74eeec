namespace StrutLessons.Plates;

/// <summary>Flexibility of a gusset on a girder from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Girder">The girder.</param>
/// <param name="Height">Height of the gusset on the web, mm; none if it stands on the top flange.</param>
/// <param name="Span">Length and load position; none if the flanges are held.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMomentGusset">Deflection of the gusset (mm per N mm) under a unit moment at the first bolt, fine mesh.</param>
/// <param name="UnitMomentGirder">Deflection of the web (mm per N mm) under the same moment.</param>
public sealed record GirderJointFlexibility(
    GussetPlate Plate, GirderShape Girder, double? Height, GirderSpan? Span, BoltFlexibility Coarse, BoltFlexibility Fine,
    PlateField UnitMomentGusset, PlateField UnitMomentGirder)
{
    /// <summary>The limit of the two meshes.</summary>
    public BoltFlexibility Limit => BoltFlexibility.Limit(Coarse, Fine);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}
