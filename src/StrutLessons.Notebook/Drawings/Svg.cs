using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Writes a picture as SVG. No ids, no scripts, nothing from outside: any number of drawings can stand on one page.</summary>
internal static class Svg
{
    private const string Fonts = "system-ui,-apple-system,'Segoe UI',Roboto,'Helvetica Neue',Arial,'Liberation Sans','DejaVu Sans',sans-serif";
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    internal static string Write(Picture picture, string title, string description)
    {
        Box frame = picture.Frame(6);
        return new XElement(Ns + "svg",
            new XAttribute("viewBox", $"{Px(frame.Left)} {Px(frame.Top)} {Px(frame.Width)} {Px(frame.Height)}"),
            new XAttribute("width", Px(frame.Width)),
            new XAttribute("height", Px(frame.Height)),
            new XAttribute("style", "max-width:100%;height:auto"),
            new XAttribute("role", "img"),
            new XAttribute("aria-label", $"{title}. {description}"),
            new XAttribute("font-family", Fonts),
            new XElement(Ns + "title", title),
            new XElement(Ns + "desc", description),
            new XElement(Ns + "rect", new XAttribute("class", "sl-paper"), new XAttribute("fill", "#ffffff"), new XAttribute("x", Px(frame.Left)),
                new XAttribute("y", Px(frame.Top)), new XAttribute("width", Px(frame.Width)), new XAttribute("height", Px(frame.Height))),
            picture.Marks.Select(Element)).ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Element(Mark mark) => mark switch
    {
        Stroke s => new XElement(Ns + (s.Closed ? "polygon" : "polyline"),
            new XAttribute("points", string.Join(' ', s.Points.Select(p => $"{Px(p.X)},{Px(p.Y)}"))),
            Paint(s.Ink, s.Width, s.Dash, s.Fill),
            s.FillOpacity < 1 ? new XAttribute("fill-opacity", Px(s.FillOpacity)) : null),
        Segments s => new XElement(Ns + "path", new XAttribute("d", string.Concat(s.Lines.Select(l => $"M{Px(l.From.X)} {Px(l.From.Y)}L{Px(l.To.X)} {Px(l.To.Y)}"))),
            Paint(s.Ink, s.Width, "", Ink.None)),
        Disc d => new XElement(Ns + "circle", new XAttribute("cx", Px(d.Centre.X)), new XAttribute("cy", Px(d.Centre.Y)),
            new XAttribute("r", Px(d.Radius)), Paint(d.Ink, d.Width, "", d.Fill)),
        Words w => TextElement(w),
        _ => throw new NotSupportedException(mark.GetType().Name),
    };

    private static IEnumerable<XAttribute> Paint(Ink ink, double width, string dash, Ink fill)
    {
        string[] classes = [.. new[] { fill == Ink.None ? "" : "sl-f-" + Palette.Name(fill), ink == Ink.None ? "" : "sl-s-" + Palette.Name(ink) }.Where(c => c.Length > 0)];
        yield return new XAttribute("class", string.Join(' ', classes));
        yield return new XAttribute("fill", Palette.Colour(fill));
        if (ink != Ink.None)
        {
            yield return new XAttribute("stroke", Palette.Colour(ink));
            yield return new XAttribute("stroke-width", Px(width));
            yield return new XAttribute("stroke-linejoin", "round");
        }

        if (dash.Length > 0)
        {
            yield return new XAttribute("stroke-dasharray", dash);
        }
    }

    private static XElement TextElement(Words words)
    {
        var text = new XElement(Ns + "text",
            words.Turned
                ? [new XAttribute("transform", $"translate({Px(words.At.X)} {Px(words.At.Y)}) rotate(-90)")]
                : new[] { new XAttribute("x", Px(words.At.X)), new XAttribute("y", Px(words.At.Y)) },
            new XAttribute("font-size", Px(words.Size)),
            new XAttribute("text-anchor", words.Anchor switch { Anchor.Start => "start", Anchor.Middle => "middle", _ => "end" }),
            words.Bold ? new XAttribute("font-weight", "600") : null,
            new XAttribute("class", "sl-f-" + Palette.Name(words.Ink) + (words.Halo ? " sl-s-sheet" : "")),
            new XAttribute("fill", Palette.Colour(words.Ink)),
            words.Halo
                ? [new XAttribute("stroke", Palette.Colour(Ink.Sheet)), new XAttribute("stroke-width", "3"), new XAttribute("stroke-linejoin", "round"), new XAttribute("paint-order", "stroke")]
                : Array.Empty<XAttribute>());
        ImmutableArray<Run> runs = Label.Read(words.Text).Runs;
        double level = 0;
        foreach (Run run in runs)
        {
            double wanted = run.Level < 0 ? 0.28 * words.Size : run.Level > 0 ? -0.36 * words.Size : 0;
            text.Add(new XElement(Ns + "tspan",
                wanted == level ? null : new XAttribute("dy", Px(wanted - level)),
                run.Level == 0 ? null : new XAttribute("font-size", Px(words.Size * Label.IndexSize)),
                run.Slanted ? new XAttribute("font-style", "italic") : null,
                run.Text));
            level = wanted;
        }

        return text;
    }

    /// <summary>Two decimals are finer than any screen and keep the file small and the same on every machine.</summary>
    private static string Px(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
