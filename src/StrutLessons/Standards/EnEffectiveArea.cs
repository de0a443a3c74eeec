namespace StrutLessons.Standards;

/// <summary>
/// Effective area of an angle in uniform compression: class limits of EN 1993-1-1:2005 Table 5.2 sheet 3 and, beyond them, the
/// reduction of EN 1993-1-5:2006, 4.4 (all constants from memory).
/// </summary>
/// <remarks>
/// Sources differ on the width: EN 1993-1-5 takes the whole leg h, EN 1993-3-1 the part h − 2t. Here it is h, which reduces more.
/// </remarks>
public sealed record EnEffectiveArea
{
    private EnEffectiveArea(StandardSection section, double yieldStrength)
    {
        Gross = section.Area;
        Epsilon = Math.Sqrt(235 / yieldStrength);
        LegSlenderness = section.LongLeg / section.Thickness;
        MeanLegSlenderness = (section.LongLeg + section.ShortLeg) / (2 * section.Thickness);
        IsClass4 = LegSlenderness > 15 * Epsilon || MeanLegSlenderness > 11.5 * Epsilon;
        LongLeg = LegReduction(section.LongLeg / section.Thickness);
        ShortLeg = LegReduction(section.ShortLeg / section.Thickness);
        Area = Gross - section.Thickness * ((1 - LongLeg) * section.LongLeg + (1 - ShortLeg) * section.ShortLeg);
    }

    /// <summary>Gross area A, mm².</summary>
    public double Gross { get; }

    /// <summary>ε = √(235/f_y).</summary>
    public double Epsilon { get; }

    /// <summary>h/t of the longer leg; class 3 up to 15 ε.</summary>
    public double LegSlenderness { get; }

    /// <summary>(b + h)/(2t); class 3 up to 11.5 ε.</summary>
    public double MeanLegSlenderness { get; }

    /// <summary>True beyond one of the two limits of class 3.</summary>
    public bool IsClass4 { get; }

    /// <summary>ρ of the longer leg; 1 where nothing is lost.</summary>
    public double LongLeg { get; }

    /// <summary>ρ of the shorter leg.</summary>
    public double ShortLeg { get; }

    /// <summary>A_eff, mm²; the gross area if the section is not class 4, or if both legs keep ρ = 1.</summary>
    public double Area { get; }

    /// <summary>The effective area of a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="yieldStrength">f_y, MPa, between 60 and 2000.</param>
    /// <exception cref="InputException">The yield strength is out of range.</exception>
    public static EnEffectiveArea Of(StandardSection section, double yieldStrength)
    {
        ArgumentNullException.ThrowIfNull(section);
        return new(section, Guard.Within(yieldStrength, 60, 2000, "yield strength f_y", "MPa", "Give f_y in MPa = N/mm², for example 355."));
    }

    // Outstand element with k_σ = 0.43.
    private double LegReduction(double widthToThickness)
    {
        double plate = widthToThickness / (28.4 * Epsilon * Math.Sqrt(0.43));
        return IsClass4 && plate > 0.748 ? Math.Min(1, (plate - 0.188) / (plate * plate)) : 1;
    }
}
