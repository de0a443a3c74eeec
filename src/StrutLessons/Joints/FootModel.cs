namespace StrutLessons.Joints;

/// <summary>How a gusset passes its moment to the flange it stands on.</summary>
public enum FootModel
{
    /// <summary>Moment spread evenly over the foot: fits the plate analyses of real gussets better.</summary>
    UniformMoment,

    /// <summary>The foot turns as one piece: an infinitely stiff gusset.</summary>
    RigidFoot,
}
