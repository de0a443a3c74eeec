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
