using System.Collections.Immutable;
using StrutLessons.Member;
using StrutLessons.Notebook.Maths;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    private const int Shades = 6;

    /// <summary>The stress over the section at one place: shaded by size, hatched where it is tension, with the neutral axis and the corner values.</summary>
    /// <param name="solution">The strut under its load.</param>
    /// <param name="x">Place along the bar, mm.</param>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public static Drawing StressOverSection(SecondOrderSolution solution, double x)
    {
        ArgumentNullException.ThrowIfNull(solution);
        AngleSection section = solution.Strut.Section;
        SectionSheet sheet = SectionSheet.Fit(section, new Box(190, 70, 510, 400));
        // s = N/A + g·r over the section, g in MPa for one mm.
        Planar slope = solution.Strut.Steel.ElasticModulus * solution.Curvature(x);
        double mean = solution.Load / section.Area, size = slope.Length;
        Paper towards = size > 0 ? SectionSheet.Way(1 / size * slope) : Up;
        double Stress(Paper p) => mean + size / sheet.Scale * (p - sheet.Origin).Dot(towards);

        double most = section.Corners.Max(c => Math.Abs(solution.StressAt(c.Corner, x)));
        Picture picture = Picture.Empty(680, 500);
        for (int i = 0; i < Shades; i++)
        {
            double low = most * i / Shades, high = most * (i + 1) / Shades;
            picture = picture.With(Shade(sheet, Stress, low, high, Ink.Compression, 0.1 + 0.75 * (i + 0.5) / Shades))
                .With(Shade(sheet, p => -Stress(p), low, high, Ink.Tension, 0.1 + 0.75 * (i + 0.5) / Shades));
        }

        ImmutableArray<Paper> pulled = Cut([.. sheet.Outline()], p => -Stress(p));
        picture = pulled.Length > 2 ? picture.With(Lines.Hatch(pulled, 6, 45, Ink.Text, 0.6)) : picture;
        picture = picture.With(Stroke.Area(sheet.Outline(), Ink.None, Ink.Text, 1.6));
        picture = WithNeutralAxis(picture, sheet, mean, size, towards);
        picture = picture.With(new Disc(sheet.Origin, 3, Ink.Text, 1.4, Ink.Sheet));
        foreach (StressPoint corner in section.Corners)
        {
            picture = picture.With(new Disc(sheet.At(corner.Position), 3.4, Ink.Text, 1.2, Ink.Sheet));
        }

        foreach (StressPoint corner in section.Corners)
        {
            double s = solution.StressAt(corner.Corner, x);
            picture = picture.Name($"{Signed(s)} MPa", sheet.At(corner.Position), CornerNames.Outwards(corner.Corner), s < 0 ? Ink.Tension : Ink.Compression, 14, 9, true);
        }

        picture = picture.With(StressLegend());
        string corners = string.Join("; ", section.Corners.Select(c => $"{CornerNames.Words(c.Corner)} {Signed(solution.StressAt(c.Corner, x))} MPa"));
        return new Drawing(picture, $"Stress over the section at x = {Figures.Text(x)} mm under {Figures.Text(solution.Load / 1e3)} kN",
            $"Compression is positive. Stresses at the corners: {corners}. The mean stress N/A is {Figures.Text(mean)} MPa.");
    }

    private static string Signed(double value) => (value > 0 ? "+" : "") + Figures.Text(value, 3);

    private static IEnumerable<Mark> Shade(SectionSheet sheet, Func<Paper, double> stress, double low, double high, Ink ink, double opacity)
    {
        ImmutableArray<Paper> part = Cut(Cut([.. sheet.Outline()], p => stress(p) - low), p => high - stress(p));
        return part.Length > 2 ? [Stroke.Area(part, ink, opacity: opacity)] : [];
    }

    /// <summary>The part of an area where a linear function is positive (clipping after Sutherland and Hodgman).</summary>
    private static ImmutableArray<Paper> Cut(ImmutableArray<Paper> area, Func<Paper, double> level)
    {
        var kept = ImmutableArray.CreateBuilder<Paper>();
        for (int i = 0; i < area.Length; i++)
        {
            Paper a = area[i], b = area[(i + 1) % area.Length];
            double at = level(a), next = level(b);
            if (at >= 0)
            {
                kept.Add(a);
            }

            if (at >= 0 != next >= 0)
            {
                kept.Add(a + at / (at - next) * (b - a));
            }
        }

        return kept.ToImmutable();
    }

    private static Picture WithNeutralAxis(Picture picture, SectionSheet sheet, double mean, double size, Paper towards)
    {
        if (size == 0)
        {
            return picture;
        }

        Paper foot = sheet.Origin - mean / size * sheet.Scale * towards;
        Box frame = Box.Around(sheet.Outline()).Grown(44);
        if (frame.Inside(foot - 2000 * towards.Left, foot + 2000 * towards.Left) is not var (from, to))
        {
            return picture;
        }

        return picture.With(Stroke.Line(from, to, Ink.Text, 1.6, "14 4 3 4")).Name("neutral axis, stress 0", to.Y < from.Y ? to : from, new Paper(0.3, -1));
    }

    private static IEnumerable<Mark> StressLegend()
    {
        Paper[] Block(double x) => [new(x, 462), new(x + 34, 462), new(x + 34, 480), new(x, 480)];
        return
        [
            Stroke.Area(Block(150), Ink.Compression, Ink.Text, 0.8, 0.6),
            new Words("compression (+)", new Paper(192, 476), Anchor.Start, 13),
            Stroke.Area(Block(360), Ink.Tension, Ink.Text, 0.8, 0.6),
            .. Lines.Hatch(Block(360), 6, 45, Ink.Text, 0.6),
            new Words("tension (−)", new Paper(402, 476), Anchor.Start, 13),
        ];
    }
}
