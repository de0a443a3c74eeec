using System.Collections.Immutable;

namespace StrutLessons.Notebook.Controls;

/// <summary>One of a few things with names: <c>Choice.Of("Bow", ("to the heel", heel), ("to the toes", toes))</c>.</summary>
public static class Choice
{
    /// <summary>A choice; the first option is taken at first.</summary>
    /// <exception cref="InputException">Fewer than two options, or two with one name.</exception>
    public static Choice<T> Of<T>(string label, params IReadOnlyList<(string Name, T Value)> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return options.Count > 1 && options.Select(option => option.Name).Distinct().Count() == options.Count
            ? new(label, [.. options])
            : throw new InputException($"options of '{label}'", string.Join(", ", options.Select(option => option.Name)), "two or more, each with a name of its own", "Name what the reader may choose.");
    }

    /// <summary>A choice between words that are their own names.</summary>
    /// <exception cref="InputException">Fewer than two words, or one of them twice.</exception>
    public static Choice<string> OfWords(string label, params IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return Of(label, [.. words.Select(word => (word, word))]);
    }
}

/// <summary>A control that offers things by name.</summary>
/// <typeparam name="T">Type of the things.</typeparam>
public sealed record Choice<T> : Control<T>
{
    internal Choice(string label, ImmutableArray<(string Name, T Value)> options) : base(label, "", ControlKind.Choice)
    {
        Options = options;
    }

    /// <summary>Names and things.</summary>
    public ImmutableArray<(string Name, T Value)> Options { get; }

    /// <inheritdoc/>
    public override double Start => 0;

    /// <inheritdoc/>
    public override (double From, double To) Range => (0, Options.Length - 1);

    /// <inheritdoc/>
    public override double Interval => 1;

    /// <inheritdoc/>
    public override string Words(double place) =>
        place >= 0 && place < Options.Length ? Options[(int)place].Name : $"option {place}";

    internal override T At(double place) => Options[(int)Checked(place)].Value;
}
