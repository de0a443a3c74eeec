using System.Collections.Concurrent;
using System.Text.Json;
using StrutLessons.Kernel.Wire;
using StrutLessons.Notebook;
using StrutLessons.Notebook.Controls;

namespace StrutLessons.Kernel.Engine;

/// <summary>The live views that cells have shown, so that a control can be moved after the cell has ended.</summary>
/// <param name="listens">True if whoever shows the view can send moves; otherwise it gets frames made beforehand.</param>
/// <param name="stem">Beginning of the views' names; a page that keeps views of earlier runs needs another one for each run.</param>
internal sealed class LiveViews(bool listens, string stem = "live")
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    private readonly ConcurrentDictionary<string, LiveView> _views = new();
    private long _last;

    /// <summary>Keeps a view and says how it looks.</summary>
    internal IReadOnlyList<ShownPart> Show(LiveView view)
    {
        var name = $"{stem}-{Interlocked.Increment(ref _last)}";
        _views[name] = view;
        return listens ? [new(LiveForm.MimeType, Form(view, name)), new("text/plain", view.ToString())] : view.Shown(name);
    }

    /// <summary>The outputs of a view with its controls at these places.</summary>
    /// <exception cref="InputException">No such view, or places it cannot have.</exception>
    internal IReadOnlyList<IReadOnlyList<ShownPart>> Move(string name, IReadOnlyList<double> places) =>
        _views.TryGetValue(name, out var view)
            ? Outputs(view, places)
            : throw new InputException("live view", $"'{name}'", "one that a cell of this run has shown", "Run its cell again.");

    private static IReadOnlyList<ShownPart>[] Outputs(LiveView view, IReadOnlyList<double> places) =>
        [.. view.At(places).Select(value => Rendering.Parts(value, []))];

    private static string Form(LiveView view, string name) => JsonSerializer.Serialize(
        new LiveForm(name,
            [.. view.Controls.Select(control => new LiveControlForm(control.Kind.ToString(), control.Label, control.Unit,
                control.Range.From, control.Range.To, control.Interval, control.Start,
                control.Kind == ControlKind.Choice ? [.. Enumerable.Range(0, (int)control.Range.To + 1).Select(i => control.Words(i))] : []))],
            Outputs(view, view.Start)),
        Json);
}
