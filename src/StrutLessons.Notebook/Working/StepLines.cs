using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Working;

/// <summary>The right-hand sides of a step, one below the other: formula, formula with numbers, value with unit.</summary>
internal static class StepLines
{
    /// <summary>The formula in symbols, or nothing for a given value.</summary>
    internal static IEnumerable<string> Formula(WorkedStep step) => Filled(step.Formula);

    /// <summary>What a reader should find alone when asked: the numbers put in, and the value.</summary>
    internal static IEnumerable<string> Result(WorkedStep step) =>
        Filled(step.Numbers == step.Formula ? "" : step.Numbers).Append(Value(step));

    /// <summary>The value with its unit, in TeX.</summary>
    internal static string Value(WorkedStep step) =>
        step.Unit.Length == 0 ? Figures.Tex(step.Value) : $@"{Figures.Tex(step.Value)}\,{UnitTex(step.Unit)}";

    /// <summary>A unit set upright, with its exponents: <c>kNm/rad</c>, <c>mm²</c>, <c>N/mm^2</c>, °.</summary>
    internal static string UnitTex(string unit)
    {
        string text = unit.Replace("²", "^{2}", StringComparison.Ordinal).Replace("³", "^{3}", StringComparison.Ordinal)
            .Replace("⁴", "^{4}", StringComparison.Ordinal).Replace("⁶", "^{6}", StringComparison.Ordinal)
            .Replace("⁻", "^{-}", StringComparison.Ordinal).Replace("¹", "^{1}", StringComparison.Ordinal)
            .Replace("%", @"\%", StringComparison.Ordinal).Replace("°", @"^{\circ}", StringComparison.Ordinal)
            .Replace("·", @"\cdot ", StringComparison.Ordinal).Replace(" ", @"\,", StringComparison.Ordinal);
        return $@"\mathrm{{{text}}}";
    }

    private static IEnumerable<string> Filled(string tex) => string.IsNullOrWhiteSpace(tex) ? [] : [tex];
}
