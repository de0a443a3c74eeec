namespace StrutLessons.Notebook.Controls;

/// <summary>
/// Binds controls to a calculation: <c>Live.Of(Slider.Of("Length", 1, 4, step: 0.1, start: 2, "m"), length => Plot.Curve(...))</c>.
/// The calculation returns one value to show, or several in square brackets. It must depend on nothing but its arguments and on
/// what earlier cells defined: it is run again whenever a control moves.
/// </summary>
public static class Live
{
    /// <summary>One control, one value to show.</summary>
    public static LiveView Of<T>(Control<T> control, Func<T, object> show) => Of(control, at => [show(at)]);

    /// <summary>One control, several values to show.</summary>
    public static LiveView Of<T>(Control<T> control, Func<T, object[]> show)
    {
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(show);
        return new([control], places => show(control.At(places[0])));
    }

    /// <summary>Two controls, one value to show.</summary>
    public static LiveView Of<T1, T2>(Control<T1> first, Control<T2> second, Func<T1, T2, object> show) =>
        Of(first, second, (a, b) => [show(a, b)]);

    /// <summary>Two controls, several values to show.</summary>
    public static LiveView Of<T1, T2>(Control<T1> first, Control<T2> second, Func<T1, T2, object[]> show)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(show);
        return new([first, second], places => show(first.At(places[0]), second.At(places[1])));
    }

    /// <summary>Three controls, several values to show.</summary>
    public static LiveView Of<T1, T2, T3>(Control<T1> first, Control<T2> second, Control<T3> third, Func<T1, T2, T3, object[]> show)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(third);
        ArgumentNullException.ThrowIfNull(show);
        return new([first, second, third], places => show(first.At(places[0]), second.At(places[1]), third.At(places[2])));
    }

    /// <summary>Three controls, one value to show.</summary>
    public static LiveView Of<T1, T2, T3>(Control<T1> first, Control<T2> second, Control<T3> third, Func<T1, T2, T3, object> show) =>
        Of(first, second, third, (a, b, c) => [show(a, b, c)]);
}
