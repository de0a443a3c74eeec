namespace StrutLessons.Nonlinear;

/// <summary>
/// Elastic buckling of a hinged bar whose shear centre is not its centroid, in closed form. Ends may warp and cannot roll; no warping constant.
/// Source: Timoshenko and Gere, Theory of Elastic Stability, 2nd edition, chapter 5 (from memory; derived again).
/// </summary>
/// <param name="EulerMinor">π² E I_v/L², N.</param>
/// <param name="EulerMajor">π² E I_u/L², N.</param>
/// <param name="Torsional">N_φ = G J/i_0², N; i_0 is the polar radius of gyration about the shear centre.</param>
/// <param name="Critical">Smallest root of the cubic, N.</param>
public sealed record TorsionalFlexuralBuckling(double EulerMinor, double EulerMajor, double Torsional, double Critical)
{
    /// <summary>Finds the smallest root of i_0² (N − N_u)(N − N_v)(N − N_φ) − N² y_u² (N − N_u) − N² y_v² (N − N_v) = 0.</summary>
    /// <param name="section">The section.</param>
    /// <param name="steel">E and G.</param>
    /// <param name="length">L between the hinges, mm.</param>
    /// <exception cref="InputException">The length is not positive.</exception>
    public static TorsionalFlexuralBuckling Hinged(ReferenceSection section, ReferenceSteel steel, double length)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(steel);
        double l = Guard.Positive(length, "length", "mm", "Give the length between the hinges.");
        double unit = Math.PI * Math.PI * steel.ElasticModulus / (l * l);
        Planar offset = section.ShearCentre - section.Centroid, minor = section.MinorDirection;
        // Displacement along the minor direction couples with roll through the offset across it, and the other way round.
        double along = offset.Dot(minor), across = offset.Dot(new Planar(-minor.Z, minor.Y));
        double polar = (section.Iy + section.Iz) / section.Area + offset.Dot(offset);
        double nv = unit * section.Iv, nu = unit * section.Iu, nt = steel.ShearModulus * section.TorsionConstant / polar;
        double Cubic(double n) => polar * (n - nu) * (n - nv) * (n - nt) - n * n * across * across * (n - nu) - n * n * along * along * (n - nv);
        // The polynomial is negative at 0 and not negative at the smallest of the three loads: the root lies between.
        double low = 0, high = Math.Min(nv, nt);
        while (high - low > 1e-14 * high)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }
            (low, high) = Cubic(middle) < 0 ? (middle, high) : (low, middle);
        }
        return new TorsionalFlexuralBuckling(nv, nu, nt, 0.5 * (low + high));
    }
}
