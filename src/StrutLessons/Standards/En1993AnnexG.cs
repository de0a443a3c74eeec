namespace StrutLessons.Standards;

/// <summary>
/// Bracing angles of towers and masts, EN 1993-3-1:2006, Annex G, Table G.2, both ends discontinuous. Written down from memory:
/// a curiosity beside BB.1.2, not a source.
/// </summary>
public static class En1993AnnexG
{
    private static readonly StandardRule Rule = new(
        "EN 1993-3-1, Annex G (from memory)", "EN 1993-3-1", "2006", "Annex G, Table G.2", 210_000, "N_{b,Rk}", FromMemory: true);

    /// <summary>
    /// λ̄_eff = k λ̄ with k = 0.7 + 0.35/λ̄_v about v–v and 0.7 + 0.40/λ̄ (one bolt: 0.58) about the axes of the legs; one bolt at
    /// each end also takes 0.8 of the resistance. About v–v this is BB.1.2 again.
    /// </summary>
    /// <param name="strut">The strut.</param>
    public static StandardResult Bracing(StandardStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        EffectiveSlenderness leg = new(strut.OneBolt ? 0.58 : 0.40, 0.7);
        return EnColumn.Result(Rule, strut,
            [ScopeCondition.Assumed("the strut braces a tower or a mast and ends at both nodes", Rule.Citation)],
            new(0.35, 0.7), leg, leg, strut.OneBolt ? 0.8 : 1);
    }
}
