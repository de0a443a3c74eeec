using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Charts;

public static partial class Plot
{
    private const int MostPoints = 1500, MostGroups = 5, Classes = 20;

    /// <summary>Any number of a study against any other, a marker for each case; one kind of marker for each value of a third column.</summary>
    /// <param name="table">The study's table; cases without a result are left out.</param>
    /// <param name="x">Column of numbers along the horizontal axis.</param>
    /// <param name="y">Column of numbers along the vertical axis.</param>
    /// <param name="by">Column whose values, five at most, are told apart; none if left out.</param>
    /// <exception cref="InputException">A column that is none or holds words, or too many values to tell apart.</exception>
    public static Chart Scatter(StudyTable table, string x, string y, string? by = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        return Grouped(table, by).Aggregate(Begin(table, x, y, $"{Title(table.Column(y))} of each case"), (chart, group) =>
        {
            // Beyond some hundred markers more of them only hide each other.
            int[] shown = [.. group.Rows.Where((_, i) => group.Rows.Length <= MostPoints || i % (1 + group.Rows.Length / MostPoints) == 0)];
            ImmutableArray<double> allX = table.Numbers(x), allY = table.Numbers(y);
            shown = [.. shown.Where(r => double.IsFinite(allX[r]) && double.IsFinite(allY[r]))];
            return shown.Length == 0 ? chart : chart.Points(group.Name, shown.Select(r => allX[r]), shown.Select(r => allY[r]));
        });
    }

    /// <summary>The mean of one number of a study along another, a line for each value of a third column.</summary>
    /// <param name="table">The study's table; cases without a result are left out.</param>
    /// <param name="x">Column of numbers along the horizontal axis.</param>
    /// <param name="y">Column of numbers along the vertical axis; averaged over whatever else varies.</param>
    /// <param name="by">Column whose values, five at most, are told apart; none if left out.</param>
    /// <exception cref="InputException">As for <see cref="Scatter"/>.</exception>
    public static Chart Lines(StudyTable table, string x, string y, string? by = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        return Grouped(table, by).Aggregate(Begin(table, x, y, $"{Title(table.Column(y))} along the {table.Column(x).Name}"), (chart, group) =>
        {
            StudyClass[] along = StudyClass.Along(table, x, y, group.Rows, Classes);
            return along.Length == 0 ? chart : chart.LineAndPoints(group.Name, along.Select(c => c.X), along.Select(c => c.Mean));
        });
    }

    /// <summary>How one number of a study spreads along another: all cases, nine of ten, and the median.</summary>
    /// <param name="table">The study's table; cases without a result are left out.</param>
    /// <param name="x">Column of numbers along the horizontal axis; many values are put into classes.</param>
    /// <param name="y">Column of numbers along the vertical axis.</param>
    /// <exception cref="InputException">As for <see cref="Scatter"/>.</exception>
    public static Chart Bands(StudyTable table, string x, string y)
    {
        ArgumentNullException.ThrowIfNull(table);
        StudyClass[] along = StudyClass.Along(table, x, y, [.. Enumerable.Range(0, table.RowCount)], Classes);
        double[] at = [.. along.Select(c => c.X)];
        return Begin(table, x, y, $"Spread of the {table.Column(y).Name}")
            .Between("all cases (pale)", at, along.Select(c => c.Share(0)), along.Select(c => c.Share(1)))
            .Between("nine of ten cases (darker)", at, along.Select(c => c.Share(0.05)), along.Select(c => c.Share(0.95)))
            .Line("median", at, along.Select(c => c.Share(0.5)));
    }

    /// <summary>The mean of one number over two others, as a field of shades with the values written in.</summary>
    /// <param name="table">The study's table; cases without a result are left out.</param>
    /// <param name="x">Column along the horizontal axis, numbers or words.</param>
    /// <param name="y">Column along the vertical axis, numbers or words.</param>
    /// <param name="value">Column of numbers that is shown.</param>
    /// <exception cref="InputException">A column that is none, or no value to show.</exception>
    public static Drawing HeatMap(StudyTable table, string x, string y, string value)
    {
        ArgumentNullException.ThrowIfNull(table);
        return HeatPaper.Draw(table, x, y, value);
    }

    /// <summary>One factor at a time: a bar from the result at its first value to that at its last, the longest on top.</summary>
    public static Drawing Tornado(OneAtATime result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return TornadoPaper.Draw(result);
    }

    /// <summary>Shares of the variance that factors and pairs of factors explain; shares below one per cent are left out.</summary>
    /// <param name="quantity">What varies, in words.</param>
    /// <param name="shares">The shares.</param>
    public static BarChart Shares(string quantity, IReadOnlyList<VarianceShare> shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        Bar[] bars = [.. shares.Where(s => s.Share >= 0.01).Take(10).Select(s => new Bar(s.Second is null ? s.First : $"{s.First} with {s.Second}", 100 * s.Share))];
        return new BarChart($"What explains the {quantity}", "Share of the variance (%)", bars.Length > 0 ? bars : [new Bar("none above 1 %", 0)]);
    }

    /// <summary>A line for each case across several columns, by the value in the last: the lowest third, the middle, the highest third.</summary>
    /// <param name="table">The study's table; cases without a result are left out.</param>
    /// <param name="columns">Two to eight columns of numbers or words; the last, of numbers, sorts the cases.</param>
    /// <exception cref="InputException">Too few or too many columns, or one that is none.</exception>
    public static Drawing ParallelCoordinates(StudyTable table, params IReadOnlyList<string> columns)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(columns);
        return ParallelPaper.Draw(table, columns);
    }

    /// <summary>Name and unit for an axis.</summary>
    internal static string AxisTitle(StudyColumn column) => $"{Title(column)}{(column.Unit switch { "" => "", "-" => " (–)", "degrees" => " (°)", var unit => $" ({unit})" })}";

    internal static string Title(StudyColumn column) => column.Name.Length == 0 ? column.Name : char.ToUpperInvariant(column.Name[0]) + column.Name[1..];

    private static Chart Begin(StudyTable table, string x, string y, string title)
    {
        StudyColumn[] axes = [table.Column(x), table.Column(y)];
        return axes.FirstOrDefault(a => !a.IsNumber) is { } words
            ? throw new InputException("column", $"'{words.Name}'", "a column of numbers", "Words can tell groups apart, or stand beside a heat map.")
            : Chart.Of(title, AxisTitle(axes[0]), AxisTitle(axes[1]));
    }

    private static IEnumerable<(string Name, int[] Rows)> Grouped(StudyTable table, string? by)
    {
        int[] all = [.. Enumerable.Range(0, table.RowCount)];
        if (by is null)
        {
            return [("cases", all)];
        }

        StudyColumn column = table.Column(by);
        string Name(int row) => column.IsNumber ? $"{column.Name} {Figures.Text(table.Numbers(by)[row])}{(column.Unit is "-" or "" ? "" : " " + column.Unit)}" : table.Words(by)[row];
        var groups = all.GroupBy(r => column.IsNumber ? (object)table.Numbers(by)[r] : table.Words(by)[r]).ToArray();
        return groups.Length <= MostGroups
            ? groups.Select(g => (Name(g.First()), g.ToArray()))
            : throw new InputException("column", $"'{by}' with {groups.Length} values", $"one with at most {MostGroups} values", "Choose rows with table.Where(…), or draw bands.");
    }
}
