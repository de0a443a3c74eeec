namespace StrutLessons.Torsion;

/// <summary>How the end of a girder is held against twist; it never turns about its own axis.</summary>
public enum WarpingEnd
{
    /// <summary>Fork: twist prevented, the flanges free to warp (φ = 0, φ″ = 0).</summary>
    Fork,

    /// <summary>Twist and warping prevented (φ = 0, φ′ = 0), as by a stiff end block or a girder that continues.</summary>
    WarpingFixed,
}
