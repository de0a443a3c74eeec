using System.Text;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

/// <summary>A chart in words and as a table of numbers.</summary>
internal static class ChartText
{
    private const int MostRows = 13;

    /// <summary>What a reader who cannot see the chart should know.</summary>
    internal static string Describe(Chart chart)
    {
        var text = new StringBuilder($"Horizontal axis: {Label.Plain(chart.XAxis.Title)}. Vertical axis: {Label.Plain(chart.YAxis.Title)}.");
        foreach (Series s in chart.Series)
        {
            text.Append($" {Label.Plain(s.Name)}: from {Figures.Text(s.Y[0])} at {Figures.Text(s.X[0])} to {Figures.Text(s.Y[^1])} at {Figures.Text(s.X[^1])}");
            int top = Enumerable.Range(0, s.Y.Length).MaxBy(i => s.Y[i]);
            text.Append(top > 0 && top < s.Y.Length - 1 ? $", largest {Figures.Text(s.Y[top])} at {Figures.Text(s.X[top])}." : ".");
        }

        foreach (Level level in chart.Levels)
        {
            text.Append($" Line at {Figures.Text(level.At)}: {Label.Plain(level.Text)}.");
        }

        foreach (Remark remark in chart.Remarks)
        {
            text.Append($" Marked at {Figures.Text(remark.X)}, {Figures.Text(remark.Y)}: {Label.Plain(remark.Text)}.");
        }

        return text.ToString();
    }

    /// <summary>Title, axes, and a table for each group of series over the same horizontal values, thinned to a dozen rows.</summary>
    internal static string Write(Chart chart)
    {
        var text = new StringBuilder(Label.Plain(chart.Title)).Append('\n').Append("vertical: ").Append(Label.Plain(chart.YAxis.Title)).Append('\n');
        IEnumerable<Series> all = chart.Bands.SelectMany(b => (Series[])[new(b.Name + ", lower", b.X, b.Lower, SeriesKind.Line), new(b.Name + ", upper", b.X, b.Upper, SeriesKind.Line)]).Concat(chart.Series);
        foreach (IGrouping<string, Series> group in all.GroupBy(s => string.Join(' ', s.X)))
        {
            Series[] series = [.. group];
            int count = series[0].X.Length;
            int[] rows = [.. Enumerable.Range(0, Math.Min(count, MostRows)).Select(i => count <= MostRows ? i : (int)Math.Round((count - 1.0) * i / (MostRows - 1)))];
            List<string[]> table = [[Label.Plain(chart.XAxis.Title), .. series.Select(s => Label.Plain(s.Name))]];
            table.AddRange(rows.Select(r => (string[])[Figures.Text(series[0].X[r]), .. series.Select(s => Figures.Text(s.Y[r]))]));
            text.Append(Table(table));
        }

        foreach (Remark remark in chart.Remarks)
        {
            text.Append($"({Figures.Text(remark.X)}; {Figures.Text(remark.Y)}) {Label.Plain(remark.Text)}\n");
        }

        return text.ToString().TrimEnd('\n');
    }

    /// <summary>Columns aligned to the right, two blanks between them.</summary>
    internal static string Table(IReadOnlyList<string[]> rows)
    {
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(c => rows.Max(r => r[c].Length))];
        return string.Concat(rows.Select(r => string.Join("  ", r.Select((cell, c) => cell.PadLeft(widths[c]))) + "\n"));
    }
}
