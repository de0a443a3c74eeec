using System.CommandLine;
using StrutLessons.Desk.Readiness;
using StrutLessons.Desk.Studies;

namespace StrutLessons.Desk.Commands;

/// <summary><c>measure</c>: how fast studies run and kernels start on this machine.</summary>
internal static class MeasureCommand
{
    internal static Command Build()
    {
        var sizes = new Option<int[]>("--struts") { Description = "Numbers of struts, each at least 200.", DefaultValueFactory = _ => [1000, 10_000, 100_000, 1_000_000], AllowMultipleArgumentsPerToken = true, HelpName = "number" };
        var threads = StudyOptions.Threads();
        var starts = new Option<int>("--starts") { Description = "Time this many starts of a lesson's kernel instead, up to the first result of a cell.", HelpName = "number" };
        sizes.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int[]>() is { } given && given.Any(n => n is < 200 or > 100_000_000))
            {
                result.AddError("--struts takes numbers from 200 to 100000000.");
            }
        });
        starts.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 1000)
            {
                result.AddError("--starts takes a number from 1 to 1000.");
            }
        });
        var command = new Command("measure", "Times studies of a growing number of struts on one core and on all, or starts of a kernel, and prints a table.") { sizes, threads, starts };
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(starts) is > 0 and var count)
            {
                await KernelStarts.RunAsync(count, Console.Out, cancel).ConfigureAwait(false);
                return 0;
            }
            Measurement.Run(parsed.GetValue(sizes)!, parsed.GetValue(threads), Console.Out, cancel);
            return 0;
        });
        return command;
    }
}
