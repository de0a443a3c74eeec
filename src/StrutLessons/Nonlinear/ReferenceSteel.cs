namespace StrutLessons.Nonlinear;

/// <summary>Steel of the reference analysis: linear elastic, then flat or with linear kinematic hardening.</summary>
/// <param name="ElasticModulus">E, MPa.</param>
/// <param name="ShearModulus">G, MPa.</param>
/// <param name="YieldStrength">f_y, MPa; positive infinity keeps the strut elastic.</param>
/// <param name="HardeningModulus">
/// H, MPa: back stress per plastic strain (Prager's rule). The slope of the stress-strain line after yield is EH/(E + H). 0 is perfectly plastic.
/// </param>
/// <exception cref="InputException">A modulus or the strength is not a possible number.</exception>
public sealed record ReferenceSteel(double ElasticModulus, double ShearModulus, double YieldStrength, double HardeningModulus = 0)
{
    /// <summary>E, MPa.</summary>
    public double ElasticModulus { get; } =
        Guard.Within(ElasticModulus, 1000, 1e6, "elastic modulus", "MPa", "Steel has 210000 MPa; a value near 210 is in GPa.");

    /// <summary>G, MPa.</summary>
    public double ShearModulus { get; } =
        Guard.Within(ShearModulus, 300, 1e6, "shear modulus", "MPa", "Steel has about 81000 MPa; a value near 81 is in GPa.");

    /// <summary>f_y, MPa.</summary>
    public double YieldStrength { get; } = YieldStrength > 0
        ? YieldStrength
        : throw Guard.Fail(YieldStrength, "yield strength", "MPa", "greater than 0", "Structural steel has 235 to 460 MPa; infinity keeps the strut elastic.");

    /// <summary>H, MPa.</summary>
    public double HardeningModulus { get; } =
        Guard.NotNegative(HardeningModulus, "hardening modulus", "MPa", "Give 0 for perfectly plastic steel, or for instance E/10000.");

    /// <summary>Common structural steel: E = 210000 MPa, G = 80769 MPa (EN 1993-1-1:2005, 3.2.6, with a Poisson ratio of 0.3).</summary>
    /// <param name="yieldStrength">f_y, MPa.</param>
    public static ReferenceSteel WithYield(double yieldStrength) => new(210000, 80769, yieldStrength);
}
