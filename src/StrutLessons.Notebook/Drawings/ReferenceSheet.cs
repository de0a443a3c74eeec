using StrutLessons.Nonlinear;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Puts a section of the reference analysis on paper, where it lies or moved and rolled; y to the right, z upwards, one scale.</summary>
/// <param name="Section">The section.</param>
/// <param name="Origin">Where the section's origin lies on paper before loading.</param>
/// <param name="Scale">Pixels for one mm.</param>
internal sealed record ReferenceSheet(ReferenceSection Section, Paper Origin, double Scale)
{
    /// <summary>The largest scale at which the section fits at all these places.</summary>
    internal static ReferenceSheet Fit(ReferenceSection section, Box part, IEnumerable<(Planar Shift, double Roll)> places)
    {
        Planar[] all = [.. places.SelectMany(p => section.Corners.Select(c => Moved(section, c, p.Shift, p.Roll)))];
        double left = all.Min(p => p.Y), right = all.Max(p => p.Y), low = all.Min(p => p.Z), high = all.Max(p => p.Z);
        double scale = Math.Min(part.Width / (right - left), part.Height / (high - low));
        return new(section, new Paper(part.Centre.X - scale * (left + right) / 2, part.Centre.Y + scale * (low + high) / 2), scale);
    }

    internal Paper At(Planar point) => new(Origin.X + Scale * point.Y, Origin.Y - Scale * point.Z);

    internal Paper At(Planar point, Planar shift, double roll) => At(Moved(Section, point, shift, roll));

    /// <summary>The steel as one area: rectangles with a line around them, and again without, so that no line and no seam is left inside.</summary>
    internal IEnumerable<Mark> Steel(Planar shift, double roll, Ink fill = Ink.Steel)
    {
        foreach (double line in (double[])[2.6, 0])
        {
            foreach (SectionRectangle r in Section.Rectangles)
            {
                Planar[] corners = [new(r.YMin, r.ZMin), new(r.YMax, r.ZMin), new(r.YMax, r.ZMax), new(r.YMin, r.ZMax)];
                yield return Stroke.Area(corners.Select(c => At(c, shift, roll)), fill, line > 0 ? Ink.Text : fill, Math.Max(line, 0.8));
            }
        }
    }

    /// <summary>The outline with sharp corners.</summary>
    internal Stroke Ring(Planar shift, double roll, Ink ink, string dash)
    {
        IReadOnlyList<Planar> c = Section.Corners;
        Planar[] ring = c.Count == 5 ? [c[0], c[1], c[2], new(c[3].Y, c[2].Z), c[3], c[4]] : [.. c];
        return new([.. ring.Select(p => At(p, shift, roll))], ink, 1.4, dash, true);
    }

    /// <summary>A point of the section after the shear centre has moved and the section has rolled about it, from y towards z.</summary>
    private static Planar Moved(ReferenceSection section, Planar point, Planar shift, double roll)
    {
        Planar arm = point - section.ShearCentre;
        (double sin, double cos) = Math.SinCos(roll);
        return section.ShearCentre + shift + new Planar(arm.Y * cos - arm.Z * sin, arm.Y * sin + arm.Z * cos);
    }
}
