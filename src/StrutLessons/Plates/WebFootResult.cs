namespace StrutLessons.Plates;

/// <summary>Flexibility of a girder's web from two nested meshes.</summary>
/// <param name="Girder">The girder.</param>
/// <param name="FootLength">Length of the foot, mm.</param>
/// <param name="Height">Height of the foot, mm.</param>
/// <param name="Span">Length and load position; none if the flanges are held.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMoment">Deflection of the web (mm per N mm) under a unit moment, fine mesh.</param>
public sealed record WebFootResult(
    GirderShape Girder, double FootLength, double Height, GirderSpan? Span, WebFlexibility Coarse, WebFlexibility Fine,
    PlateField UnitMoment)
{
    /// <summary>The limit of the two meshes.</summary>
    public WebFlexibility Limit => new(
        new MeshEstimate(Coarse.DeflectionPerForce, Fine.DeflectionPerForce).Value,
        new MeshEstimate(Coarse.DeflectionPerMoment, Fine.DeflectionPerMoment).Value,
        new MeshEstimate(Coarse.SlopePerMoment, Fine.SlopePerMoment).Value);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}
