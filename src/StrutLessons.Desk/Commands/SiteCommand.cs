using System.CommandLine;
using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Commands;

/// <summary><c>site</c>, also the program's answer to no word at all: plays lessons and writes the pages.</summary>
internal static class SiteCommand
{
    internal static Command Build()
    {
        var paths = LessonFolder.PathArgument();
        var command = new Command("site", "Plays lessons and writes them as pages: a folder that works offline in any browser.") { paths };
        SetAction(command, paths);
        return command;
    }

    /// <summary>Makes the command play all lessons, or those named by the argument, and write the pages.</summary>
    internal static void SetAction(Command command, Argument<string[]>? paths = null)
    {
        var output = new Option<string>("--out") { Description = "Folder for the pages.", DefaultValueFactory = _ => "site", HelpName = "folder" };
        command.Options.Add(output);
        command.SetAction(async (parsed, cancel) =>
        {
            var files = LessonFolder.Files(paths is null ? null : parsed.GetValue(paths));
            var played = await Playing.PlayAsync(files, showTimes: false, cellLimit: null, cancel).ConfigureAwait(false);
            var index = SiteWriter.Write(played, parsed.GetValue(output)!);
            Console.WriteLine($"{Words.Count(played.Count, "lesson")} written. Open {index}");
            return played.All(lesson => lesson.Succeeded) ? 0 : 1;
        });
    }
}
