using System.Text.Json.Serialization;

namespace StrutLessons.Desk.Live.Running;

/// <summary>What a page asks over its socket.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "ask")]
[JsonDerivedType(typeof(EditAsk), "edit")]
[JsonDerivedType(typeof(RunAsk), "run")]
[JsonDerivedType(typeof(StopAsk), "stop")]
[JsonDerivedType(typeof(RestartAsk), "restart")]
[JsonDerivedType(typeof(OriginalAsk), "original")]
[JsonDerivedType(typeof(OtherAsk), "other")]
[JsonDerivedType(typeof(AddAsk), "add")]
[JsonDerivedType(typeof(DeleteAsk), "delete")]
[JsonDerivedType(typeof(CompleteAsk), "complete")]
[JsonDerivedType(typeof(MoveAsk), "move")]
internal abstract record Ask;

/// <summary>The text of a cell has changed.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="Text">The whole new text.</param>
/// <param name="Base">Revision of the text from which the user began.</param>
internal sealed record EditAsk(string Cell, string Text, long Base) : Ask;

/// <summary>Run these cells, one after another.</summary>
internal sealed record RunAsk(IReadOnlyList<string> Cells) : Ask;

/// <summary>Stop what runs and forget what waits.</summary>
internal sealed record StopAsk : Ask;

/// <summary>End the kernel process and begin with a fresh one.</summary>
internal sealed record RestartAsk : Ask;

/// <summary>Back to the shipped text: of one cell, or of the lesson if none is named.</summary>
internal sealed record OriginalAsk(string? Cell) : Ask;

/// <summary>About the other text, or the changed original, that is offered beside a cell: take it, or let it go.</summary>
internal sealed record OtherAsk(string Cell, bool Take) : Ask;

/// <summary>A new cell after the one named.</summary>
internal sealed record AddAsk(string After) : Ask;

/// <summary>Delete a cell that the user added.</summary>
internal sealed record DeleteAsk(string Cell) : Ask;

/// <summary>What could be typed here?</summary>
internal sealed record CompleteAsk(int Id, string Text, int Position) : Ask;

/// <summary>A control of a live view has moved.</summary>
/// <param name="Cell">The cell that shows the view.</param>
/// <param name="Live">Name of the view.</param>
/// <param name="Places">Where each control stands.</param>
internal sealed record MoveAsk(string Cell, string Live, IReadOnlyList<double> Places) : Ask;
