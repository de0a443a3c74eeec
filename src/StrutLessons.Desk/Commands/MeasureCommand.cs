using System.CommandLine;
using StrutLessons.Desk.Studies;

namespace StrutLessons.Desk.Commands;

/// <summary><c>measure</c>: how fast studies run on this machine.</summary>
internal static class MeasureCommand
{
    internal static Command Build()
    {
        var sizes = new Option<int[]>("--struts") { Description = "Numbers of struts, each at least 200.", DefaultValueFactory = _ => [1000, 10_000, 100_000, 1_000_000], AllowMultipleArgumentsPerToken = true, HelpName = "number" };
        var threads = StudyOptions.Threads();
        sizes.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int[]>() is { } given && given.Any(n => n is < 200 or > 100_000_000))
            {
                result.AddError("--struts takes numbers from 200 to 100000000.");
            }
        });
        var command = new Command("measure", "Times studies of a growing number of struts on one core and on all, and prints a table.") { sizes, threads };
        command.SetAction((parsed, cancel) =>
        {
            Measurement.Run(parsed.GetValue(sizes)!, parsed.GetValue(threads), Console.Out, cancel);
            return Task.FromResult(0);
        });
        return command;
    }
}
