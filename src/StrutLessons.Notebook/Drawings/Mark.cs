using System.Collections.Immutable;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Something drawn on paper.</summary>
internal abstract record Mark
{
    internal abstract Box Bounds { get; }
}

/// <summary>A line through points, or a filled area if closed.</summary>
internal sealed record Stroke(ImmutableArray<Paper> Points, Ink Ink, double Width, string Dash = "", bool Closed = false, Ink Fill = Ink.None, double FillOpacity = 1) : Mark
{
    internal override Box Bounds => Box.Around(Points).Grown(Width / 2);

    internal static Stroke Line(Paper a, Paper b, Ink ink, double width, string dash = "") => new([a, b], ink, width, dash);

    internal static Stroke Area(IEnumerable<Paper> points, Ink fill, Ink outline = Ink.None, double width = 0, double opacity = 1) =>
        new([.. points], outline, width, "", true, fill, opacity);
}

/// <summary>Many short lines of one kind, such as the pieces of a contour, kept together to keep the file small.</summary>
internal sealed record Segments(ImmutableArray<(Paper From, Paper To)> Lines, Ink Ink, double Width) : Mark
{
    internal override Box Bounds => Box.Around(Lines.SelectMany(l => (Paper[])[l.From, l.To]));
}

/// <summary>A circle.</summary>
internal sealed record Disc(Paper Centre, double Radius, Ink Ink, double Width, Ink Fill = Ink.None) : Mark
{
    internal override Box Bounds => new Box(Centre.X, Centre.Y, Centre.X, Centre.Y).Grown(Radius + Width / 2);
}

/// <summary>Where a text's point lies in it.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>A line of text with its base line at a point; turned text runs upwards; a halo keeps lines behind it from its letters.</summary>
internal sealed record Words(string Text, Paper At, Anchor Anchor, double Size, Ink Ink = Ink.Text, bool Turned = false, bool Bold = false, bool Halo = false) : Mark
{
    internal override Box Bounds
    {
        get
        {
            double width = Label.Read(Text).Width(Size) * (Bold ? 1.1 : 1);
            double left = Anchor == Anchor.Start ? 0 : Anchor == Anchor.Middle ? -width / 2 : -width;
            double up = TextWidth.Ascent * Size, down = TextWidth.Descent * Size;
            return Turned
                ? new Box(At.X - up, At.Y - left - width, At.X + down, At.Y - left)
                : new Box(At.X + left, At.Y - up, At.X + left + width, At.Y + down);
        }
    }
}
