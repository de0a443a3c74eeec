using System.CommandLine;
using StrutLessons.Desk.Live;
using StrutLessons.Desk.Live.Keeping;

namespace StrutLessons.Desk.Commands;

/// <summary><c>open</c>, also the program's answer to no word at all: serves the lessons as live pages.</summary>
internal static class OpenCommand
{
    internal static Command Build()
    {
        var paths = LessonFolder.PathArgument();
        var command = new Command("open", "Opens the lessons in the browser, live: read, change, run. Ctrl+C ends it.") { paths };
        SetAction(command, paths);
        return command;
    }

    /// <summary>Makes the command serve all lessons, or those named by the argument.</summary>
    internal static void SetAction(Command command, Argument<string[]>? paths = null)
    {
        var port = new Option<int>("--port") { Description = "Port on this machine; a free one unless given.", HelpName = "number" };
        var folder = new Option<string>("--folder")
        {
            Description = $"Folder for your changes; the variable {UserFolder.Variable} names one as well.",
            DefaultValueFactory = _ => UserFolder.Usual(),
            HelpName = "folder",
        };
        var still = new Option<bool>("--no-browser") { Description = "Print the address and open no browser." };
        var seconds = new Option<double?>("--for") { Description = "End by itself after this time.", HelpName = "seconds" };
        var memory = new Option<int>("--memory") { Description = "Memory for the cells of one lesson, in MiB.", DefaultValueFactory = _ => 2048, HelpName = "MiB" };
        Range(port, 0, 65535);
        Range(memory, 256, 1 << 20);
        seconds.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double?>() is not > 0)
            {
                result.AddError("--for takes a number of seconds greater than 0.");
            }
        });
        foreach (var option in new Option[] { port, folder, still, seconds, memory })
        {
            command.Options.Add(option);
        }
        command.SetAction(async (parsed, cancel) =>
        {
            var settings = new LiveSettings
            {
                Lessons = LessonFolder.Files(paths is null ? null : parsed.GetValue(paths)),
                UserFolder = Path.GetFullPath(parsed.GetValue(folder)!),
                Port = parsed.GetValue(port),
                MemoryLimitMiB = parsed.GetValue(memory),
            };
            await ServeAsync(settings, parsed.GetValue(still), parsed.GetValue(seconds), cancel).ConfigureAwait(false);
            return 0;
        });
    }

    private static async Task ServeAsync(LiveSettings settings, bool noBrowser, double? seconds, CancellationToken cancel)
    {
        var server = await LiveServer.StartAsync(settings, cancel).ConfigureAwait(false);
        await using var _ = server.ConfigureAwait(false);
        if (!noBrowser && BrowserOpener.TryOpen(server.NewVisit()))
        {
            Console.WriteLine($"The lessons are open in your browser: {server.Address}");
        }
        else
        {
            Console.WriteLine($"Open the lessons in a browser on this machine: {server.NewVisit()}");
        }
        Console.WriteLine($"Your changes are kept in {settings.UserFolder}");
        Console.WriteLine("The key in an address is good for one visit; Enter shows a fresh address. Ctrl+C ends.");
        // A read from the terminal cannot be called off: it stays behind on a thread that ends with the program.
        new Thread(() => OfferAddresses(server)) { IsBackground = true, Name = "terminal" }.Start();
        try
        {
            await Task.Delay(seconds is { } time ? TimeSpan.FromSeconds(time) : Timeout.InfiniteTimeSpan, cancel).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            // Ctrl+C: the usual end.
        }
        Console.WriteLine("The lessons are closed. Your changes are kept.");
    }

    private static void OfferAddresses(LiveServer server)
    {
        while (Console.In.ReadLine() is not null)
        {
            Console.WriteLine(server.NewVisit());
        }
    }

    private static void Range(Option<int> option, int from, int to) => option.Validators.Add(result =>
    {
        if (result.GetValueOrDefault<int>() is var value && (value < from || value > to))
        {
            result.AddError($"{option.Name} takes a whole number between {from} and {to}.");
        }
    });
}
