namespace StrutLessons.Plates;

/// <summary>
/// A beam along a plate edge, such as a flange seen from the web: it bends out of the web's plane and twists (St Venant).
/// It shares w and both slopes with the plate; its own depth in the web's plane is neglected.
/// </summary>
/// <param name="From">First node.</param>
/// <param name="To">Second node.</param>
/// <param name="Bending">E·I for bending out of the plate's plane, N mm².</param>
/// <param name="Torsion">G·I_t, N mm².</param>
internal readonly record struct EdgeBeam(int From, int To, double Bending, double Torsion)
{
    /// <summary>Degrees of freedom.</summary>
    internal const int Dofs = 6;

    /// <summary>Stiffness for (w, ∂w/∂x, ∂w/∂y) at both ends, 6×6 row by row: cubic deflection, linear twist.</summary>
    internal void Stiffness(double dx, double dy, Span<double> stiffness)
    {
        double length = Math.Sqrt(dx * dx + dy * dy);
        double cos = dx / length, sin = dy / length;
        Span<double> strains = stackalloc double[3 * Dofs];

        // Hermite beam as two independent modes: uniform bending θ2−θ1, and the antisymmetric mode θ1+θ2−2(w2−w1)/L.
        strains[0] = 2 / length;
        strains[3] = -2 / length;
        for (int end = 0; end < 2; end++)
        {
            int k = 3 * end;
            double sign = end == 0 ? -1 : 1;
            strains[k + 1] = cos;
            strains[k + 2] = sin;
            strains[Dofs + k + 1] = sign * cos;
            strains[Dofs + k + 2] = sign * sin;
            strains[2 * Dofs + k + 1] = -sign * sin;
            strains[2 * Dofs + k + 2] = sign * cos;
        }

        double antisymmetric = 3 * Bending / length, uniform = Bending / length, twist = Torsion / length;
        for (int row = 0; row < Dofs; row++)
        {
            for (int column = 0; column < Dofs; column++)
            {
                stiffness[row * Dofs + column] =
                    antisymmetric * strains[row] * strains[column]
                    + uniform * strains[Dofs + row] * strains[Dofs + column]
                    + twist * strains[2 * Dofs + row] * strains[2 * Dofs + column];
            }
        }
    }
}
