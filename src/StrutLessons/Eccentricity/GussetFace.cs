namespace StrutLessons.Eccentricity;

/// <summary>On which face of the connected leg the gusset lies.</summary>
public enum GussetFace
{
    /// <summary>The outer face, away from the outstanding leg: the usual arrangement.</summary>
    Outer,

    /// <summary>The inner face, on the side of the outstanding leg. The plate must stop before the root fillet.</summary>
    Inner,
}
