using StrutLessons.Eccentricity;

namespace StrutLessons.Joints;

/// <summary>
/// A tie that meets the strut on the same gusset, beside its mid-plane. Its pull on a lever bends the same joint. Immutable.
/// </summary>
/// <remarks>
/// The force is either constant while the strut's load grows, or grows with it (T = τ N); which of the two is the user's choice and part
/// of the result. Tension is positive, a push is a negative force.
/// </remarks>
public sealed record AdjacentTie
{
    private AdjacentTie(double force, double ratio, double eccentricity, TieSide side, double moment)
    {
        Force = force;
        Ratio = ratio;
        Eccentricity = Guard.NotNegative(eccentricity, "tie eccentricity", "mm",
            "Measure from the gusset's mid-plane to the tie's line; the side says on which side it lies.");
        Side = Guard.Named(side, "tie side");
        MomentShare = Guard.Finite(moment, "moment share", "", "Give 1 if the tie meets the support at the strut's angle, else sin β/sin α.");
    }

    /// <summary>Constant force T, N, tension positive; 0 for a tie in proportion to N.</summary>
    public double Force { get; }

    /// <summary>τ = T/N of a force that grows with the strut's compression; 0 for a constant force.</summary>
    public double Ratio { get; }

    /// <summary>Distance of the tie's line from the gusset's mid-plane, mm.</summary>
    public double Eccentricity { get; }

    /// <summary>Side of the mid-plane.</summary>
    public TieSide Side { get; }

    /// <summary>
    /// Share of the tie's moment that turns the strut: 1 for a tie at the strut's own angle to the support, sin β/sin α for a tie at the
    /// angle β (components about the support's axis).
    /// </summary>
    public double MomentShare { get; }

    /// <summary>A tie whose force stays while the strut's load grows.</summary>
    /// <param name="force">T, N, tension positive.</param>
    /// <param name="eccentricity">From the gusset's mid-plane, mm.</param>
    /// <param name="side">Same side as the strut's centroid or the other.</param>
    /// <param name="momentShare">See <see cref="MomentShare"/>.</param>
    /// <exception cref="InputException">A number that is not finite, or a negative eccentricity.</exception>
    public static AdjacentTie Constant(double force, double eccentricity, TieSide side, double momentShare = 1) =>
        new(Guard.Finite(force, "tie force T", "N", "Give the force in N, tension positive."), 0, eccentricity, side, momentShare);

    /// <summary>A tie whose force grows with the strut's compression, as in a truss under growing load.</summary>
    /// <param name="ratio">τ = T/N, tension per compression.</param>
    /// <param name="eccentricity">From the gusset's mid-plane, mm.</param>
    /// <param name="side">Same side as the strut's centroid or the other.</param>
    /// <param name="momentShare">See <see cref="MomentShare"/>.</param>
    /// <exception cref="InputException">A ratio beyond ±10, or a negative eccentricity.</exception>
    public static AdjacentTie Proportional(double ratio, double eccentricity, TieSide side, double momentShare = 1) =>
        new(0, Guard.Within(ratio, -10, 10, "tie force ratio T/N", "", "Give the tie's tension divided by the strut's compression, for example 0.8."),
            eccentricity, side, momentShare);

    /// <summary>The same tie on the other side.</summary>
    public AdjacentTie Mirrored() => new(Force, Ratio, Eccentricity,
        Side == TieSide.SameAsStrut ? TieSide.OppositeToStrut : TieSide.SameAsStrut, MomentShare);

    /// <summary>T at a compression N of the strut, N.</summary>
    public double ForceAt(double compression) => Force + Ratio * compression;

    /// <summary>What the tie does to the strut's end.</summary>
    /// <param name="loadPoint">The strut's load point, which says on which side of the gusset the centroid lies.</param>
    /// <exception cref="InputException">The centroid lies in the gusset's mid-plane, so that it has no side.</exception>
    public TieMoment On(LoadPoint loadPoint)
    {
        ArgumentNullException.ThrowIfNull(loadPoint);
        return new(this, loadPoint);
    }
}
