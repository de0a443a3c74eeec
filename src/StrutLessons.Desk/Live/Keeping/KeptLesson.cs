using System.Text.Json.Serialization;

namespace StrutLessons.Desk.Live.Keeping;

/// <summary>What is kept of a lesson on disk: what the user changed, and how far they came.</summary>
/// <param name="Format">Version of this form; 1.</param>
/// <param name="Lesson">The lesson's name, for a reader of the file.</param>
/// <param name="Finished">Ids of the cells that have run as they should at least once.</param>
/// <param name="Edits">The changed and the added cells.</param>
internal sealed record KeptLesson(int Format, string Lesson, IReadOnlyList<string> Finished, IReadOnlyList<KeptEdit> Edits)
{
    internal static KeptLesson Empty(string lesson) => new(1, lesson, [], []);
}

/// <summary>A cell that the user changed or added.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="Text">The user's text.</param>
/// <param name="Shipped">The shipped text that the user began with; null for an added cell.</param>
/// <param name="After">For an added cell: the id of the cell before it.</param>
/// <param name="Other">Another text of this cell, written at the same time elsewhere; null if there is none.</param>
internal sealed record KeptEdit(string Cell, string Text, string? Shipped, string? After, string? Other);

/// <summary>Generated reader and writer.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(KeptLesson))]
internal sealed partial class KeptJson : JsonSerializerContext;
