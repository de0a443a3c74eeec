using System.CommandLine;

namespace StrutLessons.Desk.Commands;

/// <summary><c>run PATH…</c>: plays notebooks and says how they went.</summary>
internal static class RunCommand
{
    internal static Command Build()
    {
        var paths = LessonFolder.PathArgument();
        var times = new Option<bool>("--times") { Description = "Say how long each cell took." };
        var limit = new Option<double?>("--limit") { Description = "Seconds one cell may take (120 unless given).", HelpName = "seconds" };
        limit.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double?>() is not > 0)
            {
                result.AddError("--limit takes a number of seconds greater than 0.");
            }
        });
        var command = new Command("run", "Plays notebooks from top to bottom and reports the first cell that fails.") { paths, times, limit };
        command.SetAction(async (parsed, cancel) =>
        {
            var files = LessonFolder.Files(parsed.GetValue(paths));
            var limitTime = parsed.GetValue(limit) is { } seconds ? TimeSpan.FromSeconds(seconds) : (TimeSpan?)null;
            var played = await Playing.PlayAsync(files, parsed.GetValue(times), limitTime, cancel).ConfigureAwait(false);
            Console.WriteLine(played.Count == 0
                ? "There is no notebook to run."
                : $"{played.Count(lesson => lesson.Succeeded)} of {Words.Count(played.Count, "notebook")} ran to the end.");
            return played.All(lesson => lesson.Succeeded) ? 0 : 1;
        });
        return command;
    }
}
