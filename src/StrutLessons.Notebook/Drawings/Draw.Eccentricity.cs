using StrutLessons.Eccentricity;
using StrutLessons.Notebook.Maths;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>
    /// The section with gusset, bolt and load point: the eccentricity in the axes of the leg (dimensioned) and in the
    /// principal axes (arrows).
    /// </summary>
    /// <param name="point">The load point.</param>
    public static Drawing Eccentricity(LoadPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        BoltedSection at = BoltedSection.Fit(point, new Box(130, 130, 520, 450));
        SectionSheet sheet = at.Sheet;
        Paper load = sheet.At(point.Offset), centroid = sheet.Origin;
        Picture picture = WithPrincipalAxes(Picture.Empty(660, 540).With(at.Marks()), sheet).With(
            Stroke.Line(centroid, load, Ink.Force, 2.6));
        picture = WithComponents(WithCentroid(picture, sheet), point, sheet).With(LoadMark(load));
        picture = point.ThroughOtherLeg
            ? picture.Dimension(centroid, load, Down, 26, Measure("y_e", point.Offset.Y), Ink.Force)
                .Dimension(centroid, load, LeftWay, 26, Measure("z_e", point.Offset.Z), Ink.Force)
                .Dimension(sheet.At(0, 0), load, LeftWay, 74, Measure("g", point.Bolts.Gauge))
            : picture.Dimension(centroid, load, Up, 30 + at.RoomAbove(load), Measure("y_e", point.Offset.Y), Ink.Force)
                .Dimension(centroid, load, RightWay, sheet.Scale * 0.2 * sheet.Section.ConnectedLength + at.RoomRight(load), Measure("z_e", point.Offset.Z), Ink.Force)
                .Dimension(sheet.At(0, 0), load, Up, 66 + at.RoomAbove(load), Measure("g", point.Bolts.Gauge));
        picture = picture.Name("gusset", at.GussetName, at.GussetSide).Name("$N$", load, new Paper(1, -1), Ink.Force, 16, 8, true);
        picture = WithLegend(picture, point);
        return new Drawing(picture, $"Eccentricity: {point.Section}, {point.Bolts}", Describe(point));
    }

    /// <summary>What the two principal parts measure and do, below the drawing.</summary>
    private static Picture WithLegend(Picture picture, LoadPoint point)
    {
        double y = picture.Marks.Max(m => m.Bounds.Bottom) + 34;
        return picture.With(
            Stroke.Line(new Paper(84, y - 4), new Paper(118, y - 4), Ink.Minor, 3),
            new Words($"{Measure("e_v", point.AlongV)} along v–v: bends about the strong axis u–u", new Paper(128, y), Anchor.Start, 13),
            Stroke.Line(new Paper(84, y + 18), new Paper(118, y + 18), Ink.Major, 3),
            new Words($"{Measure("e_u", point.AlongU)} along u–u: bends about the weak axis v–v", new Paper(128, y + 22), Anchor.Start, 13));
    }

    private static string Measure(string symbol, double value) => $"${symbol}$ = {Figures.Text(value)} mm";

    private static string Describe(LoadPoint p) =>
        $"Section with the gusset of {Figures.Text(p.GussetThickness)} mm on the {(p.Face == GussetFace.Outer ? "outer" : "inner")} face of the bolted leg. " +
        $"The force acts at y_e = {Figures.Text(p.Offset.Y)} mm, z_e = {Figures.Text(p.Offset.Z)} mm from the centroid. " +
        $"Along the axis u–u that is {Figures.Text(p.AlongU)} mm (bending about the weak axis v–v), along v–v {Figures.Text(p.AlongV)} mm (bending about the strong axis u–u).";

    /// <summary>A cross in a circle: the force points into the page.</summary>
    private static IEnumerable<Mark> LoadMark(Paper at)
    {
        double d = 7 * Math.Sqrt(0.5);
        return
        [
            new Disc(at, 7, Ink.Force, 2, Ink.Sheet),
            Stroke.Line(at + new Paper(-d, -d), at + new Paper(d, d), Ink.Force, 2),
            Stroke.Line(at + new Paper(-d, d), at + new Paper(d, -d), Ink.Force, 2),
        ];
    }

    /// <summary>The two principal parts, tail to head from the centroid to the load point, with a name where there is room.</summary>
    private static Picture WithComponents(Picture picture, LoadPoint point, SectionSheet sheet)
    {
        AngleSection s = point.Section;
        Paper knee = sheet.At(s.FromPrincipal(0, point.AlongV)), load = sheet.At(point.Offset);
        picture = picture.With(Lines.Arrow(sheet.Origin, knee, Ink.Minor, 3, 11)).With(Lines.Arrow(knee, load, Ink.Major, 3, 9));
        return picture
            .Name("$e_v$", 0.5 * (sheet.Origin + knee), SectionSheet.Way(-s.AxisU), Ink.Minor, 15, 6)
            .Name("$e_u$", 0.5 * (knee + load), SectionSheet.Way(s.AxisV), Ink.Major, 15, 6);
    }
}
