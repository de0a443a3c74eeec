using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Charts;

/// <summary>Draws swings about a common line: pale to the first value of a factor, full to its last.</summary>
internal static class TornadoPaper
{
    private const double Top = 74, RowHeight = 44, Right = 690;

    internal static Drawing Draw(OneAtATime result)
    {
        string unit = result.Quantity.Unit is "-" or "" ? "–" : result.Quantity.Unit;
        double left = 24 + result.Swings.Max(s => Label.Read(s.Variable.Name).Width(13)), bottom = Top + RowHeight * result.Swings.Length;
        var axis = new ChartAxis($"{char.ToUpperInvariant(result.Quantity.Name[0])}{result.Quantity.Name[1..]} ({unit})");
        double[] ends = [.. result.Swings.SelectMany(s => new[] { s.AtLow, s.AtHigh }).Append(result.Base)];
        // Room on both sides for the words at the bars' ends.
        double margin = 0.16 * Math.Max(ends.Max() - ends.Min(), 1e-9);
        Ticks ticks = Ticks.For(axis with { From = ends.Min() - margin, To = ends.Max() + margin }, ends, 6, tight: true);
        var scale = new LyingScale(left, Right, Top, bottom, ticks, axis.Title);
        List<Mark> marks = [new Words($"One factor at a time: {result.Quantity.Name}", new Paper(20, 26), Anchor.Start, 15, Bold: true), .. scale.Marks()];
        for (int i = 0; i < result.Swings.Length; i++)
        {
            FactorSwing s = result.Swings[i];
            double y = Top + RowHeight * (i + 0.5), middle = scale.Place(result.Base);
            marks.Add(new Words(s.Variable.Name, new Paper(left - 10, y + 4.5), Anchor.End, 13));
            bool together = (s.AtLow - result.Base) * (s.AtHigh - result.Base) > 0;
            foreach ((double value, double opacity, string words) in new[] { (s.AtLow, 0.3, s.Low), (s.AtHigh, 0.9, s.High) }.OrderByDescending(e => Math.Abs(e.Item1 - result.Base)))
            {
                double end = scale.Place(value), half = together && value == (Math.Abs(s.AtLow - result.Base) > Math.Abs(s.AtHigh - result.Base) ? s.AtHigh : s.AtLow) ? 6 : 13;
                marks.Add(Stroke.Area([new(middle, y - half), new(end, y - half), new(end, y + half), new(middle, y + half)], Ink.Compression, Ink.Text, 0.8, opacity));
            }

            marks.AddRange(EndWords(s, y, scale.Place, result.Base, together));
        }

        double at = scale.Place(result.Base);
        marks.Add(Stroke.Line(new Paper(at, Top - 4), new Paper(at, bottom), Ink.Text, 1.4));
        marks.Add(new Words($"the study's strut: {Figures.Text(result.Base)} {(unit == "–" ? "" : unit)}".TrimEnd(), new Paper(at, Top - 12), Anchor.Middle, 12));
        string described = string.Join("; ", result.Swings.Select(s => $"{s.Variable.Name} from {s.Low} to {s.High}: {Figures.Text(s.AtLow)} to {Figures.Text(s.AtHigh)}"));
        return new Drawing(Picture.Empty(720, bottom + 56).With(marks), $"Tornado of the {result.Quantity.Name}", $"{Label.Plain(axis.Title)} about {Figures.Text(result.Base)}, one factor at a time, largest swing first. {described}. Pale bars: first value; full bars: last value.");
    }

    /// <summary>The factor's values at the ends of its bars; where both lie on one side of the line, the inner one is named behind the outer one.</summary>
    private static IEnumerable<Words> EndWords(FactorSwing s, double y, Func<double, double> place, double middle, bool together)
    {
        (double Value, string Words) low = (s.AtLow, s.Low), high = (s.AtHigh, s.High);
        (low, high) = low.Value <= high.Value ? (low, high) : (high, low);
        if (together && low.Value < middle)
        {
            yield return new Words($"{low.Words} (inner bar {high.Words})", new Paper(place(middle) + 6, y + 4.5), Anchor.Start, 12, Halo: true);
        }
        else if (together)
        {
            yield return new Words($"{high.Words} (inner bar {low.Words})", new Paper(place(middle) - 6, y + 4.5), Anchor.End, 12, Halo: true);
        }
        else
        {
            yield return new Words(low.Words, new Paper(Math.Min(place(low.Value), place(middle)) - 6, y + 4.5), Anchor.End, 12, Halo: true);
            yield return new Words(high.Words, new Paper(Math.Max(place(high.Value), place(middle)) + 6, y + 4.5), Anchor.Start, 12, Halo: true);
        }
    }
}
