namespace StrutLessons.Plates;

/// <summary>Corners of a quadrilateral, counter-clockwise, mm.</summary>
internal readonly record struct QuadCorners(double X0, double Y0, double X1, double Y1, double X2, double Y2, double X3, double Y3)
{
    /// <summary>Local coordinates of the corners.</summary>
    internal static ReadOnlySpan<double> Xi => [-1, 1, 1, -1];

    /// <summary>Local coordinates of the corners.</summary>
    internal static ReadOnlySpan<double> Eta => [-1, -1, 1, 1];

    /// <summary>Corner i.</summary>
    internal (double X, double Y) this[int i] => i switch { 0 => (X0, Y0), 1 => (X1, Y1), 2 => (X2, Y2), _ => (X3, Y3) };

    /// <summary>Area.</summary>
    internal double Area => 0.5 * ((X2 - X0) * (Y3 - Y1) - (X3 - X1) * (Y2 - Y0));

    /// <summary>Derivatives of (x, y) with respect to the local coordinates at a point.</summary>
    internal Jacobian JacobianAt(double xi, double eta)
    {
        double a = 0.25 * (1 - eta), b = 0.25 * (1 + eta), c = 0.25 * (1 - xi), d = 0.25 * (1 + xi);
        return new(
            a * (X1 - X0) + b * (X2 - X3), a * (Y1 - Y0) + b * (Y2 - Y3),
            c * (X3 - X0) + d * (X2 - X1), c * (Y3 - Y0) + d * (Y2 - Y1));
    }
}

/// <summary>Derivatives of (x, y) with respect to the local coordinates (ξ, η).</summary>
internal readonly record struct Jacobian(double XXi, double YXi, double XEta, double YEta)
{
    /// <summary>Area of the map.</summary>
    internal double Determinant => XXi * YEta - YXi * XEta;

    /// <summary>Turns a derivative (∂ξ, ∂η) into (∂x, ∂y).</summary>
    internal (double X, double Y) Gradient(double dXi, double dEta)
    {
        double scale = 1 / Determinant;
        return ((YEta * dXi - YXi * dEta) * scale, (XXi * dEta - XEta * dXi) * scale);
    }
}

/// <summary>The 2×2 Gauss rule; all weights are 1.</summary>
internal static class GaussRule
{
    /// <summary>Number of points.</summary>
    internal const int Points = 4;

    private const double At = 0.57735026918962576;

    /// <summary>Local coordinates of a point.</summary>
    internal static (double Xi, double Eta) Point(int index) =>
        ((index & 1) == 0 ? -At : At, (index & 2) == 0 ? -At : At);
}
