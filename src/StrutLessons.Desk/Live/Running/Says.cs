using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Desk.Live.Running;

/// <summary>What the program tells a page over its socket.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "say")]
[JsonDerivedType(typeof(AllSay), "all")]
[JsonDerivedType(typeof(TextSay), "text")]
[JsonDerivedType(typeof(StateSay), "state")]
[JsonDerivedType(typeof(PieceSay), "piece")]
[JsonDerivedType(typeof(WriteSay), "write")]
[JsonDerivedType(typeof(KernelSay), "kernel")]
[JsonDerivedType(typeof(CompletionSay), "completion")]
[JsonDerivedType(typeof(MovedSay), "moved")]
[JsonDerivedType(typeof(NoticeSay), "notice")]
internal abstract record Say;

/// <summary>The whole lesson: said when a page connects, and when cells come or go.</summary>
internal sealed record AllSay(IReadOnlyList<CellView> Cells, KernelSay Kernel, string Tab) : Say;

/// <summary>A cell as a page needs it.</summary>
/// <param name="Text">Text with its revision and what is offered beside it.</param>
/// <param name="After">For a cell that the user added: the id of the cell before it.</param>
/// <param name="State">What it is doing or how it ended.</param>
/// <param name="Pieces">What it has shown.</param>
internal sealed record CellView(TextSay Text, string? After, StateSay State, IReadOnlyList<PieceSay> Pieces);

/// <summary>The text of a cell.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="Text">The text.</param>
/// <param name="Revision">Grows with every change.</param>
/// <param name="IsChanged">True if it differs from the shipped text.</param>
/// <param name="Other">Another text written at the same time in another tab; null if there is none.</param>
/// <param name="NewOriginal">The shipped text, if it has changed since the user's edit began; null otherwise.</param>
/// <param name="By">The tab that wrote it.</param>
internal sealed record TextSay(string Cell, string Text, long Revision, bool IsChanged, string? Other, string? NewOriginal, string? By) : Say;

/// <summary>What a cell is doing.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="State">idle, waiting, running, done, failed.</param>
/// <param name="Milliseconds">How long it took.</param>
/// <param name="IsOld">True if what it shows comes from a kernel process that has gone.</param>
internal sealed record StateSay(string Cell, string State, double? Milliseconds, bool IsOld) : Say;

/// <summary>A piece of what a cell shows; takes the place of the one with the same key.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="Key">The piece's name, unique in the lesson.</param>
/// <param name="Html">What is shown; empty for a live view, which carries its own.</param>
/// <param name="Line">Line of the error, counted from 1; null if it is none or not known.</param>
/// <param name="Live">The controls of a live view; null if it is none.</param>
internal sealed record PieceSay(string Cell, string Key, string Html, int? Line, JsonElement? Live = null) : Say;

/// <summary>More text for the console piece with this key.</summary>
internal sealed record WriteSay(string Cell, string Key, string Text) : Say;

/// <summary>The kernel process.</summary>
/// <param name="State">none, starting, ready, busy, ended.</param>
/// <param name="Words">Why it ended; null otherwise.</param>
internal sealed record KernelSay(string State, string? Words) : Say;

/// <summary>Answer to a question for completion.</summary>
internal sealed record CompletionSay(int Id, int Start, int End, IReadOnlyList<CompletionItem> Items) : Say;

/// <summary>A live view at its new places.</summary>
/// <param name="Cell">The cell that shows it.</param>
/// <param name="Live">Name of the view.</param>
/// <param name="Places">Where each control stands.</param>
/// <param name="Html">What it shows, one entry for each value.</param>
/// <param name="By">The tab that moved it.</param>
internal sealed record MovedSay(string Cell, string Live, IReadOnlyList<double> Places, IReadOnlyList<string> Html, string By) : Say;

/// <summary>Something the user should know.</summary>
internal sealed record NoticeSay(string Words) : Say;

/// <summary>Generated readers and writers.</summary>
[JsonSerializable(typeof(Ask))]
[JsonSerializable(typeof(Say))]
internal sealed partial class LiveJson : JsonSerializerContext
{
    /// <summary>For the socket. Its text never stands inside a page, so it needs no escaping beyond what JSON asks for.</summary>
    internal static LiveJson Wire { get; } = new(new JsonSerializerOptions(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    });
}
