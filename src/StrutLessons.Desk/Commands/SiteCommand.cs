using System.CommandLine;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Commands;

/// <summary><c>site</c>: plays every lesson and writes the pages.</summary>
internal static class SiteCommand
{
    internal static Command Build()
    {
        var command = new Command("site", "Plays every lesson and writes the pages: a folder that works offline in any browser.");
        AddTo(command);
        return command;
    }

    internal static void AddTo(Command command)
    {
        var output = new Option<string>("--out") { Description = "Folder for the pages.", DefaultValueFactory = _ => "site", HelpName = "folder" };
        command.Options.Add(output);
        command.SetAction(async (parsed, cancel) =>
        {
            var played = await Playing.PlayAsync(NotebookFile.Find(LessonFolder.Find()), showTimes: false, cellLimit: null, cancel).ConfigureAwait(false);
            return played.All(lesson => lesson.Succeeded) ? 0 : 1;
        });
    }
}
