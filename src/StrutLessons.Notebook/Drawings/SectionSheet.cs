using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Puts the section on paper: y to the right, z (towards the gusset) upwards, both to the same scale.</summary>
/// <param name="Section">The section.</param>
/// <param name="Origin">Where the centroid lies on paper.</param>
/// <param name="Scale">Pixels for one mm.</param>
internal sealed record SectionSheet(AngleSection Section, Paper Origin, double Scale)
{
    /// <summary>The largest scale at which the given millimetres fit into the given part of the paper.</summary>
    internal static SectionSheet Fit(AngleSection section, Box part, double left, double right, double up, double down)
    {
        double scale = Math.Min(part.Width / (right - left), part.Height / (up - down));
        double x = part.Centre.X - scale * (left + right) / 2, y = part.Centre.Y + scale * (up + down) / 2;
        return new SectionSheet(section, new Paper(x, y), scale);
    }

    /// <summary>The section alone, as large as the part of the paper allows.</summary>
    internal static SectionSheet Fit(AngleSection s, Box part) =>
        Fit(s, part, -s.CentroidY, s.ConnectedLength - s.CentroidY, s.CentroidZ, s.CentroidZ - s.OutstandingLength);

    internal Paper At(Planar point) => new(Origin.X + Scale * point.Y, Origin.Y - Scale * point.Z);

    internal Paper At(double alongConnectedLeg, double alongOutstandingLeg) => At(Section.FromHeel(alongConnectedLeg, alongOutstandingLeg));

    /// <summary>A direction of the section as a direction on paper.</summary>
    internal static Paper Way(Planar direction) => new(direction.Y, -direction.Z);

    /// <summary>The outline with fillet and rounded toes.</summary>
    internal Paper[] Outline()
    {
        double bc = Section.ConnectedLength, bo = Section.OutstandingLength, t = Section.Thickness;
        double r1 = Section.Angle.RootRadius, r2 = Section.Angle.ToeRadius;
        return
        [
            At(0, 0), At(bc, 0),
            .. Arc(bc - r2, t - r2, r2, 0, 90),
            .. Arc(t + r1, t + r1, r1, 270, 180),
            .. Arc(t - r2, bo - r2, r2, 0, 90),
            At(0, bo),
        ];
    }

    internal IEnumerable<Paper> Ellipse(double alongU, double alongV) => Enumerable.Range(0, 96).Select(i =>
    {
        double turn = i * Math.PI / 48;
        return At(Section.FromPrincipal(alongU * Math.Cos(turn), alongV * Math.Sin(turn)));
    });

    private IEnumerable<Paper> Arc(double y, double z, double radius, double from, double to)
    {
        int steps = radius > 0 ? 10 : 0;
        for (int i = 0; i <= steps; i++)
        {
            double turn = (from + (to - from) * i / Math.Max(steps, 1)) * Math.PI / 180;
            yield return At(y + radius * Math.Cos(turn), z + radius * Math.Sin(turn));
        }
    }
}
