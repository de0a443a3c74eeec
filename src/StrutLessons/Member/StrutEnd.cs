using StrutLessons.Eccentricity;
using StrutLessons.Joints;

namespace StrutLessons.Member;

/// <summary>
/// One end of the strut as the equations see it: where the load acts, how the end is held, how far the hinge lies behind the bolts.
/// Immutable.
/// </summary>
public sealed record StrutEnd
{
    /// <summary>An end.</summary>
    /// <param name="eccentricity">Point of the load from the centroid, (y_e, z_e) in mm.</param>
    /// <param name="spring">Rotational spring at the hinge.</param>
    /// <param name="armLength">Length of the rigid arm from the hinge to the first bolt, mm; 0 puts the spring at the bolt.</param>
    /// <exception cref="InputException">NaN, infinite, or a negative arm.</exception>
    public StrutEnd(Planar eccentricity, EndSpring spring, double armLength = 0)
    {
        const string advice = "Measure from the centroid in mm: y towards the toe of the connected leg, z towards the gusset.";
        Guard.Finite(eccentricity.Y, "eccentricity y_e", "mm", advice);
        Guard.Finite(eccentricity.Z, "eccentricity z_e", "mm", advice);
        Eccentricity = eccentricity;
        Spring = spring;
        ArmLength = Guard.NotNegative(armLength, "arm length", "mm", "Give the distance from the first bolt back to the hinge.");
    }

    /// <summary>An end from its load point and its joint: the spring at the hinge, the rigid arm from there to the first bolt.</summary>
    /// <param name="load">Where the load acts.</param>
    /// <param name="joint">How the joint holds the strut.</param>
    /// <param name="tie">Moment of an adjacent tie on the same joint, if there is one.</param>
    public static StrutEnd Of(LoadPoint load, JointHinge joint, TieMoment? tie = null)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(joint);
        // M(0) = N e + c (w' − φN) at end 1, M(L) = N e − c (w' + φN) at end 2: at both ends a rotation φN imposed on the spring c
        // acts like a load point shifted by −c φ.
        double imposed = joint.ImposedRotationPerNewton == 0 ? 0 : joint.OutOfPlaneStiffness * joint.ImposedRotationPerNewton;
        var end = new StrutEnd(load.Offset - new Planar(0, imposed), new EndSpring(joint.InPlaneStiffness, joint.OutOfPlaneStiffness), joint.HingeDistance);
        return tie is null ? end : end.With(tie);
    }

    /// <summary>Point of the load from the centroid, (y_e, z_e) in mm.</summary>
    public Planar Eccentricity { get; }

    /// <summary>Rotational spring at the hinge.</summary>
    public EndSpring Spring { get; }

    /// <summary>Rigid arm from the hinge to the first bolt, mm.</summary>
    public double ArmLength { get; }

    /// <summary>
    /// A moment on the joint that does not grow with the load of the strut, as the first moment it adds at this end, N mm
    /// (a constant force in an adjacent tie). A moment in proportion to the load belongs into the eccentricity.
    /// </summary>
    public Planar ConstantMoment { get; init; }

    /// <summary>The same end with an adjacent tie on its joint: a shift of the load point, or a constant moment, or both.</summary>
    /// <param name="tie">What the tie does to this end.</param>
    public StrutEnd With(TieMoment tie)
    {
        ArgumentNullException.ThrowIfNull(tie);
        return new(Eccentricity + tie.EccentricityShift, Spring, ArmLength) { ConstantMoment = ConstantMoment + tie.ConstantMoment };
    }

    /// <summary>The same end with another spring.</summary>
    public StrutEnd With(EndSpring spring) => new(Eccentricity, spring, ArmLength) { ConstantMoment = ConstantMoment };
}
