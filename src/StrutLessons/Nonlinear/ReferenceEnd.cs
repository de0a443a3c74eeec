namespace StrutLessons.Nonlinear;

/// <summary>
/// One end of the reference strut. The end section cannot move sideways or roll; two springs resist its rotation; warping is free.
/// </summary>
/// <param name="LoadPoint">
/// Where the force acts, seen from the centroid, mm. y along the connected leg, z towards the gusset. The arm to it is rigid and turns with the section.
/// </param>
/// <param name="InPlaneSpring">k_in, N mm/rad: resists the slope v' in the plane of the gusset. Infinity fixes the rotation.</param>
/// <param name="OutOfPlaneSpring">k_out, N mm/rad: resists the slope w' out of the plane of the gusset. Infinity fixes the rotation.</param>
/// <param name="Arm">
/// Length of the rigid piece from the end section (the bolts) outwards to the hinge of the joint, mm.
/// With an arm, the hinge and not the end section is held sideways. The arm lies along x before loading.
/// </param>
/// <exception cref="InputException">A value is not a possible number.</exception>
public sealed record ReferenceEnd(Planar LoadPoint, double InPlaneSpring, double OutOfPlaneSpring, double Arm = 0)
{
    /// <summary>Where the force acts, seen from the centroid, mm.</summary>
    public Planar LoadPoint { get; } = new(
        Guard.Finite(LoadPoint.Y, "load point y", "mm", "Give the distance of the bolt line from the centroid."),
        Guard.Finite(LoadPoint.Z, "load point z", "mm", "Give the distance of the gusset's mid-plane from the centroid."));

    /// <summary>k_in, N mm/rad.</summary>
    public double InPlaneSpring { get; } =
        Guard.NotNegativeOrInfinite(InPlaneSpring, "in-plane spring", "N mm/rad", "Give 0 for a hinge.");

    /// <summary>k_out, N mm/rad.</summary>
    public double OutOfPlaneSpring { get; } =
        Guard.NotNegativeOrInfinite(OutOfPlaneSpring, "out-of-plane spring", "N mm/rad", "Give 0 for a hinge.");

    /// <summary>Rigid length from the end section to the hinge, mm.</summary>
    public double Arm { get; } = Guard.NotNegative(Arm, "rigid arm", "mm", "Give 0 if the spring sits at the end section.");
}
