namespace StrutLessons.Notebook;

/// <summary>One form of what a cell shows. A value is shown in several forms; the front end picks one.</summary>
/// <param name="MimeType">The media type, for example <c>image/svg+xml</c>.</param>
/// <param name="Content">The content as text.</param>
public sealed record ShownPart(string MimeType, string Content);
