using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>The section at mid-length before loading and at one state of the path, to the section's own scale: how far it has gone and rolled.</summary>
    /// <param name="path">A load path.</param>
    /// <param name="point">Index of the state on the path; the peak if left out.</param>
    /// <exception cref="InputException">No such state.</exception>
    public static Drawing RollingSection(LoadPath path, int? point = null)
    {
        PathPoint state = State(path, point);
        int last = point ?? path.PeakIndex;
        ReferenceSection section = path.Strut.Section;
        ReferenceSheet sheet = ReferenceSheet.Fit(section, new Box(150, 40, 530, 400), [(Planar.Zero, 0), (state.ShearCentreMid, state.TwistMid)]);
        Paper Centroid(PathPoint p) => sheet.At(section.Centroid + p.CentroidMid);
        Picture picture = Picture.Empty(680, 470).With(sheet.Steel(state.ShearCentreMid, state.TwistMid)).With(sheet.Ring(Planar.Zero, 0, Ink.Soft, "5 4"));
        picture = last > 0 ? picture.With(new Stroke([.. path.Points.Take(last + 1).Select(Centroid)], Ink.Force, 2, "2 3")) : picture;
        picture = picture.With(new Disc(sheet.At(section.Centroid), 4, Ink.Soft, 1.4, Ink.Sheet), new Disc(Centroid(state), 4, Ink.Force, 1.6, Ink.Sheet))
            .Name("before loading", sheet.At(section.Corners[^1]), Down, Ink.Soft, 12)
            .Name("path of the centroid", 0.5 * (sheet.At(section.Centroid) + Centroid(state)), RightWay, Ink.Force, 12);
        picture = picture.With(new Words($"N = {Figures.Text(state.Load / 1e3)} kN: {RollWords(state)}, centroid moved by {Figures.Text(state.CentroidMid.Length, 3)} mm (not enlarged)",
            new Paper(60, 446), Anchor.Start, 13));
        return new Drawing(picture, $"The section at mid-length under {Figures.Text(state.Load / 1e3)} kN",
            $"Dashed: before loading. Solid: loaded. The section has {RollWords(state)}; its centroid has moved by {Figures.Text(state.CentroidMid.Y, 3)} mm along the connected leg " +
            $"and {Figures.Text(state.CentroidMid.Z, 3)} mm towards the gusset, measured from the bowed shape and drawn to the scale of the section.");
    }

    /// <summary>The roll in degrees and its sense as seen on paper: y to the right, z up, a positive roll turns y towards z.</summary>
    private static string RollWords(PathPoint state) => Math.Abs(state.TwistMid) < 5e-5
        ? "not rolled"
        : $"rolled by {Figures.Text(Math.Abs(state.TwistMid) * 180 / Math.PI, 3)}° {(state.TwistMid > 0 ? "anticlockwise" : "clockwise")}";
}
