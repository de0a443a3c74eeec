using System.CommandLine;
using StrutLessons.Desk.Studies;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Commands;

/// <summary><c>study</c>: runs the cases or the grid of a file.</summary>
internal static class StudyCommand
{
    internal static Command Build()
    {
        var cases = new Argument<string>("cases") { Description = "Case file: .json or .csv." };
        var output = new Option<string>("--out") { Description = "Results: .json or .csv; a grid also .parquet.", Required = true, HelpName = "file" };
        var threads = StudyOptions.Threads();
        var part = new Option<string?>("--part") { Description = "Runs one part of a grid, for example 2/4; merge puts the parts together.", HelpName = "i/n" };
        var command = new Command("study", "Runs a list of cases, or a grid of cases, and writes one result for each. A stopped run goes on when called again.") { cases, output, threads, part };
        command.SetAction((parsed, cancel) => RunAsync(parsed.GetValue(cases)!, parsed.GetValue(output)!, parsed.GetValue(threads), parsed.GetValue(part), cancel));
        return command;
    }

    private static async Task<int> RunAsync(string cases, string output, int threads, string? part, CancellationToken cancel)
    {
        var file = CaseFile.Read(cases);
        using var bar = new StudyBar();
        if (file.Grid is not { } grid)
        {
            if (part is not null)
            {
                throw new InputException("--part", part, "left out for a list of cases", "Parts belong to grids.");
            }
            StudyTables.Check(output, ".json", ".csv");
            var failed = CaseRunner.Run(file, output, threads, bar, cancel);
            bar.Dispose();
            Console.WriteLine($"{Words.Count(file.Cases.Count, "case")}, {failed} with an error: {output}");
            return failed == 0 ? 0 : 1;
        }
        var study = GridFile.Read(grid);
        var settings = new StudySettings { Threads = threads, Progress = bar };
        var rows = await StudyTables.WriteAsync(study, output, part is null ? settings : Part(settings, part), cancel).ConfigureAwait(false);
        bar.Dispose();
        Console.WriteLine($"{rows} of {study.Count} cases: {output}");
        return 0;
    }

    private static StudySettings Part(StudySettings settings, string text) =>
        text.Split('/') is [var i, var n] && int.TryParse(i, out var part) && int.TryParse(n, out var parts)
            ? settings.ForPart(part, parts)
            : throw new InputException("--part", text, "two numbers such as 2/4", "Give the number of the part, a stroke, and how many there are.");
}
