using System.CommandLine;
using StrutLessons.Desk.Studies;

namespace StrutLessons.Desk.Commands;

/// <summary><c>plot</c>: draws a figure of a study's table as SVG.</summary>
internal static class PlotCommand
{
    internal static Command Build()
    {
        var table = new Argument<string>("table") { Description = "Table of a study (.csv); for the tornado the case file with its grid (.json)." };
        var kind = new Option<string>("--kind") { Description = "scatter, lines, bands, heatmap, parallel, shares or tornado.", DefaultValueFactory = _ => "lines" };
        kind.AcceptOnlyFromAmong("scatter", "lines", "bands", "heatmap", "parallel", "shares", "tornado");
        var x = new Option<string?>("--x") { Description = "Column along the horizontal axis.", HelpName = "column" };
        var y = new Option<string>("--y") { Description = "Column along the vertical axis; the result for parallel, shares and tornado.", DefaultValueFactory = _ => "capacity", HelpName = "column" };
        var by = new Option<string?>("--by") { Description = "Column whose values are told apart.", HelpName = "column" };
        var value = new Option<string>("--value") { Description = "Column shown by a heat map.", DefaultValueFactory = _ => "capacity", HelpName = "column" };
        var factors = new Option<string[]>("--factors") { Description = "Columns of factors for parallel and shares.", AllowMultipleArgumentsPerToken = true, HelpName = "column" };
        var output = new Option<string>("--out") { Description = "Figure: .svg.", Required = true, HelpName = "file" };
        var command = new Command("plot", "Draws a figure of a study's table: any column against any other, bands, heat map, tornado.") { table, kind, x, y, by, value, factors, output };
        command.SetAction((parsed, _) =>
        {
            var file = parsed.GetValue(output)!;
            StudyTables.Check(file, ".svg");
            var figure = new StudyFigure(parsed.GetValue(x), parsed.GetValue(y)!, parsed.GetValue(by), parsed.GetValue(value)!, parsed.GetValue(factors) ?? []);
            File.WriteAllText(file, figure.Draw(parsed.GetValue(kind)!, parsed.GetValue(table)!).Svg);
            Console.WriteLine(file);
            return Task.FromResult(0);
        });
        return command;
    }
}
