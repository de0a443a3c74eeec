using System.Text.Json.Serialization;

namespace StrutLessons.Kernel.Wire;

/// <summary>What a client asks of a kernel process: one JSON object per line on its standard input.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "ask")]
[JsonDerivedType(typeof(RunRequest), "run")]
[JsonDerivedType(typeof(InterruptRequest), "interrupt")]
[JsonDerivedType(typeof(CompleteRequest), "complete")]
[JsonDerivedType(typeof(MoveRequest), "move")]
[JsonDerivedType(typeof(StopRequest), "stop")]
public abstract record Request;

/// <summary>Run a cell. Cells run one after another in the order in which they were asked for.</summary>
/// <param name="Id">The client's name for this request; every answer to it carries it.</param>
/// <param name="Code">C# source.</param>
public sealed record RunRequest(long Id, string Code) : Request;

/// <summary>Stop the running cell; what earlier cells defined stays.</summary>
public sealed record InterruptRequest : Request;

/// <summary>What could be typed at a place in a cell?</summary>
/// <param name="Id">The client's name for this request.</param>
/// <param name="Code">C# source of the cell.</param>
/// <param name="Position">Characters before the cursor.</param>
public sealed record CompleteRequest(long Id, string Code, int Position) : Request;

/// <summary>The controls of a live view have moved: show it again. Answered by its outputs and an end, like a cell.</summary>
/// <param name="Id">The client's name for this request.</param>
/// <param name="Live">The view's name.</param>
/// <param name="Places">Where each control stands: a value, or the index of a choice.</param>
public sealed record MoveRequest(long Id, string Live, IReadOnlyList<double> Places) : Request;

/// <summary>End the process. Closing its standard input does the same.</summary>
public sealed record StopRequest : Request;

/// <summary>What a kernel process answers: one JSON object per line on its standard output.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "say")]
[JsonDerivedType(typeof(ReadyReply), "ready")]
[JsonDerivedType(typeof(OutputReply), "output")]
[JsonDerivedType(typeof(DoneReply), "done")]
[JsonDerivedType(typeof(CompletionReply), "completion")]
public abstract record Reply;

/// <summary>The engine is up and the lessons' library is loaded.</summary>
public sealed record ReadyReply : Reply;

/// <summary>An output of a running cell, sent as soon as it exists.</summary>
/// <param name="Id">The request it belongs to.</param>
/// <param name="Output">The output.</param>
public sealed record OutputReply(long Id, CellOutput Output) : Reply;

/// <summary>The cell has ended; no more outputs of it follow.</summary>
/// <param name="Id">The request it belongs to.</param>
/// <param name="Succeeded">False if an error was among the outputs.</param>
/// <param name="Milliseconds">Time the cell took, compilation included.</param>
public sealed record DoneReply(long Id, bool Succeeded, double Milliseconds) : Reply;

/// <summary>Possible continuations at a place in a cell.</summary>
/// <param name="Id">The request it belongs to.</param>
/// <param name="Start">First character that a chosen item replaces.</param>
/// <param name="End">Character after the last one replaced.</param>
/// <param name="Items">The items, best first.</param>
public sealed record CompletionReply(long Id, int Start, int End, IReadOnlyList<CompletionItem> Items) : Reply;

/// <summary>One possible continuation.</summary>
/// <param name="Text">What is inserted.</param>
/// <param name="Kind">What it is: Method, Property, Class, Keyword …</param>
public sealed record CompletionItem(string Text, string Kind);
