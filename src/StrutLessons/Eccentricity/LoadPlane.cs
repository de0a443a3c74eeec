namespace StrutLessons.Eccentricity;

/// <summary>The plane, parallel to the gusset, in which the force is taken to leave the gusset.</summary>
public enum LoadPlane
{
    /// <summary>
    /// The middle of the gusset: the force that the support sees lies there, and the couple between gusset and leg
    /// travels through the bolts. The usual assumption, and the largest eccentricity of the three.
    /// </summary>
    GussetMidPlane,

    /// <summary>Where gusset and leg touch: the plane in which the bolts are sheared.</summary>
    Interface,

    /// <summary>The middle of the connected leg: as if the bolts alone, held straight by thick plates, carried the couple.</summary>
    LegMidPlane,
}
