using System.Collections.Immutable;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Controls;

/// <summary>One input beside a live view: a slider, a number field or a choice. Its place is a number: a value, or the index of a choice.</summary>
public abstract record Control
{
    private protected Control(string label, string unit, ControlKind kind)
    {
        Label = string.IsNullOrWhiteSpace(label)
            ? throw new InputException("label of a control", "''", "some words", "Say what moves, for example \"Gusset thickness\".")
            : label;
        Unit = unit;
        Kind = kind;
    }

    /// <summary>What moves, in words.</summary>
    public string Label { get; }

    /// <summary>Unit of the value; empty for a pure number or a choice.</summary>
    public string Unit { get; }

    /// <summary>How the reader sets it.</summary>
    public ControlKind Kind { get; }

    /// <summary>Where it stands at first.</summary>
    public abstract double Start { get; }

    /// <summary>Smallest and largest place.</summary>
    public abstract (double From, double To) Range { get; }

    /// <summary>Distance between two places.</summary>
    public abstract double Interval { get; }

    /// <summary>Every place, from the first to the last.</summary>
    internal ImmutableArray<double> Places =>
        [.. Enumerable.Range(0, (int)Math.Round((Range.To - Range.From) / Interval) + 1).Select(i => Tidy(Range.From + i * Interval))];

    /// <summary>A place in words, with its unit: <c>10 mm</c>.</summary>
    public virtual string Words(double place) => Unit.Length == 0 ? Figures.Text(place) : $"{Figures.Text(place)} {Unit}";

    /// <summary>The place if it lies in the range.</summary>
    /// <exception cref="InputException">Outside the range, or not a number.</exception>
    internal virtual double Checked(double place) => place >= Range.From - 1e-9 * Interval && place <= Range.To + 1e-9 * Interval
        ? place
        : throw new InputException(Label, Words(place), $"between {Words(Range.From)} and {Words(Range.To)}", "Choose a value in this range.");

    /// <summary>Sums of steps such as 0.1 + 0.2 are rounded to what the reader set.</summary>
    private static double Tidy(double value) => Math.Round(value, 10);
}

/// <summary>A control with a value of a certain type.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public abstract record Control<T> : Control
{
    private protected Control(string label, string unit, ControlKind kind) : base(label, unit, kind)
    {
    }

    /// <summary>The value at a place.</summary>
    internal abstract T At(double place);
}

/// <summary>How a reader sets a control.</summary>
public enum ControlKind
{
    /// <summary>By dragging.</summary>
    Slider,

    /// <summary>By typing.</summary>
    Number,

    /// <summary>By choosing from a list.</summary>
    Choice,
}
