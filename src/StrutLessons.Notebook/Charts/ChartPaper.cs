using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>Draws a chart: grid, ticks, titles, bands, lines, markers, remarks, and the legend below so that it covers no data.</summary>
internal static class ChartPaper
{
    private static readonly Box Area = new(84, 46, 700, 350);

    internal static Drawing Draw(Chart chart)
    {
        ChartRange range = ChartRange.Of(chart);
        Picture picture = Picture.Empty(720, 412).With(Grid(chart, range)).With(Titles(chart));
        foreach (Band band in chart.Bands)
        {
            IEnumerable<Paper> outline = At(chart, range, band.X, band.Upper).Concat(At(chart, range, band.X, band.Lower).Reverse());
            picture = picture.With(Stroke.Area(outline.Select(Held), Ink.Compression, opacity: 0.14));
        }

        foreach (Level level in chart.Levels)
        {
            (Paper a, Paper b) = Ends(chart, range, level);
            picture = picture.With(Stroke.Line(a, b, Ink.Soft, 1.4, "6 4"));
        }

        for (int i = 0; i < chart.Series.Length; i++)
        {
            picture = picture.With(Marks(chart, range, chart.Series[i], SeriesLook.Of(i)));
        }

        picture = picture.With(chart.Remarks.Select(r => new Disc(range.At(chart, Area, r.X, r.Y), 5, Ink.Text, 2)));
        picture = picture.With(Legend(chart));
        foreach (Remark remark in chart.Remarks)
        {
            picture = picture.Name(remark.Text, range.At(chart, Area, remark.X, remark.Y), new Paper(0.7, -1), gap: 9);
        }

        foreach (Level level in chart.Levels)
        {
            (Paper a, Paper b) = Ends(chart, range, level);
            picture = level.Vertical ? picture.Name(level.Text, b + new Paper(0, 12), new Paper(b.X > Area.Centre.X ? -1 : 1, 0.2), gap: 5) : picture.Name(level.Text, b - 0.12 * (b - a), new Paper(0, -1), gap: 3);
        }

        return new Drawing(picture, Label.Plain(chart.Title), ChartText.Describe(chart));
    }

    private static IEnumerable<Mark> Grid(Chart chart, ChartRange range)
    {
        for (int i = 0; i < range.X.At.Count; i++)
        {
            Paper foot = range.At(chart, Area, range.X.At[i], range.Y.From);
            yield return Stroke.Line(foot, foot with { Y = Area.Top }, Ink.Grid, 1);
            yield return Stroke.Line(foot, foot + new Paper(0, 5), Ink.Soft, 1);
            yield return new Words(range.X.Names[i], foot + new Paper(0, 18), Anchor.Middle, 12);
        }

        for (int i = 0; i < range.Y.At.Count; i++)
        {
            Paper foot = range.At(chart, Area, range.X.From, range.Y.At[i]);
            yield return Stroke.Line(foot, foot with { X = Area.Right }, Ink.Grid, 1);
            yield return Stroke.Line(foot, foot - new Paper(5, 0), Ink.Soft, 1);
            yield return new Words(range.Y.Names[i], foot + new Paper(-8, 4), Anchor.End, 12);
        }

        foreach ((double x, double y, bool zero) in ((double, double, bool)[])[(range.X.From, range.Y.From, false), (0, 0, true)])
        {
            bool inX = !zero || range.X.From < 0 && range.X.To > 0 && !chart.XAxis.Logarithmic, inY = !zero || range.Y.From < 0 && range.Y.To > 0 && !chart.YAxis.Logarithmic;
            if (inX)
            {
                Paper foot = range.At(chart, Area, x, range.Y.From);
                yield return Stroke.Line(foot, foot with { Y = Area.Top }, Ink.Soft, 1.2);
            }

            if (inY)
            {
                Paper foot = range.At(chart, Area, range.X.From, y);
                yield return Stroke.Line(foot, foot with { X = Area.Right }, Ink.Soft, 1.2);
            }
        }
    }

