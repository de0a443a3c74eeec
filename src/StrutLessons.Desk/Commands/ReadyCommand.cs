using System.CommandLine;
using StrutLessons.Desk.Readiness;

namespace StrutLessons.Desk.Commands;

/// <summary><c>ready</c>: looks whether everything the lessons need is here.</summary>
internal static class ReadyCommand
{
    internal static Command Build()
    {
        var command = new Command("ready", "Looks whether everything is here that the lessons need, and says what to do about the rest.");
        command.SetAction(async (_, cancel) =>
        {
            var canRun = true;
            foreach (var look in Looks.All)
            {
                var finding = await look(cancel).ConfigureAwait(false);
                canRun &= finding.Kind != FindingKind.Missing;
                Console.WriteLine($"{Word(finding.Kind),-8} {finding.Subject}: {finding.Words}");
                if (finding.ToDo is { } toDo)
                {
                    Console.WriteLine($"{"",-8} {toDo}");
                }
            }
            Console.WriteLine(canRun ? $"Ready. Open the lessons: {CommandLine.Call}" : "Not ready yet: see the lines marked MISSING.");
            return canRun ? 0 : 1;
        });
        return command;
    }

    private static string Word(FindingKind kind) => kind switch
    {
        FindingKind.Fine => "ok",
        FindingKind.Aside => "note",
        _ => "MISSING",
    };
}
