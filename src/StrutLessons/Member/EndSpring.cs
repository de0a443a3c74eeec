namespace StrutLessons.Member;

/// <summary>
/// Rotational spring at one end of the strut, diagonal in the joint's axes. 0 is a hinge,
/// <see cref="double.PositiveInfinity"/> a rigid end. Acts on the additional slope, not on that of the bow.
/// </summary>
public readonly record struct EndSpring
{
    /// <summary>A spring.</summary>
    /// <param name="inPlane">Stiffness for rotation in the plane of the gusset (slope v'), N mm/rad.</param>
    /// <param name="outOfPlane">Stiffness for rotation out of the plane of the gusset (slope w'), N mm/rad.</param>
    /// <exception cref="InputException">Negative or NaN.</exception>
    public EndSpring(double inPlane, double outOfPlane)
    {
        const string advice = "Give N mm/rad (1 kNm/rad = 1e6 N mm/rad), 0 for a hinge, or infinity for a rigid end.";
        InPlane = Guard.NotNegativeOrInfinite(inPlane, "in-plane spring stiffness", "N mm/rad", advice);
        OutOfPlane = Guard.NotNegativeOrInfinite(outOfPlane, "out-of-plane spring stiffness", "N mm/rad", advice);
    }

    /// <summary>Stiffness in the plane of the gusset, N mm/rad.</summary>
    public double InPlane { get; }

    /// <summary>Stiffness out of the plane of the gusset, N mm/rad.</summary>
    public double OutOfPlane { get; }

    /// <summary>No restraint in either plane.</summary>
    public static EndSpring Hinged => default;

    /// <summary>Rotation prevented in both planes.</summary>
    public static EndSpring Rigid => new(double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>A spring given in the unit in which people read it.</summary>
    /// <param name="inPlane">In the plane of the gusset, kNm/rad.</param>
    /// <param name="outOfPlane">Out of the plane of the gusset, kNm/rad.</param>
    /// <exception cref="InputException">Negative or NaN.</exception>
    public static EndSpring FromKiloNewtonMetre(double inPlane, double outOfPlane) => new(1e6 * inPlane, 1e6 * outOfPlane);
}