    private static IEnumerable<Mark> Titles(Chart chart) =>
    [
        new Words(chart.Title, new Paper(Area.Left, 26), Anchor.Start, 15, Bold: true),
        new Words(chart.XAxis.Title, new Paper(Area.Centre.X, Area.Bottom + 42), Anchor.Middle, 13),
        new Words(chart.YAxis.Title, new Paper(20, Area.Centre.Y), Anchor.Middle, 13, Turned: true),
    ];

    private static IEnumerable<Paper> At(Chart chart, ChartRange range, ImmutableArray<double> x, ImmutableArray<double> y) =>
        x.Select((v, i) => range.At(chart, Area, v, y[i]));

    private static Paper Held(Paper p) => new(Math.Clamp(p.X, Area.Left, Area.Right), Math.Clamp(p.Y, Area.Top, Area.Bottom));

    private static (Paper From, Paper To) Ends(Chart chart, ChartRange range, Level level) => level.Vertical
        ? (range.At(chart, Area, level.At, range.Y.From), range.At(chart, Area, level.At, range.Y.To))
        : (range.At(chart, Area, range.X.From, level.At), range.At(chart, Area, range.X.To, level.At));

    private static IEnumerable<Mark> Marks(Chart chart, ChartRange range, Series series, SeriesLook look)
    {
        Paper[] points = [.. At(chart, range, series.X, series.Y)];
        if (series.Kind != SeriesKind.Points)
        {
            foreach (ImmutableArray<Paper> piece in Pieces(points))
            {
                yield return new Stroke(piece, look.Ink, 2.2, look.Dash);
            }
        }

        if (series.Kind != SeriesKind.Line)
        {
            foreach (Paper point in points.Where(p => Area.Grown(0.5).Holds(new Box(p.X, p.Y, p.X, p.Y))))
            {
                yield return look.Marker(point, 4);
            }
        }
    }

    /// <summary>The parts of a line inside the plot, interrupted where a value is missing.</summary>
    private static IEnumerable<ImmutableArray<Paper>> Pieces(Paper[] points)
    {
        List<Paper> piece = [];
        for (int i = 1; i < points.Length; i++)
        {
            bool whole = double.IsFinite(points[i - 1].X + points[i - 1].Y + points[i].X + points[i].Y);
            (Paper From, Paper To)? inside = whole ? Area.Grown(0.01).Inside(points[i - 1], points[i]) : null;
            if (piece.Count > 0 && (inside is null || (inside.Value.From - piece[^1]).Length > 1e-6))
            {
                yield return [.. piece];
                piece.Clear();
            }

            if (inside is var (from, to))
            {
                piece.AddRange(piece.Count == 0 ? [from, to] : [to]);
            }
        }

        if (piece.Count > 1)
        {
            yield return [.. piece];
        }
    }

    private static IEnumerable<Mark> Legend(Chart chart)
    {
        if (chart.Series.Length + chart.Bands.Length < 2)
        {
            yield break;
        }

        double x = Area.Left, y = Area.Bottom + 68;
        foreach ((string name, int index) in chart.Bands.Select(b => (b.Name, -1)).Concat(chart.Series.Select((s, i) => (s.Name, i))))
        {
            double width = 38 + Label.Read(name).Width(13) + 22;
            if (x > Area.Left && x + width > Area.Right)
            {
                (x, y) = (Area.Left, y + 22);
            }

            foreach (Mark mark in Sample(chart, index, new Paper(x, y - 4)))
            {
                yield return mark;
            }

            yield return new Words(name, new Paper(x + 38, y), Anchor.Start, 13);
            x += width;
        }
    }

    private static IEnumerable<Mark> Sample(Chart chart, int index, Paper at)
    {
        if (index < 0)
        {
            yield return Stroke.Area([at + new Paper(0, -6), at + new Paper(30, -6), at + new Paper(30, 6), at + new Paper(0, 6)], Ink.Compression, opacity: 0.14);
            yield break;
        }

        SeriesLook look = SeriesLook.Of(index);
        if (chart.Series[index].Kind != SeriesKind.Points)
        {
            yield return Stroke.Line(at, at + new Paper(30, 0), look.Ink, 2.2, look.Dash);
        }

        if (chart.Series[index].Kind != SeriesKind.Line)
        {
            yield return look.Marker(at + new Paper(15, 0), 4);
        }
    }
}
