using StrutLessons.Standards;

namespace StrutLessons.Studies;

/// <summary>A result that a study may ask for: its name, unit and meaning. Immutable.</summary>
public sealed record StudyQuantity
{
    internal StudyQuantity(string name, string unit, string description, StudyAnalyses needs, Func<StudyResult, double> number)
    {
        (Name, Unit, Description, Needs, Number) = (name, unit, description, needs, number);
    }

    private StudyQuantity(string name, string description, StudyAnalyses needs, Func<StudyResult, string> word)
    {
        (Name, Unit, Description, Needs, Word) = (name, "", description, needs, word);
    }

    /// <summary>System length.</summary>
    public static StudyQuantity Length { get; } = new("length", "mm", "system length from hinge to hinge", StudyAnalyses.Strut, r => r.Length);

    /// <summary>Relative slenderness λ̄_v.</summary>
    public static StudyQuantity Slenderness { get; } = new("relative slenderness", "-", "relative slenderness about v-v on the system length", StudyAnalyses.Strut, r => r.Slenderness);

    /// <summary>A f_y.</summary>
    public static StudyQuantity SquashLoad { get; } = new("squash load", "kN", "area times yield strength", StudyAnalyses.Strut, r => r.SquashLoad / 1e3);

    /// <summary>Spring of the joint against rotation out of the plane of the gusset.</summary>
    public static StudyQuantity Spring { get; } = new("spring", "kNm/rad", "spring of the joint out of the plane of the gusset; 0 for a hinge, no value for a rigid end", StudyAnalyses.Strut, r => r.Spring / 1e6);

    /// <summary>From the first bolt back to the hinge.</summary>
    public static StudyQuantity HingeDistance { get; } = new("hinge distance", "mm", "from the first bolt back to the hinge of the joint", StudyAnalyses.Strut, r => r.Arm);

    /// <summary>Eccentricity along u–u.</summary>
    public static StudyQuantity EccentricityU { get; } = new("eccentricity u", "mm", "load point from the centroid along u-u; bends the strut about v-v", StudyAnalyses.Strut, r => r.EccentricityU);

    /// <summary>Eccentricity along v–v.</summary>
    public static StudyQuantity EccentricityV { get; } = new("eccentricity v", "mm", "load point from the centroid along v-v; bends the strut about u-u", StudyAnalyses.Strut, r => r.EccentricityV);

    /// <summary>N_cr.</summary>
    public static StudyQuantity CriticalLoad { get; } = new("critical load", "kN", "elastic critical load with the springs", StudyAnalyses.Capacity, r => r.CriticalLoad / 1e3);

    /// <summary>N_R.</summary>
    public static StudyQuantity Capacity { get; } = new("capacity", "kN", "load at first yield, second-order theory, lowest of the bows", StudyAnalyses.Capacity, r => r.Capacity / 1e3);

    /// <summary>N_R with the bow u+.</summary>
    public static StudyQuantity CapacityPlus { get; } = new("capacity u+", "kN", "capacity with the bow along u-u to the heel side", StudyAnalyses.Capacity, r => r.CapacityPlus / 1e3);

    /// <summary>N_R with the bow u−.</summary>
    public static StudyQuantity CapacityMinus { get; } = new("capacity u-", "kN", "capacity with the bow along u-u away from the heel", StudyAnalyses.Capacity, r => r.CapacityMinus / 1e3);

    /// <summary>χ = N_R/(A f_y).</summary>
    public static StudyQuantity ReductionFactor { get; } = new("reduction factor", "-", "capacity over squash load", StudyAnalyses.Capacity, r => r.Capacity / r.SquashLoad);

    /// <summary>N_R/N_cr.</summary>
    public static StudyQuantity ShareOfCriticalLoad { get; } = new("share of critical load", "-", "capacity over critical load", StudyAnalyses.Capacity, r => r.Capacity / r.CriticalLoad);

    /// <summary>The bow that governs.</summary>
    public static StudyQuantity GoverningBow { get; } = new("governing bow", "the bow with the lowest capacity", StudyAnalyses.Capacity, r => r.Bow);

