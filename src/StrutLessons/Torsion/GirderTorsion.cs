using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Torsion;

/// <summary>Makes a girder into a bar in torsion.</summary>
public static class GirderTorsion
{
    /// <summary>G I_t and E I_w of a girder by stated formulas, with its length and ends.</summary>
    /// <param name="girder">The section.</param>
    /// <param name="length">L between the points where twist is prevented, mm.</param>
    /// <param name="end1">End at x = 0.</param>
    /// <param name="end2">End at x = L.</param>
    /// <param name="elasticModulus">E, MPa.</param>
    /// <param name="shearModulus">G, MPa; E/[2(1 + ν)] if left out.</param>
    /// <param name="torsionRule">Formula of I_t.</param>
    /// <param name="warpingRule">Formula of I_w.</param>
    /// <exception cref="InputException">A number out of range.</exception>
    public static TorsionBar Bar(
        Girder girder,
        double length,
        WarpingEnd end1 = WarpingEnd.Fork,
        WarpingEnd end2 = WarpingEnd.Fork,
        double elasticModulus = Steel.StandardElasticModulus,
        double? shearModulus = null,
        TorsionConstantRule torsionRule = TorsionConstantRule.Catalogue2014,
        WarpingConstantRule warpingRule = WarpingConstantRule.FlangesOnly)
    {
        ArgumentNullException.ThrowIfNull(girder);
        double e = Guard.Within(elasticModulus, 50_000, 500_000, "elastic modulus E", "MPa", "Give E in MPa = N/mm², 210 000 for steel.");
        double g = shearModulus ?? e / (2 * (1 + Steel.StandardPoissonRatio));
        Guard.Within(g, 19_000, 200_000, "shear modulus G", "MPa", "Give G in MPa = N/mm², about 81 000 for steel.");
        return new(g * girder.TorsionConstant(torsionRule), e * girder.WarpingConstant(warpingRule), length, end1, end2);
    }
}
