using System.CommandLine;
using StrutLessons.Desk.Studies;

namespace StrutLessons.Desk.Commands;

/// <summary><c>merge</c>: puts the parts of a grid together, or writes a table in another form.</summary>
internal static class MergeCommand
{
    internal static Command Build()
    {
        var parts = new Argument<string[]>("parts") { Description = "Tables of the parts (.csv), in any order.", Arity = ArgumentArity.OneOrMore };
        var output = new Option<string>("--out") { Description = "The whole table: .csv, .json or .parquet.", Required = true, HelpName = "file" };
        var command = new Command("merge", "Puts the tables of a grid's parts together; with one table, writes it in another form.") { parts, output };
        command.SetAction(async (parsed, cancel) =>
        {
            var rows = await StudyTables.MergeAsync(parsed.GetValue(parts)!, parsed.GetValue(output)!, cancel).ConfigureAwait(false);
            Console.WriteLine($"{rows} rows: {parsed.GetValue(output)}");
            return 0;
        });
        return command;
    }
}
