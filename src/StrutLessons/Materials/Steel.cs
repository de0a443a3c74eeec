namespace StrutLessons.Materials;

/// <summary>A structural steel: yield strength and elastic constants in MPa (N/mm²). Immutable.</summary>
public sealed record Steel
{
    /// <summary>Elastic modulus E of structural steel, MPa. Source: EN 1993-1-1:2005, 3.2.6 (from memory).</summary>
    public const double StandardElasticModulus = 210_000;

    /// <summary>Poisson's ratio ν of structural steel. Source: EN 1993-1-1:2005, 3.2.6 (from memory).</summary>
    public const double StandardPoissonRatio = 0.3;

    internal Steel(string name, double yieldStrength, double elasticModulus, string source)
    {
        Name = name;
        YieldStrength = yieldStrength;
        ElasticModulus = elasticModulus;
        Source = source;
    }

    /// <summary>Designation.</summary>
    public string Name { get; }

    /// <summary>Yield strength f_y, MPa.</summary>
    public double YieldStrength { get; }

    /// <summary>Elastic modulus E, MPa.</summary>
    public double ElasticModulus { get; }

    /// <summary>Poisson's ratio ν = 0.3.</summary>
    public double PoissonRatio { get; } = StandardPoissonRatio;

    /// <summary>Shear modulus G = E/[2(1 + ν)], MPa.</summary>
    public double ShearModulus => ElasticModulus / (2 * (1 + PoissonRatio));

    /// <summary>Where the yield strength comes from.</summary>
    public string Source { get; }

    /// <summary>A steel with a strength of one's own, for example a measured one.</summary>
    /// <param name="name">Designation.</param>
    /// <param name="yieldStrength">f_y in MPa, between 60 and 2000.</param>
    /// <param name="elasticModulus">E in MPa, between 50 000 and 500 000.</param>
    /// <exception cref="InputException">No name, or a number outside its range; a wrong unit is named where it shows.</exception>
    public static Steel Custom(string name, double yieldStrength, double elasticModulus = StandardElasticModulus)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new InputException("name", "''", "a designation", "Give the steel a name such as 'measured plate 3'.");
        }

        return new Steel(name, CheckedYield(yieldStrength), CheckedModulus(elasticModulus), "custom");
    }

    private static double CheckedYield(double yieldStrength) => Guard.Within(
        yieldStrength, 60, 2000, "yield strength f_y", "MPa",
        "Give f_y in MPa = N/mm²" + yieldStrength switch
        {
            > 1e7 => "; this looks like N/m² (Pa): divide by 1 000 000.",
            > 2e4 => "; this looks like kN/m² (kPa): divide by 1000.",
            > 10 and < 60 => "; this looks like kN/cm² (times 10) or ksi (times 6.895).",
            > 0 and < 1 => "; this looks like GPa: multiply by 1000.",
            _ => ", for example 355 for S355.",
        });

    private static double CheckedModulus(double elasticModulus) => Guard.Within(
        elasticModulus, 50_000, 500_000, "elastic modulus E", "MPa",
        "Give E in MPa = N/mm²" + elasticModulus switch
        {
            >= 50 and <= 500 => "; this looks like GPa: multiply by 1000.",
            >= 5_000 and < 25_000 => "; this looks like kN/cm²: multiply by 10.",
            >= 25_000 and < 35_000 => "; this looks like ksi: multiply by 6.895.",
            >= 5e10 => "; this looks like N/m² (Pa): divide by 1 000 000.",
            _ => ", 210 000 for structural steel.",
        });
}
