namespace StrutLessons.Sections;

/// <summary>
/// The fillet in a corner, the square over the radius less a quarter circle, for radius 1 (any table of plane areas):
/// multiply by r, r² or r⁴.
/// </summary>
internal static class RootFillet
{
    /// <summary>Area 1 − π/4.</summary>
    internal const double Area = 1 - Math.PI / 4;

    /// <summary>Distance of the centroid from both sides of the corner.</summary>
    internal const double Centroid = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);

    /// <summary>Second moment about the own centroid, parallel to a side.</summary>
    internal const double OwnMoment = 1 - 5 * Math.PI / 16 - Area * Centroid * Centroid;

    /// <summary>Product of inertia about the own centroid.</summary>
    internal const double OwnProduct = 19.0 / 24 - Math.PI / 4 - Area * Centroid * Centroid;
}
