namespace StrutLessons.Plates;

/// <summary>
/// One quantity from two nested meshes. If the error falls with the element size to the power p, the two values give the limit:
/// fine + (fine − coarse)/(2ᵖ − 1) (L. F. Richardson's extrapolation, Phil. Trans. R. Soc. A 226, 1927).
/// </summary>
/// <param name="Coarse">Value on the mesh of double element size.</param>
/// <param name="Fine">Value on the fine mesh.</param>
/// <param name="Order">Order of convergence p, as observed for this element on the classical plates.</param>
public readonly record struct MeshEstimate(double Coarse, double Fine, double Order = MeshEstimate.ObservedOrder)
{
    /// <summary>Order of convergence of the plate element, observed on square plates and asserted in the tests.</summary>
    public const double ObservedOrder = 2;

    /// <summary>The extrapolated value; results use this one.</summary>
    public double Value => Fine + (Fine - Coarse) / (Math.Pow(2, Order) - 1);

    /// <summary>Estimated error of the fine mesh, relative to <see cref="Value"/>. It is an estimate, not a bound.</summary>
    public double RelativeError => Math.Abs(Fine - Value) / Math.Abs(Value);
}
