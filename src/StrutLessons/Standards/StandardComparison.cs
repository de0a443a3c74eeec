using StrutLessons.Capacity;
using StrutLessons.Member;

namespace StrutLessons.Standards;

/// <summary>
/// One strut seen by every rule and by the spring model. The rules know section, steel, length and number of bolts; the model also
/// knows where the force acts and how the gusset holds the end.
/// </summary>
public sealed record StandardComparison
{
    private StandardComparison(Strut model, IReadOnlyList<StandardResult> results)
    {
        Model = model;
        Results = results;
        Hinged = StrutCapacity.LoadOf(model.WithSprings(EndSpring.Hinged));
        Real = StrutCapacity.LoadOf(model);
        Rigid = StrutCapacity.LoadOf(model.WithSprings(EndSpring.Rigid));
        CriticalLoad = Member.CriticalLoad.Of(model);
    }

    /// <summary>The strut of the spring model.</summary>
    public Strut Model { get; }

    /// <summary>What each rule says, in the order of the rules.</summary>
    public IReadOnlyList<StandardResult> Results { get; }

    /// <summary>Capacity of the model with hinged ends, N.</summary>
    public double Hinged { get; }

    /// <summary>Capacity of the model with its own springs, N.</summary>
    public double Real { get; }

    /// <summary>Capacity of the model with rigid ends, N.</summary>
    public double Rigid { get; }

    /// <summary>Elastic critical load of the model with its own springs, N.</summary>
    public double CriticalLoad { get; }

    /// <summary>Collapse load of the nonlinear reference analysis, N, where somebody has run it.</summary>
    public double? Reference { get; init; }

    /// <summary>Nominal resistance of a rule over the capacity of the model with its own springs; null where the rule refuses.</summary>
    public double? RatioToModel(StandardResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.NominalResistance / Real;
    }

    /// <summary>The comparison on the strut's system length.</summary>
    /// <param name="strut">The strut of the spring model.</param>
    /// <param name="boltsPerEnd">Bolts at each end; 0 for a weld.</param>
    /// <param name="rules">The rules; all of <see cref="RuleChoice.All"/> unless chosen.</param>
    /// <exception cref="InputException">The strut's length is out of the range of <see cref="StandardStrut"/>.</exception>
    public static StandardComparison Of(Strut strut, int boltsPerEnd = 2, IReadOnlyList<RuleChoice>? rules = null)
    {
        ArgumentNullException.ThrowIfNull(strut);
        var standard = new StandardStrut(strut.Section, strut.Steel, strut.SystemLength, boltsPerEnd);
        return new(strut, [.. (rules ?? RuleChoice.All).Select(r => r.Apply(standard))]);
    }
}
