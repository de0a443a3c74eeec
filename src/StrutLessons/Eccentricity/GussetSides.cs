namespace StrutLessons.Eccentricity;

/// <summary>Whether the gussets at the two ends touch the same face of the connected leg.</summary>
public enum GussetSides
{
    /// <summary>Both gussets on the same face: both load points on the same side of the centroid, single curvature.</summary>
    Same,

    /// <summary>
    /// Outer face at end 1, inner face at end 2. The straight strut then passes from one side of the gussets to the other;
    /// the load points may lie on opposite sides of the centroid, which gives double curvature.
    /// </summary>
    Opposite,
}
