namespace StrutLessons.Plates;

/// <summary>Twist of a girder's top flange per moment, rad/(N mm), from two nested meshes.</summary>
/// <param name="Girder">The girder.</param>
/// <param name="FootLength">Length of the foot, mm.</param>
/// <param name="Span">Length and load position; none if the flanges are held.</param>
/// <param name="RigidFoot">The foot is rigid: equal twist over its length.</param>
/// <param name="UniformMoment">The moment is spread evenly over the foot: mean twist.</param>
/// <param name="ChordRotation">Rotation of the line between the flanges at the joint (rigid foot); zero if the flanges are held.</param>
/// <param name="Uniform">Deflection of the web (mm per N mm) under the even moment, fine mesh.</param>
public sealed record FlangeFootResult(
    GirderShape Girder, double FootLength, GirderSpan? Span, MeshEstimate RigidFoot, MeshEstimate UniformMoment,
    MeshEstimate ChordRotation, PlateField Uniform);
