using System.Collections.Immutable;
using StrutLessons.Notebook.Maths;
using StrutLessons.Plates;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>
    /// The plate analysis of a gusset under a moment at the first bolt: lines of equal deflection, and the hinge from which the
    /// leg's patch seems to turn.
    /// </summary>
    /// <param name="gusset">The plate analysis.</param>
    public static Drawing PlateDeflection(GussetFlexibility gusset)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        PlateField field = gusset.UnitMoment;
        GussetPlate plate = gusset.Plate;
        double width = field.X.Max() - field.X.Min(), length = field.Y.Max() - field.Y.Min(), scale = Math.Min(400 / length, 330 / width);
        double middle = 0.5 * (field.X.Max() + field.X.Min());
        // The support line stands upright on the left; away from it is to the right.
        Paper At(double along, double away) => new(130 + scale * away, 220 + scale * (along - middle));
        var strut = new Paper(Math.Sin(plate.Angle), Math.Cos(plate.Angle));
        Paper OnStrut(double s) => At(0, 0) + scale * s * strut;

        Paper foot1 = At(field.X.Min(), 0), foot2 = At(field.X.Max(), 0);
        double largest = field.Deflection.Max(Math.Abs), hinge = plate.FreeLength - gusset.Limit.HingeDistance;
        Picture picture = Picture.Empty(660, 450).With(Lines.Hatch([foot1, foot2, foot2 - new Paper(16, 0), foot1 - new Paper(16, 0)], 7, 45, Ink.Soft))
            .With(new Segments(Rim(field, At), Ink.Text, 1.4), Stroke.Line(foot1, foot2, Ink.Text, 4), Patch(plate, OnStrut, scale, strut));
        for (int i = 1; i < 10; i++)
        {
            ImmutableArray<(Paper, Paper)> line = Contour(field, At, largest * i / 10);
            picture = line.IsEmpty ? picture : picture.With(new Segments(line, Ink.Compression, i % 2 == 0 ? 1.8 : 0.8));
        }

        picture = picture.With(
            Stroke.Line(OnStrut(0), OnStrut(plate.FreeLength + plate.GroupLength + plate.EndDistance + 12 / scale), Ink.Soft, 1, "12 3 2 3"),
            Stroke.Line(OnStrut(hinge) - 0.62 * scale * plate.PatchWidth * strut.Left, OnStrut(hinge) + 0.62 * scale * plate.PatchWidth * strut.Left, Ink.Force, 2.4, "10 3 2 3"),
            new Disc(OnStrut(plate.FreeLength), 5, Ink.Text, 1.6, Ink.Sheet), new Disc(OnStrut(hinge), 5, Ink.Force, 2.2, Ink.Sheet));
        picture = picture.With(new Words("Lines of equal deflection, per cent of the largest; the deflection is out of the page", new Paper(28, 440), Anchor.Start, 12, Ink.Soft));
        for (int i = 2; i < 10; i += 2)
        {
            ImmutableArray<(Paper From, Paper To)> line = Contour(field, At, largest * i / 10);
            picture = line.IsEmpty ? picture : picture.Name($"{10 * i} %", line.SelectMany(l => (Paper[])[l.From, l.To]).MinBy(p => p.Y), Up, Ink.Compression, 12, 4);
        }

        picture = picture.Name("weld, held", foot2, new Paper(-0.3, 1)).Name("first bolt", OnStrut(plate.FreeLength), new Paper(0.4, 1), gap: 10)
            .Name("hinge", OnStrut(hinge) + 0.62 * scale * plate.PatchWidth * strut.Left, Up, Ink.Force, gap: 4)
            .Name("leg of the angle", OnStrut(plate.FreeLength + 0.6 * plate.GroupLength) - 0.5 * scale * plate.PatchWidth * strut.Left, new Paper(0.6, 1), Ink.Soft);
        return new Drawing(picture, "Gusset bent by a moment at the first bolt, plate analysis",
            $"Lines of equal deflection in per cent of the largest. Near the weld they crowd along the weld; under the leg they are straight and evenly spaced, because the leg turns as one piece. " +
            $"Its slope prolonged backwards reaches zero at the hinge, {Figures.Text(gusset.Limit.HingeDistance)} mm behind the first bolt; the free length is {Figures.Text(plate.FreeLength)} mm.");
    }

    /// <summary>The leg's contact area, which turns as one piece.</summary>
    private static Stroke Patch(GussetPlate plate, Func<double, Paper> onStrut, double scale, Paper strut)
    {
        Paper side = 0.5 * scale * plate.PatchWidth * strut.Left, first = onStrut(plate.FreeLength), last = onStrut(plate.FreeLength + Math.Max(plate.GroupLength, 0.02 * plate.FreeLength));
        return Stroke.Area([first + side, last + side, last - side, first - side], Ink.Steel, Ink.Soft, 1, 0.7);
    }

    /// <summary>Edges that belong to one element only.</summary>
    private static ImmutableArray<(Paper From, Paper To)> Rim(PlateField field, Func<double, double, Paper> at) =>
        [.. field.Quads.SelectMany(q => ((int A, int B)[])[(q.A, q.B), (q.B, q.C), (q.C, q.D), (q.D, q.A)])
            .GroupBy(e => (Math.Min(e.A, e.B), Math.Max(e.A, e.B))).Where(g => g.Count() == 1)
            .Select(g => (at(field.X[g.First().A], field.Y[g.First().A]), at(field.X[g.First().B], field.Y[g.First().B])))];

    /// <summary>Where the deflection's size has a value: linear in the two triangles of each element.</summary>
    private static ImmutableArray<(Paper From, Paper To)> Contour(PlateField field, Func<double, double, Paper> at, double level)
    {
        var lines = ImmutableArray.CreateBuilder<(Paper, Paper)>();
        foreach (PlateQuad q in field.Quads)
        {
            foreach (int[] corners in (int[][])[[q.A, q.B, q.C], [q.A, q.C, q.D]])
            {
                List<Paper> cuts = [];
                for (int i = 0; i < 3; i++)
                {
                    int a = corners[i], b = corners[(i + 1) % 3];
                    double from = Math.Abs(field.Deflection[a]) - level, to = Math.Abs(field.Deflection[b]) - level;
                    if (from < 0 != to < 0)
                    {
                        Paper start = at(field.X[a], field.Y[a]);
                        cuts.Add(start + from / (from - to) * (at(field.X[b], field.Y[b]) - start));
                    }
                }

                if (cuts.Count == 2)
                {
                    lines.Add((cuts[0], cuts[1]));
                }
            }
        }

        return lines.ToImmutable();
    }
}
