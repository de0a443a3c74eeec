using StrutLessons.Materials;

namespace StrutLessons.Joints;

/// <summary>Bending of a plate strip.</summary>
internal static class PlateStrip
{
    /// <summary>D = E t³/[12(1 − ν²)], N mm: moment per width and curvature of a plate that cannot curve the other way.</summary>
    internal static double Stiffness(double elasticModulus, double thickness) =>
        elasticModulus * Math.Pow(thickness, 3) / (12 * (1 - Steel.StandardPoissonRatio * Steel.StandardPoissonRatio));

    /// <summary>G = E/[2(1 + ν)], MPa.</summary>
    internal static double ShearModulus(double elasticModulus) => elasticModulus / (2 * (1 + Steel.StandardPoissonRatio));
}
