using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

/// <summary>Draws lying bars.</summary>
internal static class BarPaper
{
    private const double RowHeight = 36, Top = 52;

    internal static Drawing Draw(BarChart chart)
    {
        double left = 24 + chart.Bars.Max(b => Label.Read(b.Name).Width(13)), right = 700;
        double bottom = Top + RowHeight * chart.Bars.Length;
        Ticks ticks = Ticks.For(new ChartAxis(chart.ValueTitle), chart.Bars.Select(b => b.Value).Append(0), 6);
        var scale = new LyingScale(left, right, Top, bottom, ticks, chart.ValueTitle);
        List<Mark> marks = [new Words(chart.Title, new Paper(20, 26), Anchor.Start, 15, Bold: true), .. scale.Marks()];
        for (int i = 0; i < chart.Bars.Length; i++)
        {
            Bar bar = chart.Bars[i];
            double y = Top + RowHeight * (i + 0.5), zero = scale.Place(0), end = scale.Place(bar.Value);
            marks.Add(Stroke.Area([new(zero, y - 11), new(end, y - 11), new(end, y + 11), new(zero, y + 11)], Ink.Compression, Ink.Text, 0.8));
            marks.Add(new Words(bar.Name, new Paper(left - 10, y + 4.5), Anchor.End, 13));
            marks.Add(ValueWords(bar, y, Math.Max(zero, end), right));
        }

        marks.Add(Stroke.Line(new Paper(scale.Place(0), Top), new Paper(scale.Place(0), bottom), Ink.Text, 1.2));
        string words = string.Join("; ", chart.Bars.Select(b => $"{Label.Plain(b.Name)} {Figures.Text(b.Value)}{(b.Remark.Length > 0 ? $" ({Label.Plain(b.Remark)})" : "")}"));
        return new Drawing(Picture.Empty(720, bottom + 56).With(marks), Label.Plain(chart.Title), $"Bars of {Label.Plain(chart.ValueTitle)}: {words}.");
    }

    /// <summary>The value stands behind the bar, or inside it where the bar leaves no room behind.</summary>
    private static Words ValueWords(Bar bar, double y, double end, double right)
    {
        string text = BarChart.ValueText(bar);
        bool fits = end + 8 + Label.Read(text).Width(13) < right + 14;
        return fits ? new Words(text, new Paper(end + 8, y + 4.5), Anchor.Start, 13) : new Words(text, new Paper(end - 8, y + 4.5), Anchor.End, 13, Ink.Sheet, Bold: true);
    }
}
