
namespace StrutLessons.Notebook.Drawings;

/// <summary>
/// A finished drawing. Sent as image/svg+xml and text/plain and never as html: a front end would choose the html before the
/// SVG, and the SVG alone is shown by all of them, live, saved and printed.
/// </summary>
public sealed record Drawing : IPictured
{
    internal Drawing(Picture picture, string title, string altText)
    {
        Picture = picture.Trimmed();
        Title = title;
        AltText = altText;
    }

    /// <summary>What the drawing shows, in a few words.</summary>
    public string Title { get; }

    /// <summary>What a reader who cannot see the drawing should know.</summary>
    public string AltText { get; }

    /// <summary>The drawing as an SVG document.</summary>
    public string Svg => Drawings.Svg.Write(Picture, Title, AltText);

    internal Picture Picture { get; }

    /// <summary>The drawing itself.</summary>
    public Drawing ToDrawing() => this;

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() => [new("image/svg+xml", Svg), new("text/plain", ToString())];

    /// <summary>Title and description, for a terminal.</summary>
    public override string ToString() => $"{Title}\n{AltText}";
}
