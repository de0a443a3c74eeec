using System.CommandLine;
using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Commands;

/// <summary><c>site</c>: plays lessons and writes the pages.</summary>
internal static class SiteCommand
{
    internal static Command Build()
    {
        var paths = LessonFolder.PathArgument();
        var command = new Command("site", "Plays lessons and writes them as pages: a folder that works offline in any browser.") { paths };
        var output = new Option<string>("--out") { Description = "Folder for the pages.", DefaultValueFactory = _ => "site", HelpName = "folder" };
        command.Options.Add(output);
        command.SetAction(async (parsed, cancel) =>
        {
            var files = LessonFolder.Files(parsed.GetValue(paths));
            var played = await Playing.PlayAsync(files, showTimes: false, cellLimit: null, cancel).ConfigureAwait(false);
            var index = SiteWriter.Write(played, parsed.GetValue(output)!);
            Console.WriteLine($"{Words.Count(played.Count, "lesson")} written. Open {index}");
            return played.All(lesson => lesson.Succeeded) ? 0 : 1;
        });
        return command;
    }
}
