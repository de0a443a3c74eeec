namespace StrutLessons.Plates;

/// <summary>
/// One quantity from two nested meshes. If the error falls with the element size to the power p, the two values give the limit:
/// fine + (fine − coarse)/(2ᵖ − 1) (L. F. Richardson's extrapolation, Phil. Trans. R. Soc. A 226, 1927).
/// </summary>
/// <param name="Coarse">Value on the mesh of double element size.</param>
/// <param name="Fine">Value on the fine mesh.</param>
public readonly record struct MeshEstimate(double Coarse, double Fine)
{
    /// <summary>Order of convergence p of the plate element where the plate is smooth: observed on classical plates and asserted in the tests.</summary>
    public const double SmoothOrder = 2;

    /// <summary>Order observed on gussets, whose moments are singular at the corners of the rigid patch; asserted in the tests.</summary>
    public const double CornerOrder = 1.4;

    /// <summary>The value extrapolated with <see cref="SmoothOrder"/>; results use this one.</summary>
    public double Value => Fine + (Fine - Coarse) / (Math.Pow(2, SmoothOrder) - 1);

    /// <summary>
    /// Estimated error of the fine mesh relative to <see cref="Value"/>, made on the safe side with <see cref="CornerOrder"/>.
    /// It is an estimate, not a bound: the two values may agree by chance, so read anything below 0.1 % as 0.1 %.
    /// </summary>
    public double RelativeError => Math.Abs((Fine - Coarse) / (Math.Pow(2, CornerOrder) - 1) / Value);
}
