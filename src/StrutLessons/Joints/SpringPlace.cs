namespace StrutLessons.Joints;

/// <summary>Where the model puts the joint's spring.</summary>
public enum SpringPlace
{
    /// <summary>At the elastic centre, s_h behind the first bolt, with a rigid arm between: right for rotation and deflection.</summary>
    ElasticCentre,

    /// <summary>At the first bolt, without an arm: overestimates the critical load.</summary>
    BoltLine,

    /// <summary>At the weld, with an arm over the whole free length: underestimates the critical load.</summary>
    Weld,
}
