namespace StrutLessons.Joints;

/// <summary>
/// For a gusset across a girder web: where the strut's z axis points. The z axis runs from the strut towards a gusset on the
/// outer face of its leg.
/// </summary>
public enum ZTowards
{
    /// <summary>To the girder's mid-depth: the angle lies between the gusset and the nearer flange.</summary>
    MidDepth,

    /// <summary>To the nearer flange: the angle lies on the side of mid-depth.</summary>
    Flange,
}
