namespace StrutLessons.Plates;

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
