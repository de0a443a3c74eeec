using StrutLessons.Eccentricity;
using StrutLessons.Joints;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Puts a gusset on paper: s along the strut to the right, from the support; the near side of an inclined gusset below.</summary>
internal sealed record GussetSheet(GussetFormula Formula, BoltLine Bolts, Paper Origin, double Scale)
{
    private Gusset Plate => Formula.Gusset;

    private double Cot => Plate.IsSquare ? 0 : 1 / Math.Tan(Plate.Inclination);

    private double End => Plate.FreeLength + Bolts.BoltGroupLength + Plate.EndDistance;

    /// <summary>Where the leg is broken off.</summary>
    private double LegEnd => End + 0.3 * Plate.FreeLength + 30;

    internal double Bottom => Outline().Max(p => p.Y);

    internal double Top => Outline().Min(p => p.Y);

    internal Paper LegName => At(0.5 * (End + LegEnd), -Formula.PatchWidth / 2);

    internal static GussetSheet Fit(GussetFormula formula, BoltLine bolts, Box part)
    {
        var unit = new GussetSheet(formula, bolts, default, 1);
        Box box = Box.Around([.. unit.Outline(), unit.At(unit.LegEnd, 0)]);
        double scale = Math.Min(part.Width / box.Width, part.Height / box.Height);
        return unit with { Scale = scale, Origin = part.Centre - scale * box.Centre };
    }

    internal Paper At(double along, double across) => new(Origin.X + Scale * along, Origin.Y + Scale * across);

    /// <summary>s of the support line at a place across the plate.</summary>
    internal double SupportAt(double across) => across * Cot;

    internal double RoomRight(double s) => Scale * (LegEnd - s);

    internal IEnumerable<Mark> Marks()
    {
        Paper[] outline = Outline();
        Paper foot1 = outline[0], foot2 = outline[^1], along = (foot2 - foot1).Unit, back = new(-Math.Abs(along.Y), along.X * Math.Sign(along.Y));
        Paper from = foot1 - 16 * along, to = foot2 + 16 * along;
        foreach (Mark line in Lines.Hatch([from, to, to + 16 * back, from + 16 * back], 7, 45, Ink.Soft))
        {
            yield return line;
        }

        yield return Stroke.Line(from, to, Ink.Text, 1.4);
        yield return Stroke.Area(outline, Ink.Plate, Ink.Text, 1.4);
        yield return Stroke.Line(foot1, foot2, Ink.Text, 4);
        double g = Plate.FreeLength, half = Formula.PatchWidth / 2, first = g - Bolts.EndDistance;
        yield return Stroke.Area([At(first, -half), At(LegEnd, -half), At(LegEnd, half), At(first, half)], Ink.Steel, opacity: 0.75);
        yield return new Stroke([At(LegEnd, -half), At(first, -half), At(first, half), At(LegEnd, half)], Ink.Text, 1.4);
        yield return new Stroke([.. Enumerable.Range(0, 21).Select(i => At(LegEnd, half * (i - 10) / 10.0) + new Paper(4 * Math.Sin(i * Math.PI / 5), 0))], Ink.Text, 1);
        yield return Stroke.Line(At(SupportAt(0) - 0.02 * g, 0), At(LegEnd, 0) + new Paper(14, 0), Ink.Soft, 1, "12 3 2 3");
        for (int i = 0; i < Bolts.Count; i++)
        {
            yield return new Disc(At(g + i * Bolts.Pitch, 0), Math.Max(3, Scale * Bolts.HoleDiameter / 2), Ink.Text, 1.4, Ink.Sheet);
        }
    }

    /// <summary>The plate from the far corner on the support round to the near corner.</summary>
    private Paper[] Outline()
    {
        double g = Plate.FreeLength, taper = Plate.Taper;
        // Sides open by the taper from the first bolt towards the support and end on the inclined support line.
        double left = (Plate.WidthLeft + taper * g) / (1 - taper * Cot), right = (Plate.WidthRight + taper * g) / (1 + taper * Cot);
        return
        [
            At(SupportAt(-left), -left), At(g, -Plate.WidthLeft), At(End, -Plate.WidthLeft),
            At(End, Plate.WidthRight), At(g, Plate.WidthRight), At(SupportAt(right), right),
        ];
    }
}
