namespace StrutLessons.Plates;

/// <summary>The 8-node quadratic shape functions: corners 0 to 3, then the middles of the edges 0-1, 1-2, 2-3, 3-0.</summary>
internal static class Serendipity
{
    /// <summary>Values at a point.</summary>
    internal static void Values(double xi, double eta, Span<double> shape)
    {
        for (int k = 0; k < 4; k++)
        {
            double x = QuadCorners.Xi[k] * xi, y = QuadCorners.Eta[k] * eta;
            shape[k] = 0.25 * (1 + x) * (1 + y) * (x + y - 1);
        }

        shape[4] = 0.5 * (1 - xi * xi) * (1 - eta);
        shape[5] = 0.5 * (1 - eta * eta) * (1 + xi);
        shape[6] = 0.5 * (1 - xi * xi) * (1 + eta);
        shape[7] = 0.5 * (1 - eta * eta) * (1 - xi);
    }

    /// <summary>Derivatives with respect to x and y at a point.</summary>
    internal static void Derivatives(double xi, double eta, in Jacobian jacobian, Span<double> alongX, Span<double> alongY)
    {
        for (int k = 0; k < 4; k++)
        {
            double a = QuadCorners.Xi[k], b = QuadCorners.Eta[k], x = a * xi, y = b * eta;
            (alongX[k], alongY[k]) = jacobian.Gradient(0.25 * a * (1 + y) * (2 * x + y), 0.25 * b * (1 + x) * (2 * y + x));
        }

        (alongX[4], alongY[4]) = jacobian.Gradient(-xi * (1 - eta), -0.5 * (1 - xi * xi));
        (alongX[5], alongY[5]) = jacobian.Gradient(0.5 * (1 - eta * eta), -eta * (1 + xi));
        (alongX[6], alongY[6]) = jacobian.Gradient(-xi * (1 + eta), 0.5 * (1 - xi * xi));
        (alongX[7], alongY[7]) = jacobian.Gradient(-0.5 * (1 - eta * eta), -eta * (1 - xi));
    }
}
