using StrutLessons.Notebook.Maths;
using StrutLessons.Standards;

namespace StrutLessons.Notebook.Tables;

/// <summary>Tables of what design standards say.</summary>
public static class StandardTables
{
    /// <summary>Every rule in one table: nominal and design resistance apart, the factor between them, and the share of the spring model.</summary>
    public static Table Resistances(StandardComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return Table.Of($"Resistances, {comparison.Model.Section}, {Figures.Text(comparison.Model.SystemLength / 1e3)} m",
                "rule", "clause", "$E$ (GPa)", "slenderness (–)", "nominal (kN)", "factor", "design (kN)", "nominal over model (–)")
            .For(comparison.Results, r => r.InScope
                ? [r.Rule.Name, r.Rule.Clause, r.Rule.ElasticModulus / 1e3, r.Slenderness[^1].Value, r.NominalResistance!.Value / 1e3, Factor(r.DesignValues[0].Factor), r.DesignResistance!.Value / 1e3, Math.Round(comparison.RatioToModel(r)!.Value, 2)]
                : [r.Rule.Name, r.Rule.Clause, r.Rule.ElasticModulus / 1e3, r.Slenderness[^1].Value, double.NaN, "refused", double.NaN, double.NaN]);
    }

    /// <summary>The conditions of one rule and how they stand for its strut.</summary>
    public static Table Scope(StandardResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table.Of($"Scope of {result.Rule.Name}", "condition", "this strut", "must be", "met?", "source")
            .For(result.Scope, c => [c.Subject, c.Value, c.State == ScopeState.Assumed ? "" : c.Limit, Word(c.State), c.Source]);
    }

    private static string Factor(SafetyFactor factor) => $"${factor.Symbol}$ = {Figures.Text(factor.Value)}";

    private static string Word(ScopeState state) => state switch { ScopeState.Met => "yes", ScopeState.NotMet => "no", _ => "you must know" };
}
