namespace StrutLessons.Nonlinear;

/// <summary>One state of equilibrium on the load path. Displacements are measured from the bowed, unloaded shape.</summary>
/// <param name="Load">N, compression positive, N.</param>
/// <param name="Shortening">How far the two load points have come together along x, mm.</param>
/// <param name="ShearCentreMid">Displacement of the shear centre at mid-length, mm.</param>
/// <param name="CentroidMid">Displacement of the centroid at mid-length, mm.</param>
/// <param name="TwistMid">Roll at mid-length, rad, positive from y towards z.</param>
/// <param name="EndSlope1">Slopes v', w' at end 1, rad.</param>
/// <param name="EndSlope2">Slopes v', w' at end 2, rad.</param>
/// <param name="UnstableModes">Negative pivots of the tangent stiffness: 0 on a stable branch.</param>
/// <param name="YieldedFraction">Share of the strut's volume that has yielded.</param>
/// <param name="LargestPlasticStrain">Largest absolute plastic strain of any fibre.</param>
/// <param name="Shape">Deflected shape at the nodes.</param>
/// <param name="Yielding">Plastic strain of every fibre, if kept.</param>
public sealed record PathPoint(
    double Load, double Shortening, Planar ShearCentreMid, Planar CentroidMid, double TwistMid, Planar EndSlope1, Planar EndSlope2,
    int UnstableModes, double YieldedFraction, double LargestPlasticStrain, IReadOnlyList<RodStation> Shape, YieldMap? Yielding);

/// <summary>The rod at a node. Displacements are measured from the bowed, unloaded shape.</summary>
/// <param name="X">Distance from end 1, mm.</param>
/// <param name="ShearCentre">Displacement of the shear centre, mm.</param>
/// <param name="Twist">Roll, rad, positive from y towards z.</param>
public readonly record struct RodStation(double X, Planar ShearCentre, double Twist);
