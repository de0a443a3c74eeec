using System.Collections.Immutable;

namespace StrutLessons.Notebook.Drawings;

/// <summary>An immutable list of marks on a sheet; every method returns a new picture.</summary>
/// <param name="Sheet">The part of the paper that is shown; it grows where a mark would fall outside.</param>
/// <param name="Marks">The marks, first drawn first.</param>
internal sealed record Picture(Box Sheet, ImmutableList<Mark> Marks)
{
    internal static Picture Empty(double width, double height) => new(new Box(0, 0, width, height), []);

    internal IEnumerable<Words> Texts => Marks.OfType<Words>();

    internal Picture With(params IEnumerable<Mark> marks) => this with { Marks = Marks.AddRange(marks) };

    /// <summary>The sheet with all marks inside and a margin around them.</summary>
    internal Box Frame(double margin) => Marks.Aggregate(Sheet, (box, mark) => box.With(mark.Bounds.Grown(margin)));

    /// <summary>The same marks on a sheet without empty space above and below; the width stays, so that all drawings share one scale on a page.</summary>
    internal Picture Trimmed()
    {
        if (Marks.IsEmpty)
        {
            return this;
        }

        Box used = Marks.Select(m => m.Bounds).Aggregate((a, b) => a.With(b));
        return this with { Sheet = Sheet with { Top = used.Top - 10, Bottom = used.Bottom + 10 } };
    }

    /// <summary>
    /// Writes a text beside a point where it covers no other text and as few lines as possible; a thin line leads to the
    /// point if the free place is far away. The first directions tried are those near <paramref name="towards"/>.
    /// </summary>
    internal Picture Name(string text, Paper point, Paper towards, Ink ink = Ink.Text, double size = 13, double gap = 7, bool bold = false)
    {
        Label label = Label.Read(text);
        double width = label.Width(size) * (bold ? 1.1 : 1), height = (TextWidth.Ascent + TextWidth.Descent) * size;
        (Mark Mark, Box Bounds)[] drawn = [.. Marks.Select(m => (m, m.Bounds))];
        (double Cost, Box Place, double Reach) best = (double.MaxValue, default, 0);
        foreach (double reach in (ReadOnlySpan<double>)[gap, gap + 8, gap + 18, gap + 32, gap + 50, gap + 72, gap + 98, gap + 126])
        {
            for (int i = 0; i < 24; i++)
            {
                Paper direction = Turn(towards.Unit, Math.PI / 12 * ((i + 1) / 2) * (i % 2 == 0 ? 1 : -1));
                // The box touches the ring around the point with its near side.
                Paper centre = point + new Paper(direction.X * (reach + width / 2), direction.Y * (reach + height / 2));
                var place = new Box(centre.X - width / 2, centre.Y - height / 2, centre.X + width / 2, centre.Y + height / 2);
                double cost = Cost(place, drawn) + 0.2 * (reach - gap) + 0.9 * ((i + 1) / 2);
                best = cost < best.Cost ? (cost, place, reach) : best;
            }
        }

        Box b = best.Place;
        var words = new Words(text, new Paper(b.Left, b.Top + TextWidth.Ascent * size), Anchor.Start, size, ink, false, bold, true);
        Picture named = With(words);
        return best.Reach <= gap + 10 ? named : named.With(Leader(b, point, ink == Ink.Text ? Ink.Soft : ink));
    }

    /// <summary>Texts must not touch; lines should not run through a text; the sheet should not grow.</summary>
    private double Cost(Box place, (Mark Mark, Box Bounds)[] drawn)
    {
        double cost = Sheet.Holds(place) ? 0 : 25;
        Box near = place.Grown(2.5);
        foreach ((Mark mark, Box bounds) in drawn)
        {
            if (bounds.Overlaps(near))
            {
                cost += mark switch
                {
                    Words => 1000,
                    Stroke { Ink: not Ink.None } stroke => Crossed(stroke, place),
                    Disc when bounds.Overlaps(place) => 40,
                    _ => 0,
                };
            }
        }

        return cost;
    }

    /// <summary>How much of a line runs through a place, weighed by how much the line matters.</summary>
    private static double Crossed(Stroke stroke, Box place)
    {
        double inside = 0;
        for (int i = 1; i < stroke.Points.Length + (stroke.Closed ? 1 : 0); i++)
        {
            inside += place.LengthInside(stroke.Points[i - 1], stroke.Points[i % stroke.Points.Length]);
        }

        return inside * (stroke.Ink is Ink.Grid ? 0.1 : stroke.Ink is Ink.Soft ? 1.6 : 2.6);
    }

    private static Stroke Leader(Box from, Paper to, Ink ink)
    {
        var start = new Paper(Math.Clamp(to.X, from.Left, from.Right), Math.Clamp(to.Y, from.Top, from.Bottom));
        Paper way = to - start;
        return Stroke.Line(start + 2 * way.Unit, to - 3 * way.Unit, ink, 0.8);
    }

    private static Paper Turn(Paper a, double by) =>
        new(a.X * Math.Cos(by) - a.Y * Math.Sin(by), a.X * Math.Sin(by) + a.Y * Math.Cos(by));
}
