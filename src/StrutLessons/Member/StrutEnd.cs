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

    /// <summary>The same end with another spring.</summary>
    public StrutEnd With(EndSpring spring) => new(Eccentricity, spring, ArmLength) { ConstantMoment = ConstantMoment };
}