    /// <summary>What stopped the load.</summary>
    public static StudyQuantity Reason { get; } = new("reason", "what stopped the load: compression, tension or bifurcation", StudyAnalyses.Capacity, r => r.Reason);

    /// <summary>The corner that yields.</summary>
    public static StudyQuantity Corner { get; } = new("corner", "the corner that yields first", StudyAnalyses.Capacity, r => r.Corner);

    /// <summary>Capacity with hinged ends.</summary>
    public static StudyQuantity Hinged { get; } = new("hinged capacity", "kN", "capacity of the same strut with hinges in place of the springs", StudyAnalyses.Limits, r => r.Hinged / 1e3);

    /// <summary>Capacity with rigid ends.</summary>
    public static StudyQuantity Rigid { get; } = new("rigid capacity", "kN", "capacity of the same strut with rigid ends in place of the springs", StudyAnalyses.Limits, r => r.Rigid / 1e3);

    /// <summary>Capacity with roll.</summary>
    public static StudyQuantity WithRoll { get; } = new("capacity with roll", "kN", "load at first yield of the linearised strut that may roll", StudyAnalyses.Roll, r => r.WithRoll / 1e3);

    /// <summary>Peak load of the nonlinear reference.</summary>
    public static StudyQuantity Reference { get; } = new("reference", "kN", "peak load of the nonlinear reference analysis, bow L/1000 of either sign, usual residual stress; slow", StudyAnalyses.Reference, r => r.Reference / 1e3);

    /// <summary>All quantities, with one for each rule of a standard.</summary>
    public static IReadOnlyList<StudyQuantity> All { get; } =
    [
        Length, Slenderness, SquashLoad, Spring, HingeDistance, EccentricityU, EccentricityV, CriticalLoad, Capacity, CapacityPlus, CapacityMinus, ReductionFactor,
        ShareOfCriticalLoad, GoverningBow, Reason, Corner, Hinged, Rigid, WithRoll, Reference,
        .. RuleChoice.All.Select(Nominal),
    ];

    /// <summary>What a study finds unless told otherwise.</summary>
    public static IReadOnlyList<StudyQuantity> Usual { get; } = [Length, Slenderness, Spring, CriticalLoad, Capacity, GoverningBow, Reason];

    /// <summary>Name, for example <c>critical load</c>.</summary>
    public string Name { get; }

    /// <summary>Unit; "-" for a pure number, empty for words.</summary>
    public string Unit { get; }

    /// <summary>What it is.</summary>
    public string Description { get; }

    /// <summary>True if its values are numbers.</summary>
    public bool IsNumber => Number is not null;

    internal StudyAnalyses Needs { get; }

    internal Func<StudyResult, double>? Number { get; }

    internal Func<StudyResult, string>? Word { get; }

    /// <summary>The rule whose resistance this is; none for other quantities.</summary>
    internal RuleChoice? Rule { get; private init; }

    /// <summary>Nominal resistance by a rule of a standard; no value where the rule refuses.</summary>
    /// <param name="key">A key of <see cref="RuleChoice.All"/>, for example <c>EN BB.1.2</c>.</param>
    /// <exception cref="InputException">No such rule.</exception>
    public static StudyQuantity Standard(string key) => Find(RuleChoice.Pick(key)[0].Key);

    /// <summary>The quantity of this name; the resistance by a standard has its rule's key for a name.</summary>
    /// <exception cref="InputException">No quantity has that name.</exception>
    public static StudyQuantity Find(string name) => All.FirstOrDefault(q => q.Name == name)
        ?? throw new InputException("quantity", $"'{name}'", "one of " + string.Join(", ", All.Select(q => q.Name)), "Choose one of these names.");

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    private static StudyQuantity Nominal(RuleChoice rule) =>
        new(rule.Key, "kN", $"nominal resistance by the rule {rule.Key}; no value where the rule refuses", StudyAnalyses.Strut, r => r.Nominal(rule) / 1e3) { Rule = rule };
}
