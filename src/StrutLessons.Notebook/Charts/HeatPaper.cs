using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Charts;

/// <summary>Draws a heat map: one colour from pale to full, so that it reads in grey as well; the mean of each cell is written in it where there is room.</summary>
internal static class HeatPaper
{
    private const int MostColumns = 12, MostRows = 10;
    private const double Top = 52, Right = 612;

    internal static Drawing Draw(StudyTable table, string x, string y, string value)
    {
        StudySteps across = StudySteps.Along(table, x, MostColumns), up = StudySteps.Along(table, y, MostRows);
        ImmutableArray<double> all = table.Numbers(value);
        Dictionary<(int, int), double> cells = Enumerable.Range(0, table.RowCount)
            .Where(r => double.IsFinite(all[r]) && across.Of[r] >= 0 && up.Of[r] >= 0)
            .GroupBy(r => (across.Of[r], up.Of[r])).ToDictionary(g => g.Key, g => g.Average(r => all[r]));
        if (cells.Count == 0)
        {
            throw new InputException("column", $"'{value}'", "a column with numbers", "No case has a value to show.");
        }

        double least = cells.Values.Min(), most = cells.Values.Max();
        double left = 72 + up.Names.Max(n => Label.Read(n).Width(12)), width = (Right - left) / across.Names.Length;
        double height = Math.Clamp(330.0 / up.Names.Length, 24, 46), bottom = Top + height * up.Names.Length;
        List<Mark> marks = [new Words($"{Plot.Title(table.Column(value))}, mean of the cases", new Paper(20, 26), Anchor.Start, 15, Bold: true)];
        foreach (((int i, int j), double mean) in cells)
        {
            double shade = Shade(mean), x0 = left + i * width, y1 = bottom - j * height;
            marks.Add(Stroke.Area([new(x0, y1 - height), new(x0 + width, y1 - height), new(x0 + width, y1), new(x0, y1)], Ink.Compression, Ink.Sheet, 1, shade));
            string text = Figures.Text(mean, 3);
            if (Label.Read(text).Width(12) < width - 4)
            {
                marks.Add(new Words(text, new Paper(x0 + width / 2, y1 - height / 2 + 4.5), Anchor.Middle, 12, shade > 0.64 ? Ink.Sheet : Ink.Text));
            }
        }

        for (int i = 0; i < across.Names.Length; i++)
        {
            marks.Add(new Words(across.Names[i], new Paper(left + (i + 0.5) * width, bottom + 17), Anchor.Middle, across.Names.Max(n => Label.Read(n).Width(12)) < width - 4 ? 12 : 9));
        }

        for (int j = 0; j < up.Names.Length; j++)
        {
            marks.Add(new Words(up.Names[j], new Paper(left - 8, bottom - (j + 0.5) * height + 4), Anchor.End, 12));
        }

        marks.Add(new Words(Plot.AxisTitle(table.Column(x)), new Paper((left + Right) / 2, bottom + 42), Anchor.Middle, 13));
        marks.Add(new Words(Plot.AxisTitle(table.Column(y)), new Paper(26, (Top + bottom) / 2), Anchor.Middle, 13, Turned: true));
        marks.AddRange(Scale(bottom, least, most, Shade));
        marks.Add(new Words(Plot.AxisTitle(table.Column(value)), new Paper(708, (Top + bottom) / 2), Anchor.Middle, 13, Turned: true));
        ((int, int) Place, double Value) low = cells.Select(c => (c.Key, c.Value)).MinBy(c => c.Value), high = cells.Select(c => (c.Key, c.Value)).MaxBy(c => c.Value);
        string Where((int I, int J) p) => $"{table.Column(x).Name} {across.Names[p.I]} and {table.Column(y).Name} {up.Names[p.J]}";
        return new Drawing(Picture.Empty(720, bottom + 56).With(marks), $"{Plot.Title(table.Column(value))} over {table.Column(x).Name} and {table.Column(y).Name}",
            $"Mean of {Label.Plain(Plot.AxisTitle(table.Column(value)))} in {cells.Count} cells; smallest {Figures.Text(low.Value)} at {Where(low.Place)}; largest {Figures.Text(high.Value)} at {Where(high.Place)}.");

        double Shade(double mean) => most > least ? 0.06 + 0.9 * (mean - least) / (most - least) : 0.5;
    }

    /// <summary>The shades with their values, on the right.</summary>
    private static IEnumerable<Mark> Scale(double bottom, double least, double most, Func<double, double> shade)
    {
        const int steps = 9;
        double height = (bottom - Top) / steps;
        for (int i = 0; i < steps; i++)
        {
            double y1 = bottom - i * height;
            yield return Stroke.Area([new(632, y1 - height), new(650, y1 - height), new(650, y1), new(632, y1)], Ink.Compression, opacity: shade(least + (most - least) * i / (steps - 1)));
        }

        yield return new Words(Figures.Text(least, 3), new Paper(655, bottom), Anchor.Start, 12);
        yield return new Words(Figures.Text(most, 3), new Paper(655, Top + 9), Anchor.Start, 12);
    }
}
