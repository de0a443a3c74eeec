using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>The gusset seen square to its plane: weld, bolts, free length, effective strip and the hinge of the model.</summary>
    /// <param name="gusset">The gusset by hand formula.</param>
    /// <param name="bolts">The bolts of this end.</param>
    public static Drawing Gusset(GussetFormula gusset, BoltLine bolts)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        ArgumentNullException.ThrowIfNull(bolts);
        GussetSheet sheet = GussetSheet.Fit(gusset, bolts, new Box(96, 70, 600, 360));
        double g = gusset.Gusset.FreeLength, half = gusset.EffectiveWidth / 2, hinge = g - gusset.HingeDistance;
        double low = gusset.HalfLeft + gusset.DraggedLeft, high = gusset.HalfRight + gusset.DraggedRight;
        Picture picture = Picture.Empty(680, 440).With(sheet.Marks())
            .With(new Stroke([sheet.At(sheet.SupportAt(-low), -low), sheet.At(g, -low), sheet.At(g, high), sheet.At(sheet.SupportAt(high), high)], Ink.Compression, 1.2, "5 4", true, Ink.Compression, 0.12))
            .With(Stroke.Line(sheet.At(hinge, -low), sheet.At(hinge, high), Ink.Force, 2.2, "10 3 2 3"), new Disc(sheet.At(hinge, 0), 5, Ink.Force, 2.2, Ink.Sheet));
        double bottom = sheet.Bottom;
        picture = picture
            .Dimension(sheet.At(0, 0) with { Y = bottom }, sheet.At(g, 0) with { Y = bottom }, Down, 22, Measure("g", g))
            .Dimension(sheet.At(hinge, 0) with { Y = sheet.Top }, sheet.At(g, 0) with { Y = sheet.Top }, Up, 18, Measure("s_h", gusset.HingeDistance), Ink.Force)
            .Dimension(sheet.At(g, -low), sheet.At(g, high), RightWay, sheet.RoomRight(g) + 26, Measure("b_{eff}", 2 * half), Ink.Compression);
        if (bolts.Count > 1)
        {
            picture = picture.Dimension(sheet.At(g, 0) with { Y = bottom }, sheet.At(g + bolts.BoltGroupLength, 0) with { Y = bottom }, Down, 22, Measure("L_b", bolts.BoltGroupLength));
        }

        picture = picture
            .Name("weld", sheet.At(sheet.SupportAt(-gusset.Gusset.WidthLeft), -gusset.Gusset.WidthLeft), new Paper(-0.4, -1))
            .Name("hinge of the model", sheet.At(hinge, 0), new Paper(-1, 0.6), Ink.Force)
            .Name("leg of the angle", sheet.LegName, new Paper(0.3, -1));
        return new Drawing(picture, $"Gusset {Figures.Text(gusset.Gusset.Thickness)} mm thick, seen square to its plane",
            $"The plate is welded along its left edge. The first bolt sits {Figures.Text(g)} mm from the weld along the strut; {bolts.Count} bolt{(bolts.Count > 1 ? "s" : "")} in line. " +
            $"A strip {Figures.Text(2 * half)} mm wide bends as one piece. The hinge of the model lies {Figures.Text(gusset.HingeDistance)} mm from the first bolt back towards the weld.");
    }

    /// <summary>
    /// The gusset in side view under an end moment: the bent strip, its end tangent, and the hinge where the tangent meets the
    /// straight plate. Deflections are enlarged.
    /// </summary>
    /// <param name="gusset">The gusset by hand formula.</param>
    public static Drawing GussetBending(GussetFormula gusset)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        double g = gusset.Gusset.FreeLength, end = 1.9 * g, scale = 430 / end;
        double slope = 0.36;
        Paper At(double s, double w) => new(100 + scale * s, 90 + scale * w);
        // Strip under a constant moment: w = θ s²/(2g) up to the first bolt, straight from there on.
        Paper[] bent = [.. Enumerable.Range(0, 41).Select(i => At(g * i / 40.0, slope * g * i * i / 3200.0)), At(end, slope * g / 2 + slope * (end - g))];
        double hinge = g - gusset.HingeDistance, tangent = g / 2;
        Paper[] wall = [At(0, 0) + new Paper(-18, -44), At(0, 0) + new Paper(0, -44), At(0, 0) + new Paper(0, 44), At(0, 0) + new Paper(-18, 44)];
        Picture picture = Picture.Empty(640, 330).With(Lines.Hatch(wall, 7, 45, Ink.Soft)).With(
            Stroke.Line(wall[1], wall[2], Ink.Text, 2),
            Stroke.Line(At(0, 0), At(end, 0), Ink.Soft, 1.2, "6 4"),
            new Stroke([.. bent], Ink.Text, 5),
            Stroke.Line(At(tangent, 0), At(g, slope * g / 2), Ink.Major, 1.6, "4 3"),
            Stroke.Line(At(hinge, 0), At(end, slope * (end - hinge)), Ink.Force, 1.8, "10 3 2 3"),
            new Disc(At(hinge, 0), 6, Ink.Force, 2.2, Ink.Sheet),
            new Disc(At(g, slope * g / 2), 4, Ink.Text, 1.6, Ink.Sheet));
        picture = picture
            .Dimension(At(0, 0), At(g, 0), Up, 58, Measure("g", g))
            .Dimension(At(hinge, 0), At(g, 0), Up, 22, Measure("s_h", gusset.HingeDistance), Ink.Force)
            .Name("weld", At(0, 0) + new Paper(0, 40), new Paper(0.4, 1))
            .Name("plate, bent", At(0.35 * g, slope * 0.06 * g), new Paper(-0.4, 1), gap: 12)
            .Name("first bolt", At(g, slope * g / 2), new Paper(-0.5, 1), gap: 14)
            .Name("held straight by the leg", At(1.35 * g, slope * 0.85 * g), new Paper(-0.7, 1), gap: 22)
            .Name("hinge and rigid arm of the model", At(0.5 * (end + hinge), 0.5 * slope * (end - hinge)), new Paper(0.5, -1), Ink.Force, gap: 14)
            .Name("before loading", At(0.93 * end, 0), new Paper(0, -1), Ink.Soft);
        return new Drawing(picture, "Gusset bent by an end moment, side view",
            $"The plate is clamped at the weld and curves up to the first bolt, {Figures.Text(g)} mm away; beyond, the leg holds it straight. " +
            $"The end tangent prolonged backwards meets the straight plate about half way: the model's hinge sits {Figures.Text(gusset.HingeDistance)} mm behind the first bolt. Deflections are enlarged.");
    }
}
