using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Plates;

/// <summary>
/// Thin-plate quadrilateral with w, ∂w/∂x and ∂w/∂y at the corners (discrete Kirchhoff quadrilateral, J.-L. Batoz and
/// M. Ben Tahar, Int. J. Numer. Meth. Engng 18, 1982). The two slopes vary as 8-node quadratics; at the middle of every edge the
/// slope along the edge is that of a beam, the slope across it the mean of the corners. Derived here for slopes instead of rotations.
/// </summary>
internal readonly struct PlateElement
{
    /// <summary>Degrees of freedom.</summary>
    internal const int Dofs = 12;

    private readonly QuadCorners _corners;
    private readonly EdgeSlope _e0, _e1, _e2, _e3;

    internal PlateElement(in QuadCorners corners)
    {
        _corners = corners;
        _e0 = new(corners[0], corners[1]);
        _e1 = new(corners[1], corners[2]);
        _e2 = new(corners[2], corners[3]);
        _e3 = new(corners[3], corners[0]);
    }

    /// <summary>Bending stiffness, 12×12 row by row.</summary>
    /// <param name="rigidity">D = E t³/[12(1−ν²)], N mm.</param>
    /// <param name="poisson">Poisson's ratio ν.</param>
    /// <param name="stiffness">Receives the matrix.</param>
    internal void Stiffness(double rigidity, double poisson, Span<double> stiffness)
    {
        stiffness.Clear();
        Span<double> curvature = stackalloc double[3 * Dofs];
        Span<double> moment = stackalloc double[3 * Dofs];
        for (int point = 0; point < GaussRule.Points; point++)
        {
            var (xi, eta) = GaussRule.Point(point);
            double weight = rigidity * Curvatures(xi, eta, curvature);
            for (int k = 0; k < Dofs; k++)
            {
                double x = curvature[k], y = curvature[Dofs + k];
                moment[k] = weight * (x + poisson * y);
                moment[Dofs + k] = weight * (y + poisson * x);
                moment[2 * Dofs + k] = weight * 0.5 * (1 - poisson) * curvature[2 * Dofs + k];
            }

            for (int component = 0; component < 3; component++)
            {
                AddOuter(moment.Slice(component * Dofs, Dofs), curvature.Slice(component * Dofs, Dofs), stiffness);
            }
        }
    }

    /// <summary>
    /// Geometric stiffness of membrane forces (N/mm, tension positive; n_x, n_y, n_xy at each Gauss point), 12×12 row by row:
    /// the second-order work ½∫(n_x w_x² + n_y w_y² + 2 n_xy w_x w_y) dA with the element's own slopes.
    /// </summary>
    internal void GeometricStiffness(ReadOnlySpan<double> membraneForces, Span<double> stiffness)
    {
        stiffness.Clear();
        Span<double> shape = stackalloc double[8];
        Span<double> slopeX = stackalloc double[Dofs];
        Span<double> slopeY = stackalloc double[Dofs];
        Span<double> forceX = stackalloc double[Dofs];
        Span<double> forceY = stackalloc double[Dofs];
        for (int point = 0; point < GaussRule.Points; point++)
        {
            var (xi, eta) = GaussRule.Point(point);
            double weight = _corners.JacobianAt(xi, eta).Determinant;
            Serendipity.Values(xi, eta, shape);
            Slopes(shape, slopeX, slopeY);
            double nx = weight * membraneForces[3 * point];
            double ny = weight * membraneForces[3 * point + 1];
            double nxy = weight * membraneForces[3 * point + 2];
            for (int k = 0; k < Dofs; k++)
            {
                forceX[k] = nx * slopeX[k] + nxy * slopeY[k];
                forceY[k] = nxy * slopeX[k] + ny * slopeY[k];
            }

            AddOuter(forceX, slopeX, stiffness);
            AddOuter(forceY, slopeY, stiffness);
        }
    }

    /// <summary>Rows ∂²w/∂x², ∂²w/∂y², 2∂²w/∂x∂y at a point; returns the determinant of the map there.</summary>
    private double Curvatures(double xi, double eta, Span<double> curvature)
    {
        Span<double> alongX = stackalloc double[8];
        Span<double> alongY = stackalloc double[8];
        Span<double> unused = stackalloc double[Dofs];
        Span<double> twist = stackalloc double[Dofs];
        var jacobian = _corners.JacobianAt(xi, eta);
        Serendipity.Derivatives(xi, eta, jacobian, alongX, alongY);
        Slopes(alongX, curvature[..Dofs], twist);
        Slopes(alongY, unused, curvature.Slice(Dofs, Dofs));
        for (int k = 0; k < Dofs; k++)
        {
            curvature[2 * Dofs + k] = unused[k] + twist[k];
        }

        return jacobian.Determinant;
    }

    /// <summary>Rows that give the two slopes from the dofs, for shape functions or their derivatives.</summary>
    private void Slopes(ReadOnlySpan<double> shape, Span<double> slopeX, Span<double> slopeY)
    {
        Corner(0, shape, _e0, _e3, slopeX, slopeY);
        Corner(1, shape, _e1, _e0, slopeX, slopeY);
        Corner(2, shape, _e2, _e1, slopeX, slopeY);
        Corner(3, shape, _e3, _e2, slopeX, slopeY);
    }

    private static void Corner(
        int corner, ReadOnlySpan<double> shape, in EdgeSlope next, in EdgeSlope last, Span<double> slopeX, Span<double> slopeY)
    {
        double own = shape[corner];
        double after = shape[4 + corner];
        double before = shape[4 + ((corner + 3) & 3)];
        int k = 3 * corner;
        slopeX[k] = before * last.LiftX - after * next.LiftX;
        slopeY[k] = before * last.LiftY - after * next.LiftY;
        double xy = after * next.XY + before * last.XY;
        slopeX[k + 1] = own + after * next.XX + before * last.XX;
        slopeX[k + 2] = xy;
        slopeY[k + 1] = xy;
        slopeY[k + 2] = own + after * next.YY + before * last.YY;
    }

    private static void AddOuter(ReadOnlySpan<double> left, ReadOnlySpan<double> right, Span<double> matrix)
    {
        var columns = MemoryMarshal.Cast<double, Vector256<double>>(right);
        var target = MemoryMarshal.Cast<double, Vector256<double>>(matrix);
        for (int row = 0; row < Dofs; row++)
        {
            var factor = Vector256.Create(left[row]);
            for (int k = 0; k < 3; k++)
            {
                ref var entry = ref target[row * 3 + k];
                entry = Vector256.FusedMultiplyAdd(factor, columns[k], entry);
            }
        }
    }

    /// <summary>
    /// Slope at the middle of an edge with tangent t and length L: (3/2L)(w_j − w_i)·t + (½I − ¾ttᵀ)(g_i + g_j), g = slopes at the corners.
    /// </summary>
    private readonly struct EdgeSlope
    {
        internal EdgeSlope((double X, double Y) from, (double X, double Y) to)
        {
            double dx = to.X - from.X, dy = to.Y - from.Y;
            double square = dx * dx + dy * dy;
            LiftX = 1.5 * dx / square;
            LiftY = 1.5 * dy / square;
            XX = 0.5 - 0.75 * dx * dx / square;
            XY = -0.75 * dx * dy / square;
            YY = 0.5 - 0.75 * dy * dy / square;
        }

        internal double LiftX { get; }

        internal double LiftY { get; }

        internal double XX { get; }

        internal double XY { get; }

        internal double YY { get; }
    }
}
