namespace StrutLessons.Torsion;

/// <summary>
/// A girder as torsion sees it: St Venant stiffness G I_t, warping stiffness E I_w, length and ends. Immutable; N, mm.
/// Differential equation (Vlasov): E I_w φ⁗ − G I_t φ″ = m_T.
/// </summary>
public sealed record TorsionBar
{
    /// <summary>A bar in torsion.</summary>
    /// <param name="stVenant">G I_t, N mm².</param>
    /// <param name="warping">E I_w, N mm⁴.</param>
    /// <param name="length">L between the ends, mm.</param>
    /// <param name="end1">End at x = 0.</param>
    /// <param name="end2">End at x = L.</param>
    /// <exception cref="InputException">A number that is not positive.</exception>
    public TorsionBar(double stVenant, double warping, double length, WarpingEnd end1 = WarpingEnd.Fork, WarpingEnd end2 = WarpingEnd.Fork)
    {
        StVenant = Guard.Positive(stVenant, "G I_t", "N mm²", "Multiply the shear modulus in MPa by I_t in mm⁴ (1 cm⁴ = 10 000 mm⁴).");
        Warping = Guard.Positive(warping, "E I_w", "N mm⁴", "Multiply E in MPa by I_w in mm⁶ (1 cm⁶ = 1 000 000 mm⁶).");
        Length = Guard.Positive(length, "girder length L", "mm", "Give the distance between the points where twist is prevented.");
        End1 = Guard.Named(end1, "girder end 1");
        End2 = Guard.Named(end2, "girder end 2");
    }

    /// <summary>G I_t, N mm².</summary>
    public double StVenant { get; }

    /// <summary>E I_w, N mm⁴.</summary>
    public double Warping { get; }

    /// <summary>L, mm.</summary>
    public double Length { get; }

    /// <summary>End at x = 0.</summary>
    public WarpingEnd End1 { get; }

    /// <summary>End at x = L.</summary>
    public WarpingEnd End2 { get; }

    /// <summary>κ = √(G I_t/(E I_w)), 1/mm; a = 1/κ is the length over which warping dies out.</summary>
    public double Decay => Math.Sqrt(StVenant / Warping);

    /// <summary>The response to a torque at one point, in closed form.</summary>
    /// <param name="torque">T, N mm, any sign.</param>
    /// <param name="position">a from end 1, mm; inside the bar.</param>
    /// <exception cref="InputException">A torque that is not finite, or a position outside the bar.</exception>
    public PointTorque Under(double torque, double position) => new(this, torque, position);
}
