using StrutLessons.Eccentricity;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

/// <summary>The section with its gusset and one bolt. Along the bolted leg and across it, whichever leg that is.</summary>
internal sealed record BoltedSection(LoadPoint Point, SectionSheet Sheet)
{
    private const double Overhang = 0.16;

    internal static BoltedSection Fit(LoadPoint point, Box part)
    {
        AngleSection s = point.Section;
        double tg = point.GussetThickness, over = Overhang * LegLength(point);
        double left = -s.CentroidY, right = s.ConnectedLength - s.CentroidY, up = s.CentroidZ, down = s.CentroidZ - s.OutstandingLength;
        return new BoltedSection(point, point.ThroughOtherLeg
            ? SectionSheet.Fit(s, part, left - tg, right, up, down - over)
            : SectionSheet.Fit(s, part, left, right + over, up + tg, down));
    }

    /// <summary>Where the word "gusset" points to, and on which side it stands.</summary>
    internal Paper GussetName => At(-Overhang * Leg, GussetMiddle);

    internal Paper GussetSide => Point.ThroughOtherLeg ? new Paper(0, -1) : new Paper(-1, 0);

    private double Leg => LegLength(Point);

    private double GussetMiddle => Point.Face == GussetFace.Outer ? -Point.GussetThickness / 2 : Sheet.Section.Thickness + Point.GussetThickness / 2;

    /// <summary>Steel, gusset, bolt and its centre line, first drawn first.</summary>
    internal IEnumerable<Mark> Marks()
    {
        yield return Stroke.Area(Gusset(), Ink.Plate, Ink.Text, 1.2);
        yield return Stroke.Area(Sheet.Outline(), Ink.Steel, Ink.Text, 1.6);
        foreach (Mark mark in Bolt())
        {
            yield return mark;
        }
    }

    /// <summary>How far the highest part of gusset or bolt stands above a point, px; never negative.</summary>
    internal double RoomAbove(Paper load) => Math.Max(0, load.Y - Gusset().Concat(Head()).Append(Sheet.At(0, 0)).Min(p => p.Y));

    /// <summary>How far the section reaches to the right of a point, px; never negative.</summary>
    internal double RoomRight(Paper load) => Math.Max(0, Sheet.At(Sheet.Section.ConnectedLength, 0).X - Math.Max(load.X, Sheet.Origin.X));

    private static double LegLength(LoadPoint p) => p.ThroughOtherLeg ? p.Section.OutstandingLength : p.Section.ConnectedLength;

    private Paper At(double along, double depth) => Point.ThroughOtherLeg ? Sheet.At(depth, along) : Sheet.At(along, depth);

    /// <summary>The plate, broken off beyond the toe; on the inner face it stops before the root fillet.</summary>
    private Paper[] Gusset()
    {
        AngleSection s = Sheet.Section;
        bool outer = Point.Face == GussetFace.Outer;
        double from = outer ? -Overhang * Leg : s.Thickness + s.Angle.RootRadius, to = (1 + Overhang) * Leg;
        double near = outer ? 0 : s.Thickness, far = outer ? -Point.GussetThickness : s.Thickness + Point.GussetThickness;
        return [At(from, near), At(to, near), At(to, far), At(from, far)];
    }

    private IEnumerable<Mark> Bolt()
    {
        double g = Point.Bolts.Gauge, d = Point.Bolts.Diameter;
        (double low, double high) = Grip();
        // Outlines only: the load point lies inside the bolt and must stay in sight.
        yield return Stroke.Area([At(g - d / 2, low), At(g + d / 2, low), At(g + d / 2, high), At(g - d / 2, high)], Ink.None, Ink.Soft, 1);
        yield return Stroke.Area(Head(), Ink.None, Ink.Soft, 1);
        yield return Stroke.Area(Nut(), Ink.None, Ink.Soft, 1);
        yield return Stroke.Line(At(g, low - 0.8 * d), At(g, high + 0.95 * d), Ink.Soft, 0.9, "9 3 2 3");
    }

    /// <summary>From the outer surface of the gusset side to the other, as depths below the outer face of the leg.</summary>
    private (double Low, double High) Grip() => Point.Face == GussetFace.Outer
        ? (-Point.GussetThickness, Sheet.Section.Thickness)
        : (0, Sheet.Section.Thickness + Point.GussetThickness);

    // Head and nut of about 0.65 d and 0.8 d height over a width of 1.6 d: the look of a bolt, not a standard's size.
    private Paper[] Head() => Block(Grip().Low, -0.65);

    private Paper[] Nut() => Block(Grip().High, 0.8);

    private Paper[] Block(double from, double height)
    {
        double g = Point.Bolts.Gauge, d = Point.Bolts.Diameter;
        return [At(g - 0.8 * d, from), At(g + 0.8 * d, from), At(g + 0.8 * d, from + height * d), At(g - 0.8 * d, from + height * d)];
    }
}
