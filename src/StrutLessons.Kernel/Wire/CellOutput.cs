using System.Text.Json.Serialization;
using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Wire;

/// <summary>Something a cell produced, in the order in which it came.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(StreamOutput), "stream")]
[JsonDerivedType(typeof(ShownOutput), "shown")]
[JsonDerivedType(typeof(ErrorOutput), "error")]
public abstract record CellOutput;

/// <summary>Text written to the console by the cell.</summary>
/// <param name="Name"><c>stdout</c> or <c>stderr</c>.</param>
/// <param name="Text">The text as written.</param>
public sealed record StreamOutput(string Name, string Text) : CellOutput;

/// <summary>A value shown by the cell.</summary>
/// <param name="Parts">Every form of the value, the preferred one first.</param>
/// <param name="IsResult">True for the value of the cell's last expression, false for a value shown on the way.</param>
/// <param name="DisplayId">Names a shown value that may be replaced later; null for a result.</param>
/// <param name="Replaces">True when these parts replace the earlier ones with the same <paramref name="DisplayId"/>.</param>
public sealed record ShownOutput(IReadOnlyList<ShownPart> Parts, bool IsResult, string? DisplayId = null, bool Replaces = false) : CellOutput
{
    /// <summary>The content of the part with this MIME type; null if there is none.</summary>
    public string? Content(string mimeType) => Parts.FirstOrDefault(part => part.MimeType == mimeType)?.Content;
}

/// <summary>Why a cell failed, in words that point at the cell and never at the program around it.</summary>
/// <param name="Name">The compiler's code (CS0103) or the exception's type name.</param>
/// <param name="Message">What went wrong, as a sentence.</param>
/// <param name="Line">Line in the cell, counted from 1; null if it is not known.</param>
/// <param name="Column">Column in that line, counted from 1; null if it is not known.</param>
/// <param name="Compiled">False when the cell's code was not understood and nothing of it ran.</param>
public sealed record ErrorOutput(string Name, string Message, int? Line, int? Column, bool Compiled) : CellOutput;
