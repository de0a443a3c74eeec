using StrutLessons.Notebook.Maths;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Drawings of the library's results, to scale. Each takes a result and returns a finished drawing.</summary>
public static partial class Draw
{
    private static readonly Paper Up = new(0, -1), Down = new(0, 1), LeftWay = new(-1, 0), RightWay = new(1, 0);

    /// <summary>The angle to scale, with the parts asked for.</summary>
    /// <param name="section">The section.</param>
    /// <param name="parts">What to show; dimensions and both pairs of axes if nothing is said.</param>
    public static Drawing Section(AngleSection section, SectionParts parts = SectionParts.Usual)
    {
        ArgumentNullException.ThrowIfNull(section);
        SectionSheet sheet = SectionSheet.Fit(section, new Box(170, 100, 510, 440));
        Picture picture = Picture.Empty(640, 520).With(Steel(sheet));
        picture = parts.HasFlag(SectionParts.PrincipalAxes) ? WithPrincipalAxes(picture, sheet) : picture;
        picture = parts.HasFlag(SectionParts.Ellipse) ? WithEllipse(picture, sheet) : picture;
        picture = parts.HasFlag(SectionParts.LegAxes) ? WithLegAxes(picture, sheet) : picture;
        picture = WithCentroid(picture, sheet);
        picture = parts.HasFlag(SectionParts.Dimensions) ? WithDimensions(picture, sheet) : picture;
        picture = parts.HasFlag(SectionParts.ShearCentre) ? WithShearCentre(picture, sheet) : picture;
        picture = parts.HasFlag(SectionParts.Corners) ? WithCorners(picture, sheet) : picture;
        return new Drawing(picture, $"Section {section}", Describe(section));
    }

    private static string Describe(AngleSection s) =>
        $"The angle to scale, its connected leg along the top and its outstanding leg hanging down on the left. " +
        $"The centroid lies {Figures.Text(s.CentroidY)} mm from the heel along the connected leg and {Figures.Text(s.CentroidZ)} mm below its outer face. " +
        $"The minor axis v–v rises by {Figures.Text(Math.Atan2(s.AxisV.Z, s.AxisV.Y) * 180 / Math.PI, 3)}° from the connected leg; the major axis u–u is square to it and passes towards the heel.";

    private static Stroke Steel(SectionSheet sheet) => Stroke.Area(sheet.Outline(), Ink.Steel, Ink.Text, 1.6);

    private static Picture WithCentroid(Picture picture, SectionSheet sheet) =>
        picture.With(new Disc(sheet.Origin, 4, Ink.Text, 1.4, Ink.Sheet), new Disc(sheet.Origin, 1.2, Ink.None, 0, Ink.Text));

    private static Picture WithEllipse(Picture picture, SectionSheet sheet)
    {
        AngleSection s = sheet.Section;
        // A tangent parallel to u–u lies i_u away from it, so the half axis along v–v is i_u and the one along u–u is i_v.
        return picture.With(new Stroke([.. sheet.Ellipse(s.RadiusV, s.RadiusU)], Ink.Fifth, 1.6, "2 3", true))
            .Name($"$i_u$ = {Figures.Text(s.RadiusU)} mm", sheet.At(s.FromPrincipal(0, -s.RadiusU)), SectionSheet.Way(-s.AxisV), Ink.Fifth)
            .Name($"$i_v$ = {Figures.Text(s.RadiusV)} mm", sheet.At(s.FromPrincipal(-s.RadiusV, 0)), SectionSheet.Way(-s.AxisU), Ink.Fifth);
    }

    private static Picture WithPrincipalAxes(Picture picture, SectionSheet sheet)
    {
        AngleSection s = sheet.Section;
        return Axis(Axis(picture, sheet, s.AxisU, Ink.Major, "u", "14 4"), sheet, s.AxisV, Ink.Minor, "v", "14 4 3 4");
    }

    /// <summary>A principal axis with its letter at both ends and an arrow in the positive direction.</summary>
    private static Picture Axis(Picture picture, SectionSheet sheet, Planar axis, Ink ink, string letter, string dash)
    {
        double least = sheet.Section.Corners.Min(c => c.Position.Dot(axis)), most = sheet.Section.Corners.Max(c => c.Position.Dot(axis));
        Paper way = SectionSheet.Way(axis);
        Paper plus = sheet.Origin + Math.Max(sheet.Scale * most + 34, 80) * way, minus = sheet.Origin + Math.Min(sheet.Scale * least - 24, -70) * way;
        return picture.With(Stroke.Line(minus, plus - 6 * way, ink, 1.5, dash), Lines.Head(plus, way, 9, ink))
            .Name($"${letter}$", plus, way, ink, 16, 4, true).Name($"${letter}$", minus, -1 * way, ink, 16, 4, true);
    }

    private static Picture WithLegAxes(Picture picture, SectionSheet sheet)
    {
        Paper o = sheet.Origin, y = o + 62 * RightWay, z = o + 62 * Up;
        return picture.With(Lines.Arrow(o, y, Ink.Text, 1.3, 8)).With(Lines.Arrow(o, z, Ink.Text, 1.3, 8))
            .Name("$y$", y, RightWay, size: 15, gap: 4).Name("$z$", z, Up, size: 15, gap: 4);
    }

    private static Picture WithDimensions(Picture picture, SectionSheet sheet)
    {
        AngleSection s = sheet.Section;
        double bc = s.ConnectedLength, bo = s.OutstandingLength, t = s.Thickness;
        return picture
            .Dimension(sheet.At(0, 0), sheet.Origin, Up, 22, $"$c_y$ = {Figures.Text(s.CentroidY)} mm")
            .Dimension(sheet.At(0, 0), sheet.At(bc, 0), Up, 58, $"{Figures.Text(bc)} mm")
            .Dimension(sheet.At(0, 0), sheet.Origin, LeftWay, 22, $"$c_z$ = {Figures.Text(s.CentroidZ)} mm")
            .Dimension(sheet.At(0, 0), sheet.At(0, bo), LeftWay, 130, $"{Figures.Text(bo)} mm")
            .Dimension(sheet.At(bc, 0), sheet.At(bc, t), RightWay, 18, $"$t$ = {Figures.Text(t)} mm");
    }

    private static Picture WithShearCentre(Picture picture, SectionSheet sheet)
    {
        Paper m = sheet.At(sheet.Section.ShearCentre);
        return picture.With(Stroke.Line(m + new Paper(-5, -5), m + new Paper(5, 5), Ink.Text, 1.8), Stroke.Line(m + new Paper(-5, 5), m + new Paper(5, -5), Ink.Text, 1.8))
            .Name("shear centre", m, new Paper(-1, -1));
    }

    private static Picture WithCorners(Picture picture, SectionSheet sheet)
    {
        foreach (StressPoint corner in sheet.Section.Corners)
        {
            Paper at = sheet.At(corner.Position);
            picture = picture.With(new Disc(at, 3.4, Ink.Text, 1.2, Ink.Sheet));
        }

        foreach (StressPoint corner in sheet.Section.Corners)
        {
            Paper at = sheet.At(corner.Position);
            picture = picture.Name(CornerNames.Words(corner.Corner), at, CornerNames.Outwards(corner.Corner));
        }

        return picture;
    }
}
