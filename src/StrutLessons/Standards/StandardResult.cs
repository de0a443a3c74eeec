namespace StrutLessons.Standards;

/// <summary>
/// What one rule says about one strut: a resistance, or a refusal where the strut lies outside the rule's scope. Immutable.
/// </summary>
public sealed record StandardResult : IWorked
{
    private readonly Func<IReadOnlyList<WorkedStep>> _slendernessSteps;
    private readonly Func<IReadOnlyList<WorkedStep>> _strengthSteps;

    internal StandardResult(
        StandardRule rule, StandardStrut strut, IReadOnlyList<ScopeCondition> scope, IReadOnlyList<SlendernessValue> slenderness,
        double nominal, IReadOnlyList<SafetyFactor> factors,
        Func<IReadOnlyList<WorkedStep>> slendernessSteps, Func<IReadOnlyList<WorkedStep>> strengthSteps)
    {
        Rule = rule;
        Strut = strut;
        Scope = scope;
        Slenderness = slenderness;
        _slendernessSteps = slendernessSteps;
        _strengthSteps = strengthSteps;
        FirstUnmet = scope.FirstOrDefault(c => c.State == ScopeState.NotMet);
        if (FirstUnmet is null)
        {
            NominalResistance = nominal;
            DesignValues = [.. factors.Select(f => new DesignValue(f, f.Apply(nominal)))];
        }
    }

    /// <summary>The rule.</summary>
    public StandardRule Rule { get; }

    /// <summary>The strut.</summary>
    public StandardStrut Strut { get; }

    /// <summary>Every condition of the rule and how it stands.</summary>
    public IReadOnlyList<ScopeCondition> Scope { get; }

    /// <summary>The slendernesses in the order of the calculation; the last one decides. Given for a refused strut too.</summary>
    public IReadOnlyList<SlendernessValue> Slenderness { get; }

    /// <summary>Resistance before any safety factor, N; null if the rule refuses.</summary>
    public double? NominalResistance { get; }

    /// <summary>Design resistances with their factors; the first is the standard's usual one. Empty if the rule refuses.</summary>
    public IReadOnlyList<DesignValue> DesignValues { get; } = [];

    /// <summary>Design resistance with the standard's usual factor, N; null if the rule refuses.</summary>
    public double? DesignResistance => InScope ? DesignValues[0].Resistance : null;

    /// <summary>Nominal resistance over A f_y; null if the rule refuses.</summary>
    public double? ReductionFactor => NominalResistance / Strut.SquashLoad;

    /// <summary>True if no condition is known to be broken.</summary>
    public bool InScope => FirstUnmet is null;

    /// <summary>Why the rule gives no resistance, as sentences; null if it gives one.</summary>
    public string? Refusal => InScope
        ? null
        : $"{Rule.Name} does not cover this strut. " + string.Join(" ", Scope.Where(c => c.State == ScopeState.NotMet)
            .Select(c => $"{char.ToUpperInvariant(c.Subject[0])}{c.Subject[1..]}: {c.Value}; it must be {c.Limit} ({c.Source}). {c.Advice}"));

    private ScopeCondition? FirstUnmet { get; }

    /// <summary>This result, or an exception where the rule refuses.</summary>
    /// <exception cref="InputException">The strut lies outside the rule's scope; names the first condition that is not met.</exception>
    public StandardResult OrThrow() => FirstUnmet is { } c
        ? throw new InputException(c.Subject, c.Value, $"{c.Limit} for {Rule.Name} ({c.Source})", c.Advice)
        : this;

    /// <summary>Slenderness, strength, nominal and design resistance; a refused strut has the steps up to its slenderness only.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps() => InScope
        ? [.. _slendernessSteps(), .. _strengthSteps(), .. DesignValues.Select(DesignStep)]
        : _slendernessSteps();

    private WorkedStep DesignStep(DesignValue design)
    {
        SafetyFactor f = design.Factor;
        string nominal = Tex.Number(NominalResistance!.Value / 1e3), factor = Tex.Number(f.Value);
        return f.Divides
            ? new($"Design resistance: {f.Name}", f.ResultSymbol, $@"\frac{{{Rule.NominalSymbol}}}{{{f.Symbol}}}", $@"\frac{{{nominal}}}{{{factor}}}", design.Resistance / 1e3, "kN", f.Source)
            : new($"Design resistance: {f.Name}", f.ResultSymbol, $@"{f.Symbol} {Rule.NominalSymbol}", $@"{factor} \cdot {nominal}", design.Resistance / 1e3, "kN", f.Source);
    }
}
