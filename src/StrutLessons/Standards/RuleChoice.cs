namespace StrutLessons.Standards;

/// <summary>A rule with its choices made, ready to be applied to any strut.</summary>
/// <param name="Key">Short word to pick it by.</param>
/// <param name="Apply">The rule.</param>
public sealed record RuleChoice(string Key, Func<StandardStrut, StandardResult> Apply)
{
    /// <summary>All rules of this folder with the choices that suit a strut bolted by one leg at both ends.</summary>
    public static IReadOnlyList<RuleChoice> All { get; } =
    [
        new("EN concentric", En1993.ConcentricStrut),
        new("EN BB.1.2", En1993.WebMemberStrut),
        new("EN Annex G", En1993AnnexG.Bracing),
        new("AISC a", s => Aisc360.SingleAngle(s, Aisc360Truss.Planar)),
        new("AISC b", s => Aisc360.SingleAngle(s, Aisc360Truss.Space)),
        new("ASCE restrained", s => Asce10.Bracing(s, Asce10Restraint.BothEnds)),
        new("ASCE unrestrained", s => Asce10.Bracing(s, Asce10Restraint.None)),
        new("IS fixed", s => Is800.SingleAngle(s, 1)),
        new("IS hinged", s => Is800.SingleAngle(s, 0)),
        new("BS", Bs5950.SingleAngle),
        new("AS", As4100.WebMember),
    ];

    /// <summary>The rules with these keys, in their order.</summary>
    /// <exception cref="InputException">An unknown key; the message lists all.</exception>
    public static IReadOnlyList<RuleChoice> Pick(params IReadOnlyList<string> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        return [.. keys.Select(k => All.FirstOrDefault(r => r.Key == k) ?? throw new InputException(
            "rule", $"'{k}'", "one of " + string.Join(", ", All.Select(r => r.Key)), "Choose one of these keys."))];
    }
}
