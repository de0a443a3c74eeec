using System.Collections.Immutable;
using StrutLessons.Joints;
using StrutLessons.Notebook.Maths;
using StrutLessons.Plates;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>
    /// A girder seen from its side under a moment at the first bolt: lines of equal deflection of the web, and of the gusset where it stands on the flange.
    /// </summary>
    /// <param name="joint">The plate analysis.</param>
    public static Drawing GirderDeflection(GirderJointFlexibility joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        GirderShape girder = joint.Girder;
        bool onFlange = joint.Height is null;
        double web = girder.WebHeight, reach = 1.3 * web, gusset = onFlange ? joint.UnitMomentGusset.Y.Max() : 0;
        double scale = Math.Min(620 / (2 * reach), 380 / (web + gusset));
        Paper At(double x, double y) => new(360 + scale * x, 30 + scale * (web + gusset - y));
        double largest = joint.UnitMomentGirder.Deflection.Max(Math.Abs);
        Picture picture = Picture.Empty(720, 30 + scale * (web + gusset) + 56);
        bool Shown((Paper From, Paper To) line) => Math.Min(line.From.X, line.To.X) >= At(-reach, 0).X && Math.Max(line.From.X, line.To.X) <= At(reach, 0).X;
        for (int i = 1; i < 10; i++)
        {
            ImmutableArray<(Paper, Paper)> line = [.. Contour(joint.UnitMomentGirder, At, largest * i / 10).Where(Shown)];
            picture = line.IsEmpty ? picture : picture.With(new Segments(line, Ink.Compression, i % 2 == 0 ? 1.8 : 0.8));
        }

        if (onFlange)
        {
            Paper OnTop(double x, double y) => At(x, web + y);
            double most = joint.UnitMomentGusset.Deflection.Max(Math.Abs);
            picture = picture.With(new Segments(Rim(joint.UnitMomentGusset, OnTop), Ink.Text, 1.4));
            for (int i = 1; i < 10; i++)
            {
                ImmutableArray<(Paper, Paper)> line = Contour(joint.UnitMomentGusset, OnTop, most * i / 10);
                picture = line.IsEmpty ? picture : picture.With(new Segments(line, Ink.Tension, i % 2 == 0 ? 1.8 : 0.8));
            }
        }
        else
        {
            double height = joint.Height!.Value, left = -joint.Plate.Left, right = joint.Plate.Right;
            picture = picture.With(Stroke.Line(At(left, height), At(right, height), Ink.Force, 4)).Name("foot of the gusset", At(right, height), RightWay, Ink.Force);
        }

        picture = picture.With(
                Stroke.Line(At(-reach, 0), At(reach, 0), Ink.Text, Math.Max(3, scale * girder.FlangeThickness)),
                Stroke.Line(At(-reach, web), At(reach, web), Ink.Text, Math.Max(3, scale * girder.FlangeThickness)))
            .Dimension(At(-reach, 0), At(-reach, web), LeftWay, 12, Measure("h_s", web))
            .With(new Words("Lines of equal deflection in steps of 10 % of each plate's largest; the deflection is out of the page", new Paper(28, At(0, 0).Y + 40), Anchor.Start, 12, Ink.Soft));
        return new Drawing(picture, $"Girder under a moment of the strut, {(joint.Span is null ? "flanges held in their lines" : "between forks")}, plate analysis",
            $"Side view of the girder {Figures.Text(2 * reach)} mm to both sides of the joint, web {Figures.Text(web)} mm high. "
            + (onFlange ? "The gusset stands on the top flange and bends; the web below bends where the flange turns, less and less away from the joint." : "The gusset's foot turns the web; the lines of equal deflection close around it above and below."));
    }

    /// <summary>The section of a girder at the joint, bent by a moment on its web, for one or several heights of the foot at one scale.</summary>
    /// <param name="webs">Plate analyses of girders of one shape.</param>
    /// <exception cref="InputException">None, or more than four.</exception>
    public static Drawing GirderProfile(params IReadOnlyList<WebFootResult> webs)
    {
        ArgumentNullException.ThrowIfNull(webs);
        Profile[] all = [.. webs.Select(w => new Profile(w.UnitMoment, w.Girder, w.Height, $"foot at {Figures.Text(w.Height)} mm"))];
        return Profiles(all, "Web bent by a moment of the strut at its gusset, plate analysis");
    }

    /// <summary>The section of a girder at the joint: flanges held in their lines, and the whole girder twisted between its forks, at one scale.</summary>
    /// <param name="joint">A joint on a girder by plate analysis.</param>
    /// <exception cref="InputException">The joint has no girder, or its web is stiffened.</exception>
    public static Drawing GirderProfile(JointByPlates joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        var all = new List<Profile>();
        if (joint.FlangesHeld is { } held)
        {
            all.Add(new(held.UnitMomentGirder, held.Girder, held.Height, "flanges held: the local part"));
        }

        if (joint.WholeGirder is { } whole)
        {
            all.Add(new(whole.UnitMomentGirder, whole.Girder, whole.Height, "whole girder: local and global"));
        }

        return Profiles(all, "Section of the girder at the joint, bent by a moment of the strut, plate analysis");
    }

    private static Drawing Profiles(IReadOnlyList<Profile> all, string title)
    {
        if (all.Count is 0 or > 4)
        {
            throw new InputException("profiles", $"{all.Count}", "one to four", "Give plate analyses of a girder whose web can bend.");
        }

        double panel = 680.0 / all.Count, tallest = all.Max(p => p.Girder.WebHeight), widest = all.Max(p => p.Girder.FlangeWidth);
        double scale = Math.Min(260 / tallest, 0.5 * panel / widest), most = all.Max(p => p.Column.Max(q => Math.Abs(q.W)));
        double factor = 34 / most;
        Picture picture = Picture.Empty(720, 410);
        for (int i = 0; i < all.Count; i++)
        {
            Profile p = all[i];
            var foot = new Paper(20 + panel * (i + 0.5), 340);
            Paper At(double w, double y) => foot + new Paper(factor * w, -scale * y);
            (double Y, double W)[] column = p.Column;
            double half = 0.5 * scale * p.Girder.FlangeWidth, web = p.Girder.WebHeight;
            double Turn(int a, int b) => factor / scale * (column[b].W - column[a].W) / (column[b].Y - column[a].Y);
            Stroke Flange(double w, double y, double turn, Ink ink, double width, string dash = "") =>
                Stroke.Line(At(w, y) + new Paper(-half, -half * turn), At(w, y) + new Paper(half, half * turn), ink, width, dash);
            picture = picture.With(
                Stroke.Line(At(0, 0), At(0, web), Ink.Soft, 1, "6 4"), Flange(0, 0, 0, Ink.Soft, 1, "6 4"), Flange(0, web, 0, Ink.Soft, 1, "6 4"),
                new Stroke([.. column.Select(q => At(q.W, q.Y))], Ink.Text, 3),
                Flange(column[0].W, 0, Turn(0, 1), Ink.Text, 4), Flange(column[^1].W, web, Turn(column.Length - 2, column.Length - 1), Ink.Text, 4));
            int at = p.Height is { } height ? Enumerable.Range(1, column.Length - 2).MinBy(k => Math.Abs(column[k].Y - height)) : column.Length - 1;
            Paper root = At(column[at].W, column[at].Y);
            double slope = at == column.Length - 1 ? Turn(at - 1, at) : Turn(at - 1, at + 1);
            Paper way = p.Height is null ? new Paper(slope, -1) : new Paper(1, slope);
            picture = picture.With(Stroke.Line(root, root + 0.34 * half / way.Length * 2 * way, Ink.Force, 4))
                .With(new Words(p.Title, new Paper(foot.X, 380), Anchor.Middle, 13));
        }

        picture = picture.With(new Words(
            $"Moment 1 kNm; displacements enlarged, the largest is {Figures.Text(1e6 * most)} mm; dashed: before loading; thick stub: the gusset", new Paper(28, 404), Anchor.Start, 12, Ink.Soft));
        return new Drawing(picture, title,
            $"{all.Count} view{(all.Count > 1 ? "s" : "")} of the girder's section at the joint, drawn at one scale: {string.Join("; ", all.Select(p => $"{p.Title}, largest displacement {Figures.Text(1e6 * p.Column.Max(q => Math.Abs(q.W)))} mm per kNm"))}.");
    }

    /// <summary>The web over the joint: nodes of the column nearest to the bolt line.</summary>
    private sealed record Profile(PlateField Field, GirderShape Girder, double? Height, string Title)
    {
        internal (double Y, double W)[] Column { get; } = Take(Field);

        private static (double, double)[] Take(PlateField field)
        {
            double nearest = field.X.MinBy(Math.Abs);
            return [.. Enumerable.Range(0, field.X.Count).Where(k => Math.Abs(field.X[k] - nearest) < 1e-6).Select(k => (field.Y[k], field.Deflection[k])).OrderBy(p => p.Item1)];
        }
    }
}
