namespace StrutLessons.Notebook.Drawings;

/// <summary>Arrows, dimension lines and hatching: the lines every drawing is made of.</summary>
internal static class Lines
{
    /// <summary>A line with a filled head at its end; the head shrinks with a short arrow.</summary>
    internal static IEnumerable<Mark> Arrow(Paper from, Paper to, Ink ink, double width = 1.8, double head = 9)
    {
        Paper way = to - from;
        double size = Math.Min(head, 0.7 * way.Length);
        yield return Stroke.Line(from, to - 0.6 * size * way.Unit, ink, width);
        yield return Head(to, way.Unit, size, ink);
    }

    internal static Stroke Head(Paper tip, Paper direction, double size, Ink ink)
    {
        Paper back = tip - size * direction, side = 0.38 * size * direction.Left;
        return Stroke.Area([tip, back + side, back - side], ink);
    }

    /// <summary>A dimension between two points, drawn aside of them; the text finds its own place near the line.</summary>
    /// <param name="picture">The picture drawn so far.</param>
    /// <param name="a">First point.</param>
    /// <param name="b">Second point.</param>
    /// <param name="away">Unit direction from the object to the dimension line, square to the measured direction.</param>
    /// <param name="offset">Distance of the dimension line from the farther of the two points.</param>
    /// <param name="text">What is measured and how much.</param>
    /// <param name="ink">Colour of line and text.</param>
    internal static Picture Dimension(this Picture picture, Paper a, Paper b, Paper away, double offset, string text, Ink ink = Ink.Soft)
    {
        double far = Math.Max(a.Dot(away), b.Dot(away)) + offset;
        Paper start = a + (far - a.Dot(away)) * away, end = b + (far - b.Dot(away)) * away;
        Paper along = (end - start).Unit;
        bool tight = (end - start).Length < 22;
        List<Mark> marks =
        [
            Stroke.Line(a + 2 * away, start + 4 * away, Ink.Soft, 0.7),
            Stroke.Line(b + 2 * away, end + 4 * away, Ink.Soft, 0.7),
            tight ? Stroke.Line(start - 13 * along, end + 13 * along, ink, 1.1) : Stroke.Line(start, end, ink, 1.1),
            Head(start, tight ? along : -1 * along, 7, ink),
            Head(end, tight ? -1 * along : along, 7, ink),
        ];
        return picture.With(marks).Name(text, 0.5 * (start + end), away, ink == Ink.Soft ? Ink.Text : ink, 13, 4);
    }

    /// <summary>Parallel lines inside an area, even-odd, drawn one by one so that no pattern with an id is needed.</summary>
    internal static IEnumerable<Mark> Hatch(IReadOnlyList<Paper> area, double spacing, double degrees, Ink ink, double width = 0.8)
    {
        double turn = degrees * Math.PI / 180;
        var along = new Paper(Math.Cos(turn), -Math.Sin(turn));
        Paper across = along.Left;
        double low = area.Min(p => p.Dot(across)), high = area.Max(p => p.Dot(across));
        for (double at = (Math.Floor(low / spacing) + 0.5) * spacing; at < high; at += spacing)
        {
            List<double> cuts = [];
            for (int i = 0; i < area.Count; i++)
            {
                Paper a = area[i], b = area[(i + 1) % area.Count];
                double from = a.Dot(across) - at, to = b.Dot(across) - at;
                if (from < 0 != to < 0)
                {
                    cuts.Add((a + from / (from - to) * (b - a)).Dot(along));
                }
            }

            cuts.Sort();
            for (int i = 0; i + 1 < cuts.Count; i += 2)
            {
                yield return Stroke.Line(cuts[i] * along + at * across, cuts[i + 1] * along + at * across, ink, width);
            }
        }
    }
}
