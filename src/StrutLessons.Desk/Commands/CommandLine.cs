using System.CommandLine;

namespace StrutLessons.Desk.Commands;

/// <summary>The words the program understands.</summary>
public static class CommandLine
{
    /// <summary>How the program is called from the repository's top folder.</summary>
    internal const string Call = "dotnet run --project src/StrutLessons.Desk";

    /// <summary>Runs the program: 0 when all is well, 1 when something failed or a word was not understood.</summary>
    public static async Task<int> RunAsync(string[] args)
    {
        using var stop = new StopSignals();
        var invocation = new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null };
        try
        {
            return await Build().Parse(args).InvokeAsync(invocation, stop.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (stop.Received is { } signal)
        {
            await Console.Error.WriteLineAsync(StopSignals.Words(signal)).ConfigureAwait(false);
            return 1;
        }
        catch (Exception failure) when (failure is Kernel.Client.KernelException or Kernel.Notebooks.NotebookException or InputException or IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync(failure.Message).ConfigureAwait(false);
            return 1;
        }
    }

    private static RootCommand Build()
    {
        var root = new RootCommand("Lessons on the steel angle strut and its end connections: without a word, opens them in the browser.");
        OpenCommand.SetAction(root);
        root.Subcommands.Add(OpenCommand.Build());
        root.Subcommands.Add(SiteCommand.Build());
        root.Subcommands.Add(RunCommand.Build());
        root.Subcommands.Add(StudyCommand.Build());
        root.Subcommands.Add(MergeCommand.Build());
        root.Subcommands.Add(PlotCommand.Build());
        root.Subcommands.Add(MeasureCommand.Build());
        root.Subcommands.Add(JupyterCommand.Build());
        root.Subcommands.Add(ReadyCommand.Build());
        HelpWithExamples.AddTo(root);
        return root;
    }
}
