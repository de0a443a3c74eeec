using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Charts;

/// <summary>Draws parallel coordinates. The thirds differ in colour, dash and width, so that they are told apart in grey.</summary>
internal static class ParallelPaper
{
    private const int MostLines = 180;
    private const double Left = 60, Right = 660, Top = 92, Bottom = 350;

    private static readonly (string Name, Ink Ink, double Width, string Dash)[] Thirds =
        [("lowest third", Ink.Tension, 1.1, "6 3"), ("middle third", Ink.Soft, 0.7, "1 3"), ("highest third", Ink.Compression, 1.5, "")];

    internal static Drawing Draw(StudyTable table, IReadOnlyList<string> columns)
    {
        if (columns.Count is < 2 or > 8 || !table.Column(columns[^1]).IsNumber)
        {
            throw new InputException("columns", $"{columns.Count}, the last '{(columns.Count > 0 ? columns[^1] : "")}'", "two to eight, the last one of numbers", "Name the factors, then the result.");
        }

        ImmutableArray<double> result = table.Numbers(columns[^1]);
        int[] rows = [.. Enumerable.Range(0, table.RowCount).Where(r => double.IsFinite(result[r])).OrderBy(r => result[r])];
        if (rows.Length < 3)
        {
            throw new InputException("table", $"{rows.Length} cases with a result", "three or more", "Run a larger study.");
        }

        ParallelAxis[] axes = [.. columns.Select(c => ParallelAxis.Of(table, c))];
        double Across(int i) => Left + (Right - Left) * i / (columns.Count - 1);
        List<Mark> marks = [new Words($"{Plot.Title(table.Column(columns[^1]))} and what goes with it", new Paper(20, 26), Anchor.Start, 15, Bold: true)];
        int every = 1 + rows.Length / MostLines;
        // The middle third first, so that it hides nothing.
        foreach (int third in (int[])[1, 0, 2])
        {
            for (int k = 0; k < rows.Length; k += every)
            {
                if (3 * k / rows.Length == third && axes.All(a => double.IsFinite(a.Share[rows[k]])))
                {
                    ImmutableArray<Paper> line = [.. axes.Select((a, i) => new Paper(Across(i), Bottom - (Bottom - Top) * a.Share[rows[k]]))];
                    marks.Add(new Stroke(line, Thirds[third].Ink, Thirds[third].Width, Thirds[third].Dash));
                }
            }
        }

        for (int i = 0; i < axes.Length; i++)
        {
            marks.Add(Stroke.Line(new Paper(Across(i), Top), new Paper(Across(i), Bottom), Ink.Text, 1.4));
            // Neighbouring titles stand on two levels.
            marks.Add(new Words(axes[i].Title, new Paper(Across(i), i % 2 == 0 ? 52 : 68), i == 0 ? Anchor.Start : i == axes.Length - 1 ? Anchor.End : Anchor.Middle, 12, Bold: true));
            foreach ((double share, string name) in axes[i].Marks)
            {
                marks.Add(new Words(name, new Paper(Across(i) + 6, Bottom - (Bottom - Top) * share + 4), Anchor.Start, 11, Halo: true));
            }
        }

        double x = Left;
        foreach ((string name, Ink ink, double width, string dash) in Thirds)
        {
            marks.Add(Stroke.Line(new Paper(x, Bottom + 34), new Paper(x + 30, Bottom + 34), ink, width + 0.8, dash));
            marks.Add(new Words($"{name} of the {table.Column(columns[^1]).Name}", new Paper(x + 38, Bottom + 38), Anchor.Start, 12));
            x += 62 + Label.Read($"{name} of the {table.Column(columns[^1]).Name}").Width(12);
        }

        string Mean(int from, int to) => string.Join(", ", axes.Where(a => a.Numbers.Length > 0).SkipLast(1).Select(a => $"{a.Name} {Figures.Text(rows[from..to].Average(r => a.Numbers[r]), 3)}"));
        return new Drawing(Picture.Empty(720, Bottom + 52).With(marks), $"Parallel coordinates up to the {table.Column(columns[^1]).Name}",
            $"{rows.Length} cases across {string.Join("; ", axes.Select(a => Label.Plain(a.Title)))}. Means in the lowest third: {Mean(0, rows.Length / 3)}. In the highest third: {Mean(2 * rows.Length / 3, rows.Length)}.");
    }

    /// <summary>One upright axis.</summary>
    private sealed record ParallelAxis(string Name, string Title, ImmutableArray<double> Numbers, ImmutableArray<double> Share, ImmutableArray<(double Share, string Name)> Marks)
    {
        internal static ParallelAxis Of(StudyTable table, string column)
        {
            StudyColumn c = table.Column(column);
            if (!c.IsNumber)
            {
                StudySteps steps = StudySteps.Along(table, column, 6);
                double At(int step) => steps.Names.Length > 1 ? step / (steps.Names.Length - 1.0) : 0.5;
                return new(c.Name, Plot.AxisTitle(c), [], [.. steps.Of.Select(At)], [.. steps.Names.Select((n, i) => (At(i), n))]);
            }

            ImmutableArray<double> numbers = table.Numbers(column);
            double least = numbers.Where(double.IsFinite).Min(), most = numbers.Where(double.IsFinite).Max();
            return most > least
                ? new(c.Name, Plot.AxisTitle(c), numbers, [.. numbers.Select(v => (v - least) / (most - least))], [.. ((double[])[0, 0.5, 1]).Select(s => (s, Figures.Text(least + s * (most - least), 3)))])
                : new(c.Name, Plot.AxisTitle(c), numbers, [.. numbers.Select(_ => 0.5)], [(0.5, Figures.Text(least, 3))]);
        }
    }
}
