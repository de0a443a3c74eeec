namespace StrutLessons.Joints;

/// <summary>How two or more bolts hold the strut against turning in the plane of the gusset.</summary>
public enum InPlaneEnd
{
    /// <summary>Not at all yielding: the plate is stiff in its own plane. The usual assumption.</summary>
    Rigid,

    /// <summary>Free to turn, as if slip in the holes took up the rotation.</summary>
    Released,
}
