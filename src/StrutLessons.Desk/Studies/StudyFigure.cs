using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>Which columns a figure of a study shows.</summary>
internal sealed record StudyFigure(string? X, string Y, string? By, string Value, IReadOnlyList<string> Factors)
{
    /// <summary>Draws a figure of a table, or of the grid of a case file.</summary>
    /// <exception cref="InputException">A column is missing, or the file is of the wrong kind.</exception>
    internal Drawing Draw(string kind, string path)
    {
        if (kind == "tornado")
        {
            var grid = CaseFile.Read(path).Grid ?? throw new InputException("case file", "a list of cases", "one with a grid", "The tornado varies the factors of a grid.");
            return Plot.Tornado(Sensitivity.OneAtATime(GridFile.Read(grid), StudyQuantity.Find(Y)));
        }
        StudyTable table = StudyTable.Read(path);
        return kind switch
        {
            "scatter" => Plot.Scatter(table, Across(), Y, By).ToDrawing(),
            "lines" => Plot.Lines(table, Across(), Y, By).ToDrawing(),
            "bands" => Plot.Bands(table, Across(), Y).ToDrawing(),
            "heatmap" => Plot.HeatMap(table, Across(), Y, Value),
            "parallel" => Plot.ParallelCoordinates(table, [.. Factors, Y]),
            _ => Plot.Shares(Y, Sensitivity.Shares(table, Y, Factors)).ToDrawing(),
        };
    }

    private string Across() => X ?? throw new InputException("--x", "missing", "a column", "Name the column along the horizontal axis.");
}
