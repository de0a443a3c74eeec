namespace StrutLessons.Standards;

/// <summary>One condition under which a rule holds.</summary>
/// <param name="Subject">What is limited, in words.</param>
/// <param name="Value">The strut's value with its unit; empty for an assumption.</param>
/// <param name="Limit">What it must be, in words that follow "must be".</param>
/// <param name="State">Met, not met, or assumed.</param>
/// <param name="Advice">What to do where it is not met, as a sentence.</param>
/// <param name="Source">Clause, with the words "from memory" where the text was not seen.</param>
public sealed record ScopeCondition(string Subject, string Value, string Limit, ScopeState State, string Advice, string Source)
{
    internal static ScopeCondition AtMost(string subject, double value, string unit, double limit, string advice, string source) =>
        new(subject, Text(value, unit), $"at most {Text(limit, unit)}", value <= limit ? ScopeState.Met : ScopeState.NotMet, advice, source);

    internal static ScopeCondition Below(string subject, double value, string unit, double limit, string advice, string source) =>
        new(subject, Text(value, unit), $"less than {Text(limit, unit)}", value < limit ? ScopeState.Met : ScopeState.NotMet, advice, source);

    internal static ScopeCondition TwoBolts(StandardStrut strut, string advice, string source) =>
        new("fasteners at each end", strut.Fasteners, "two bolts or more, or a weld", strut.OneBolt ? ScopeState.NotMet : ScopeState.Met, advice, source);

    internal static ScopeCondition Assumed(string text, string source) =>
        new(text, "", "so, which the numbers cannot show", ScopeState.Assumed, "Check it on the drawing.", source);

    private static string Text(double value, string unit) => Guard.Text(value) + (unit.Length == 0 ? "" : " " + unit);
}
