namespace StrutLessons;

/// <summary>
/// One line of a worked calculation, made on demand from the values the calculation used.
/// Symbol, formula and numbers are TeX mathematics without delimiters.
/// </summary>
/// <param name="Title">What is found, in a few words.</param>
/// <param name="Symbol">The quantity's symbol, for example <c>c_y</c>.</param>
/// <param name="Formula">The formula in symbols; empty for a given value.</param>
/// <param name="Numbers">The formula with numbers put in; empty for a given value.</param>
/// <param name="Value">The value that the calculation used, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit in which a person reads it (mm, kN, MPa, kNm/rad, …); empty for a pure number.</param>
/// <param name="Source">Where the formula comes from: book, clause, or the words "from memory", "common practice", "definition".</param>
public sealed record WorkedStep(
    string Title, string Symbol, string Formula, string Numbers, double Value, string Unit, string Source);

/// <summary>A result that can list how it was found.</summary>
public interface IWorked
{
    /// <summary>The steps in the order of the calculation; built when asked for.</summary>
    IReadOnlyList<WorkedStep> WorkedSteps();
}
