namespace StrutLessons.Standards;

/// <summary>Angles in compression after EN 1993-1-1:2005: 6.3.1 alone, and with the effective slenderness of Annex BB.1.2.</summary>
public static class En1993
{
    private const double ElasticModulus = 210_000;

    private static readonly StandardRule Concentric = new(
        "EN 1993-1-1, concentric", "EN 1993-1-1", "2005", "6.3.1 with buckling curve b", ElasticModulus, "N_{b,Rk}");

    private static readonly StandardRule WebMember = new(
        "EN 1993-1-1, BB.1.2", "EN 1993-1-1", "2005", "BB.1.2 with buckling curve b", ElasticModulus, "N_{b,Rk}");

    /// <summary>
    /// Flexural buckling of a concentrically loaded strut on its system length. It knows neither eccentricity nor restraint:
    /// the eccentricity needs 6.3.3 in addition.
    /// </summary>
    /// <param name="strut">The strut.</param>
    public static StandardResult ConcentricStrut(StandardStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        return EnColumn.Result(Concentric, strut,
            [
                Grade(strut),
                ScopeCondition.Assumed("the force acts in the centroid; an eccentricity is dealt with by 6.3.3", "EN 1993-1-1:2005, 6.3.1"),
            ],
            EffectiveSlenderness.Unchanged, EffectiveSlenderness.Unchanged, EffectiveSlenderness.Unchanged);
    }

    /// <summary>
    /// Angles as web members: λ̄_eff,v = 0.35 + 0.7 λ̄_v, λ̄_eff,y = 0.50 + 0.7 λ̄_y, λ̄_eff,z = 0.50 + 0.7 λ̄_z; the eccentricity is
    /// contained in them. The first lowers the slenderness above λ̄_v = 1.167, the others above 1.667.
    /// </summary>
    /// <param name="strut">The strut.</param>
    public static StandardResult WebMemberStrut(StandardStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        return EnColumn.Result(WebMember, strut,
            [
                Grade(strut),
                ScopeCondition.TwoBolts(strut, "With one bolt the eccentricity is taken by 6.2.9 and the buckling length is the system length (from memory).", "EN 1993-1-1:2005, BB.1.2(1)"),
                ScopeCondition.Assumed("the chords hold the ends in position and against turning, and the ends are connected to them suitably", "EN 1993-1-1:2005, BB.1.2(1)"),
            ],
            new(0.35, 0.7), new(0.50, 0.7), new(0.50, 0.7));
    }

    private static ScopeCondition Grade(StandardStrut strut) => ScopeCondition.AtMost(
        "yield strength", strut.YieldStrength, "MPa", 460, "Table 6.2 gives curve b for S235 to S460 only.", "EN 1993-1-1:2005, Table 6.2");
}
