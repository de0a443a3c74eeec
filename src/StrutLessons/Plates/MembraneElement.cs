namespace StrutLessons.Plates;

/// <summary>
/// Plane-stress quadrilateral with two displacements at each corner and two incompatible bending modes per direction
/// (R. L. Taylor, P. J. Beresford, E. L. Wilson, Int. J. Numer. Meth. Engng 10, 1976: passes the patch test on any quadrilateral).
/// </summary>
internal readonly struct MembraneElement(in QuadCorners corners, double stiffnessPerLength, double poisson)
{
    /// <summary>Degrees of freedom.</summary>
    internal const int Dofs = 8;

    private const int Modes = 4;
    private const int All = Dofs + Modes;
    private readonly QuadCorners _corners = corners;

    // Membrane stiffness E·t/(1−ν²), N/mm.
    private readonly double _membrane = stiffnessPerLength / (1 - poisson * poisson);
    private readonly double _poisson = poisson;

    /// <summary>Stiffness, 8×8 row by row.</summary>
    internal void Stiffness(Span<double> stiffness)
    {
        Span<double> whole = stackalloc double[All * All];
        Eliminate(whole);
        for (int row = 0; row < Dofs; row++)
        {
            whole.Slice(row * All, Dofs).CopyTo(stiffness.Slice(row * Dofs, Dofs));
        }
    }

    /// <summary>Membrane forces n_x, n_y, n_xy (N/mm) at each Gauss point for given corner displacements.</summary>
    internal void Forces(ReadOnlySpan<double> displacements, Span<double> forces)
    {
        Span<double> whole = stackalloc double[All * All];
        Eliminate(whole);
        Span<double> all = stackalloc double[All];
        displacements.CopyTo(all);
        for (int mode = Dofs; mode < All; mode++)
        {
            // The eliminated row reads pivot·a_mode + (columns before it) = 0.
            double sum = 0;
            for (int k = 0; k < mode; k++)
            {
                sum += whole[mode * All + k] * all[k];
            }

            all[mode] = -sum / whole[mode * All + mode];
        }

        Span<double> strain = stackalloc double[3 * All];
        for (int point = 0; point < GaussRule.Points; point++)
        {
            var (xi, eta) = GaussRule.Point(point);
            Strains(xi, eta, strain);
            double x = 0, y = 0, xy = 0;
            for (int k = 0; k < All; k++)
            {
                x += strain[k] * all[k];
                y += strain[All + k] * all[k];
                xy += strain[2 * All + k] * all[k];
            }

            forces[3 * point] = _membrane * (x + _poisson * y);
            forces[3 * point + 1] = _membrane * (y + _poisson * x);
            forces[3 * point + 2] = _membrane * 0.5 * (1 - _poisson) * xy;
        }
    }

    /// <summary>The 12×12 matrix with its modes eliminated from the last to the first.</summary>
    private void Eliminate(Span<double> whole)
    {
        whole.Clear();
        Span<double> strain = stackalloc double[3 * All];
        for (int point = 0; point < GaussRule.Points; point++)
        {
            var (xi, eta) = GaussRule.Point(point);
            double weight = _membrane * Strains(xi, eta, strain);
            for (int row = 0; row < All; row++)
            {
                double x = weight * (strain[row] + _poisson * strain[All + row]);
                double y = weight * (strain[All + row] + _poisson * strain[row]);
                double xy = weight * 0.5 * (1 - _poisson) * strain[2 * All + row];
                for (int column = 0; column < All; column++)
                {
                    whole[row * All + column] += x * strain[column] + y * strain[All + column] + xy * strain[2 * All + column];
                }
            }
        }

        for (int mode = All - 1; mode >= Dofs; mode--)
        {
            for (int row = 0; row < mode; row++)
            {
                double factor = whole[row * All + mode] / whole[mode * All + mode];
                for (int column = 0; column < mode; column++)
                {
                    whole[row * All + column] -= factor * whole[mode * All + column];
                }
            }
        }
    }

    /// <summary>Rows ε_x, ε_y, γ_xy for the 8 displacements and 4 modes; returns the determinant of the map.</summary>
    private double Strains(double xi, double eta, Span<double> strain)
    {
        strain.Clear();
        var jacobian = _corners.JacobianAt(xi, eta);
        for (int corner = 0; corner < 4; corner++)
        {
            double a = QuadCorners.Xi[corner], b = QuadCorners.Eta[corner];
            Set(strain, 2 * corner, jacobian.Gradient(0.25 * a * (1 + b * eta), 0.25 * b * (1 + a * xi)));
        }

        // Modes 1−ξ² and 1−η², mapped with the centre's Jacobian so that a constant stress does no work on them.
        var centre = _corners.JacobianAt(0, 0);
        double scale = centre.Determinant / jacobian.Determinant;
        var (x1, y1) = centre.Gradient(-2 * xi, 0);
        var (x2, y2) = centre.Gradient(0, -2 * eta);
        Set(strain, Dofs, (scale * x1, scale * y1));
        Set(strain, Dofs + 2, (scale * x2, scale * y2));
        return jacobian.Determinant;
    }

    private static void Set(Span<double> strain, int dof, (double X, double Y) gradient)
    {
        strain[dof] = gradient.X;
        strain[All + dof + 1] = gradient.Y;
        strain[2 * All + dof] = gradient.Y;
        strain[2 * All + dof + 1] = gradient.X;
    }
}
