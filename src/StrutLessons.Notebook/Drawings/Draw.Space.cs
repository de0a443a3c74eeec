using StrutLessons.Member;
using StrutLessons.Notebook.Maths;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>The deflected angle in space, seen obliquely: sections along the strut and its edges, before and after.</summary>
    /// <param name="solution">The strut under its load.</param>
    /// <param name="enlarged">How much displacements are enlarged against the section; 0 chooses a round number.</param>
    public static Drawing ShapeInSpace(SecondOrderSolution solution, double enlarged = 0)
    {
        ArgumentNullException.ThrowIfNull(solution);
        AngleSection section = solution.Strut.Section;
        double leg = Math.Max(section.ConnectedLength, section.OutstandingLength), most = Line(solution).Max(p => p.Total.Length);
        double factor = enlarged > 0 ? enlarged : Math.Max(1, RoundDown(0.75 * leg / Math.Max(most, 1e-9)));
        // Oblique view: x runs to the right and a little upwards, y to the lower left, z up. The length is shortened to 6 legs.
        double scale = 78 / leg, alongX = 6.2 * leg / solution.Strut.BarLength;
        Paper Place(double x, Planar r) => new(130 + scale * (alongX * x * 0.97 - 0.55 * r.Y), 300 - scale * (alongX * x * 0.27 - 0.42 * r.Y + r.Z));
        Planar Shift(double x) => factor * (solution.BowAt(x) + solution.Deflection(x));

        Planar[] corners = [.. section.Corners.Select(c => c.Position)];
        Planar root = section.FromHeel(section.Thickness, section.Thickness);
        Planar[] ring = [corners[0], corners[1], corners[2], root, corners[3], corners[4]];
        double length = solution.Strut.BarLength;
        Picture picture = Picture.Empty(720, 470);
        foreach (Planar edge in ring)
        {
            picture = picture.With(Stroke.Line(Place(0, edge), Place(length, edge), Ink.Soft, 0.8, "4 4"));
        }

        for (int i = 12; i >= 0; i--)
        {
            double x = length * i / 12;
            picture = picture.With(Stroke.Area(ring.Select(r => Place(x, r + Shift(x))), Ink.Steel, Ink.Text, i is 0 or 12 ? 1.6 : 0.9, 0.55));
        }

        foreach (Planar edge in ring)
        {
            picture = picture.With(new Stroke([.. Enumerable.Range(0, Stations + 1).Select(i => length * i / Stations).Select(x => Place(x, edge + Shift(x)))], Ink.Text, 1.2));
        }

        picture = picture.With(new Stroke([.. Enumerable.Range(0, Stations + 1).Select(i => length * i / Stations).Select(x => Place(x, Shift(x)))], Ink.Compression, 2.4, "8 3"));
        picture = WithEndLoads(picture, solution, Place, Shift);
        Paper o = new(70, 420);
        picture = picture.With(Lines.Arrow(o, o + new Paper(46, -13), Ink.Text, 1.3)).With(Lines.Arrow(o, o + new Paper(-30, 23), Ink.Text, 1.3)).With(Lines.Arrow(o, o + new Paper(0, -42), Ink.Text, 1.3))
            .Name("$x$", o + new Paper(46, -13), RightWay, gap: 4, size: 14).Name("$y$", o + new Paper(-30, 23), LeftWay, gap: 4, size: 14).Name("$z$", o + new Paper(0, -42), Up, gap: 4, size: 14)
            .With(new Words($"Displacements enlarged {Figures.Text(factor)} times, length shortened; dashed: before loading", new Paper(150, 452), Anchor.Start, 12, Ink.Soft));
        Planar middle = solution.BowAt(length / 2) + solution.Deflection(length / 2);
        return new Drawing(picture, $"The strut in space under {Figures.Text(solution.Load / 1e3)} kN, bow {solution.Bow.Name}",
            $"Oblique view of the bent angle. The middle of the strut moves {Figures.Text(section.AlongU(middle))} mm along u–u and {Figures.Text(section.AlongV(middle))} mm along v–v, bow included.");
    }

    private static Picture WithEndLoads(Picture picture, SecondOrderSolution solution, Func<double, Planar, Paper> place, Func<double, Planar> shift)
    {
        double length = solution.Strut.BarLength;
        Paper centre1 = place(0, shift(0)), centre2 = place(length, shift(length));
        Paper load1 = place(0, solution.Strut.End1.Eccentricity + shift(0)), load2 = place(length, solution.Strut.End2.Eccentricity + shift(length));
        var way = new Paper(0.963, -0.268);
        return picture.With(Stroke.Line(centre1, load1, Ink.Force, 2.2), Stroke.Line(centre2, load2, Ink.Force, 2.2))
            .With(Lines.Arrow(load1 - 54 * way, load1, Ink.Force, 2.6, 12)).With(Lines.Arrow(load2 + 54 * way, load2, Ink.Force, 2.6, 12))
            .Name("$N$", load1 - 54 * way, new Paper(-1, 0), Ink.Force, 15, 5, true).Name("$N$", load2 + 54 * way, new Paper(1, 0), Ink.Force, 15, 5, true);
    }
}
