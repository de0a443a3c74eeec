using StrutLessons.Calibration;
using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Controls;
using StrutLessons.Notebook.Tables;

namespace StrutLessons.Notebook.Tests.Shown;

public class CalibrationTableTests
{
    [Fact]
    public void Cases_that_turn_off_into_a_branch_are_told_in_the_picture_and_in_the_table()
    {
        RatioGrid grid = CalibrationStruts.Grid;
        int count = grid.Branching.Count;
        Assert.InRange(count, 1, grid.Cases.Count - 1);
        Assert.Contains($"{count} with a branch: the lower peak counts", Showing.Show(grid)![^1].Content, StringComparison.Ordinal);
        Table table = CalibrationTables.Statistics(grid);
        Assert.Contains($"{count} that turn off into a branch are in it with the lower peak", table.Title, StringComparison.Ordinal);
        Assert.Equal([grid.Cases.Count, grid.Cases.Count, grid.Cases.Count - count, grid.Cases.Count - count], table.Rows.Select(r => (int)r[1]));
    }

    [Fact]
    public void The_numbers_of_the_tables_are_those_of_the_statistics()
    {
        RatioStatistics roll = CalibrationStruts.Grid.Statistics(ElasticModel.WithRoll);
        Assert.Equal(Math.Round(roll.Minimum, 3), CalibrationTables.Statistics(CalibrationStruts.Grid).Rows[1][2]);
        CorrectionFunction f = CalibrationStruts.Correction;
        Assert.Equal(Math.Round(f.Lowering, 3), CalibrationTables.Corrections(f).Rows[0][5]);
        var moved = RatioSensitivity.Of(CalibrationStruts.Grid, ElasticModel.Plane, RatioVariable.Slenderness, RatioVariable.InPlaneSpring);
        Assert.Equal(moved.Influences.Sum(i => i.Levels.Count), CalibrationTables.Levels(moved).Rows.Length);
    }

    [Fact]
    public void The_warning_of_the_model_with_roll_stands_above_its_table()
    {
        var held = new RollCapacity(State(100), State(95), 200, 190);
        Assert.StartsWith("Warning. Roll lowers the capacity by 5 %", RollTables.Capacities(held).Title, StringComparison.Ordinal);
        Assert.StartsWith("Roll changes the capacity by", RollTables.Capacities(new(State(100), State(98), 200, 190)).Title, StringComparison.Ordinal);
        Assert.Contains("exact elastic rod", RollTables.Capacities(new(State(100), State(98, -0.2), 200, 190)).Title, StringComparison.Ordinal);
        Assert.Contains("Warning. Roll lowers", Showing.Show(held)![0].Content, StringComparison.Ordinal);
    }

    [Fact]
    public void A_progress_bar_never_goes_back_and_ends_full()
    {
        var before = Cells.Screen;
        List<string> seen = [];
        try
        {
            Cells.Screen = (value, _, _) => seen.Add(((IShown)value!).Shown()[^1].Content);
            var bar = ProgressBar.Show("Struts", 3);
            bar.Report(2);
            bar.Report(1);
            bar.Report(3);
        }
        finally
        {
            Cells.Screen = before;
        }

        Assert.Equal("Struts: 0 of 3", seen[0]);
        Assert.Equal("Struts: 3 of 3", seen[^1]);
        Assert.Equal(seen.Order(StringComparer.Ordinal), seen);
        Assert.Throws<InputException>(() => ProgressBar.Show("Struts", 0));
    }

    private static ElasticState State(double load, double twist = 0.01) => new(load, Planar.Zero, Planar.Zero, twist, 1, 0, 1, 0);
}
