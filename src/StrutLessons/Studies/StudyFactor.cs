using System.Collections.Immutable;

namespace StrutLessons.Studies;

/// <summary>A variable with the values it takes in a study: a list of numbers or words, or everything between two numbers. Immutable.</summary>
public sealed record StudyFactor
{
    private readonly ImmutableArray<object> words;

    private StudyFactor(StudyVariable variable, ImmutableArray<double> numbers, ImmutableArray<string> names, ImmutableArray<object> words, bool isInterval)
    {
        (Variable, Numbers, Names, IsInterval) = (variable, numbers, names, isInterval);
        this.words = words;
    }

    /// <summary>What varies.</summary>
    public StudyVariable Variable { get; }

    /// <summary>The numbers in their order, or the two ends of an interval; empty for words.</summary>
    public ImmutableArray<double> Numbers { get; }

    /// <summary>The words in their order; empty for numbers.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>True if any number between the two ends may come: for sampling.</summary>
    public bool IsInterval { get; }

    /// <summary>How many values the list has.</summary>
    public int Count => Variable.IsNumber ? Numbers.Length : Names.Length;

    internal static StudyFactor Of(StudyVariable variable, IReadOnlyList<double> values)
    {
        if (!variable.IsNumber)
        {
            throw new InputException(variable.Name, "numbers", "words", "Give words in quotes.");
        }

        return values.Count > 0 && values.All(double.IsFinite)
            ? new(variable, [.. values], [], [], false)
            : throw new InputException(variable.Name, values.Count == 0 ? "no value" : "a value that is not finite", "at least one finite number", "Give the values it shall take.");
    }

    internal static StudyFactor Of(StudyVariable variable, IReadOnlyList<string> values) => values.Count > 0
        ? new(variable, [], [.. values], [.. values.Select(variable.Read)], false)
        : throw new InputException(variable.Name, "no value", "at least one word", "Give the values it shall take.");

    internal static StudyFactor Between(StudyVariable variable, double from, double to) =>
        variable.IsNumber && double.IsFinite(from) && double.IsFinite(to) && to > from
            ? new(variable, [from, to], [], [], true)
            : throw new InputException(variable.Name, $"{Guard.Text(from)} to {Guard.Text(to)}", "a rising interval of a number", "Give the smaller end first; words need a list.");

    /// <summary>Place of a value for a share between 0 and 1: a number of the interval, or the list's index.</summary>
    internal double At(double share) => IsInterval
        ? Numbers[0] + share * (Numbers[1] - Numbers[0])
        : Math.Min((int)(share * Count), Count - 1);

    /// <summary>Puts a value into a case: its index in the list, or a number of the interval.</summary>
    internal StudyStrut Put(in StudyStrut strut, double at) => IsInterval ? Variable.Put(strut, at)
        : Variable.IsNumber ? Variable.Put(strut, Numbers[(int)at])
        : Variable.Put(strut, words[(int)at]);
}
