using System.Collections.Immutable;

namespace StrutLessons.Notebook.Controls;

/// <summary>
/// A calculation with controls. Where a kernel listens, moving a control runs the calculation again. Elsewhere (a written page, a
/// Jupyter front end) the view is shown as <see cref="LiveFrames">frames</see> made beforehand.
/// </summary>
public sealed record LiveView : IShown
{
    private readonly Func<IReadOnlyList<double>, object[]> _show;

    internal LiveView(ImmutableArray<Control> controls, Func<IReadOnlyList<double>, object[]> show)
    {
        Controls = controls;
        _show = show;
    }

    /// <summary>The controls, in the order of the calculation's arguments.</summary>
    public ImmutableArray<Control> Controls { get; }

    /// <summary>Where the controls stand at first.</summary>
    public ImmutableArray<double> Start => [.. Controls.Select(control => control.Start)];

    /// <summary>The values to show when the controls stand at these places.</summary>
    /// <exception cref="InputException">Not one place for each control, or a place outside its range; or from the calculation.</exception>
    public IReadOnlyList<object> At(IReadOnlyList<double> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        return places.Count == Controls.Length
            ? _show(places)
            : throw new InputException("places of the controls", $"{places.Count} numbers", $"{Controls.Length}, one for each control", "Send the places of all controls.");
    }

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() => Shown(Cells.NewName("live"));

    /// <summary>The view as frames, under a name that is unique on its page.</summary>
    public IReadOnlyList<ShownPart> Shown(string name) => [new("text/html", LiveFrames.Html(this, name)), new("text/plain", ToString())];

    /// <summary>Controls and values at the start, for a terminal.</summary>
    public override string ToString() => string.Join("\n\n",
        [string.Join("\n", Controls.Select(control => $"{control.Label}: {control.Words(control.Start)}")), .. At(Start).Select(Plain)]);

    private static string Plain(object value) =>
        Showing.Show(value)?.FirstOrDefault(part => part.MimeType == "text/plain")?.Content ?? value.ToString() ?? "";
}
