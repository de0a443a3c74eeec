namespace StrutLessons.Sections;

/// <summary>
/// What a printed table says about an angle; a value that no source at hand prints is null. Kept to compare with the values
/// integrated from the geometry, never used in a calculation. Units as in the rest of the library: mm, mm², mm⁴.
/// </summary>
/// <param name="Area">A, mm².</param>
/// <param name="CentroidAlongLong">Distance of the centroid from the heel along the long leg, mm.</param>
/// <param name="CentroidAlongShort">Distance of the centroid from the heel along the short leg, mm.</param>
/// <param name="SecondMomentStrong">Second moment about the axis parallel to the short leg (the larger), mm⁴.</param>
/// <param name="SecondMomentWeak">Second moment about the axis parallel to the long leg, mm⁴.</param>
/// <param name="SecondMomentU">I_u, mm⁴.</param>
/// <param name="SecondMomentV">I_v, mm⁴.</param>
/// <param name="RadiusV">i_v, mm.</param>
/// <param name="TanAlpha">Slope of the axis u–u against the axis parallel to the long leg.</param>
/// <param name="TorsionConstant">I_t, mm⁴.</param>
/// <param name="Source">A source for every value.</param>
public sealed record PrintedAngle(
    double? Area,
    double? CentroidAlongLong,
    double? CentroidAlongShort,
    double? SecondMomentStrong,
    double? SecondMomentWeak,
    double? SecondMomentU,
    double? SecondMomentV,
    double? RadiusV,
    double? TanAlpha,
    double? TorsionConstant,
    string Source);
