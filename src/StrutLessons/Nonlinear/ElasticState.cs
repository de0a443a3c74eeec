namespace StrutLessons.Nonlinear;

/// <summary>An elastic state of a strut under a given load. Displacements are measured from the bowed, unloaded shape.</summary>
/// <param name="Load">N, compression positive, N.</param>
/// <param name="ShearCentreMid">Displacement of the shear centre at mid-length, mm.</param>
/// <param name="CentroidMid">Displacement of the centroid at mid-length, mm.</param>
/// <param name="TwistMid">Roll at mid-length, rad, positive from y towards z.</param>
/// <param name="LargestCompression">Largest compressive stress at a corner, MPa.</param>
/// <param name="CompressionAt">Where that is, mm from end 1.</param>
/// <param name="LargestTension">Largest tensile stress at a corner, MPa; negative if there is no tension anywhere.</param>
/// <param name="TensionAt">Where that is, mm from end 1.</param>
public sealed record ElasticState(
    double Load, Planar ShearCentreMid, Planar CentroidMid, double TwistMid,
    double LargestCompression, double CompressionAt, double LargestTension, double TensionAt)
{
    /// <summary>Largest stress of either sign, MPa.</summary>
    public double LargestStress => Math.Max(LargestCompression, LargestTension);
}
