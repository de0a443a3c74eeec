using StrutLessons.Joints;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>The gusset from its edge with the pushing strut and the pulling tie, once on the strut's side and once on the other.</summary>
    /// <param name="tie">The tie on its joint; both sides are drawn.</param>
    public static Drawing TieSides(TieMoment tie)
    {
        ArgumentNullException.ThrowIfNull(tie);
        double strut = Math.Abs(tie.StrutEccentricity), lever = tie.Tie.Eccentricity, scale = 62 / Math.Max(strut, lever);
        Picture picture = Picture.Empty(720, 330);
        picture = Side(picture, 30, 1, "tie on the strut's side: they counteract");
        picture = Side(picture, 390, -1, "tie on the other side: both bend the same way");
        return new Drawing(picture, "Strut and tie on one gusset, seen from the edge of the plate",
            $"Left the tie lies on the strut's side of the gusset, right on the other. The strut pushes towards the support, {Figures.Text(strut)} mm below the plate's mid-plane; the tie pulls away from it, {Figures.Text(lever)} mm from the mid-plane.");

        Picture Side(Picture on, double left, int side, string title)
        {
            const double length = 280, middle = 150;
            Paper At(double s, double z) => new(left + 20 + s, middle + scale * z);
            double half = 0.5 * tie.LoadPoint.GussetThickness;
            Paper[] wall = [At(-18, 0) with { Y = 60 }, At(0, 0) with { Y = 60 }, At(0, 0) with { Y = 240 }, At(-18, 0) with { Y = 240 }];
            on = on.With(Lines.Hatch(wall, 7, 45, Ink.Soft)).With(
                Stroke.Line(wall[1], wall[2], Ink.Text, 2),
                Stroke.Area([At(0, -half), At(0.7 * length, -half), At(0.7 * length, half), At(0, half)], Ink.Plate, Ink.Text, 1),
                Stroke.Line(At(0, 0), At(0.78 * length, 0), Ink.Soft, 1, "12 3 2 3"),
                Stroke.Line(At(0.34 * length, strut), At(length, strut), Ink.Compression, 1.4, "9 4"));
            on = on.With(Lines.Arrow(At(length, strut), At(0.72 * length, strut), Ink.Compression, 2.6, 12));
            double z = side * lever;
            on = on.With(Stroke.Line(At(0.34 * length, z), At(length, z), Ink.Tension, 1.4, "2 3")).With(Lines.Arrow(At(0.5 * length, z), At(0.72 * length, z) + new Paper(0, 0), Ink.Tension, 2.6, 12));
            on = on.Dimension(At(0.34 * length, 0), At(0.34 * length, strut), LeftWay, 18, "$|z_e|$").Dimension(At(0.34 * length, 0), At(0.34 * length, z), LeftWay, 52, "$e_t$");
            return on.Name("$N$", At(length, strut), new Paper(0.4, 1), Ink.Compression, 16, 6, true).Name("$T$", At(0.55 * length, z), new Paper(0.2, side), Ink.Tension, 16, 8, true)
                .With(new Words(title, new Paper(left + 20 + length / 2, 296), Anchor.Middle, 13));
        }
    }
}
