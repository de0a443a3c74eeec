using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Wire;

/// <summary>A live view as a front end needs it that can send moves: its controls and what it shows at first.</summary>
/// <param name="Live">Name of the view, to be sent with every move.</param>
/// <param name="Controls">The controls in order.</param>
/// <param name="Shown">The outputs at the start, each in its forms, the preferred one first.</param>
public sealed record LiveForm(string Live, IReadOnlyList<LiveControlForm> Controls, IReadOnlyList<IReadOnlyList<ShownPart>> Shown)
{
    /// <summary>The media type under which a live view is shown.</summary>
    public const string MimeType = "application/vnd.strutlessons.live+json";
}

/// <summary>One control of a live view.</summary>
/// <param name="Kind"><c>Slider</c>, <c>Number</c> or <c>Choice</c>.</param>
/// <param name="Label">What moves, in words.</param>
/// <param name="Unit">Unit of the value; may be empty.</param>
/// <param name="From">Smallest value; 0 for a choice.</param>
/// <param name="To">Largest value; the last index of a choice.</param>
/// <param name="Step">Distance between two values.</param>
/// <param name="Start">Value at first.</param>
/// <param name="Options">Names of a choice, in order; empty otherwise.</param>
public sealed record LiveControlForm(
    string Kind, string Label, string Unit, double From, double To, double Step, double Start, IReadOnlyList<string> Options);
