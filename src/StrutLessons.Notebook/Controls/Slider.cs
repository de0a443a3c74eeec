namespace StrutLessons.Notebook.Controls;

/// <summary>A number within a range, dragged or typed: <c>Slider.Of("Gusset thickness", 4, 20, step: 1, start: 10, "mm")</c>.</summary>
public sealed record Slider : Control<double>
{
    private Slider(string label, double from, double to, double step, double start, string unit, ControlKind kind) : base(label, unit, kind)
    {
        (Range, Interval, Start) = ((from, to), step, start);
    }

    /// <inheritdoc/>
    public override double Start { get; }

    /// <inheritdoc/>
    public override (double From, double To) Range { get; }

    /// <inheritdoc/>
    public override double Interval { get; }

    /// <summary>A control that is dragged.</summary>
    /// <param name="label">What moves.</param>
    /// <param name="from">Smallest value.</param>
    /// <param name="to">Largest value.</param>
    /// <param name="step">Distance between two values; at most 1000 of them fit between the ends.</param>
    /// <param name="start">Value at first.</param>
    /// <param name="unit">Unit; empty for a pure number.</param>
    /// <exception cref="InputException">An empty range, a step that does not fit, a start outside the range.</exception>
    public static Slider Of(string label, double from, double to, double step, double start, string unit = "") =>
        Make(label, from, to, step, start, unit, ControlKind.Slider);

    /// <summary>The same range as a field for typing; <paramref name="step"/> is what the arrow keys add.</summary>
    /// <inheritdoc cref="Of"/>
    public static Slider Typed(string label, double from, double to, double step, double start, string unit = "") =>
        Make(label, from, to, step, start, unit, ControlKind.Number);

    internal override double At(double place) => Checked(place);

    private static Slider Make(string label, double from, double to, double step, double start, string unit, ControlKind kind)
    {
        if (!(double.IsFinite(from) && double.IsFinite(to) && to > from))
        {
            throw new InputException($"range of '{label}'", $"{from} to {to}", "a rising interval", "Give the smaller end first.");
        }
        var steps = (to - from) / step;
        if (!(step > 0 && steps <= 1000 && Math.Abs(steps - Math.Round(steps)) < 1e-6))
        {
            throw new InputException($"step of '{label}'", $"{step} {unit}".TrimEnd(), $"a part of {to - from} that fits a whole number of times, 1000 at most", "Choose another step or another end.");
        }
        return start >= from && start <= to
            ? new(label, from, to, step, start, unit, kind)
            : throw new InputException($"start of '{label}'", $"{start} {unit}".TrimEnd(), $"between {from} and {to}", "Start inside the range.");
    }
}
