using System.Diagnostics;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using StrutLessons.Kernel.Wire;
using StrutLessons.Notebook;
using CompletionItem = StrutLessons.Kernel.Wire.CompletionItem;

namespace StrutLessons.Kernel.Engine;

/// <summary>How a cell ended.</summary>
internal readonly record struct CellEnd(bool Succeeded, TimeSpan Elapsed);

/// <summary>The C# engine with the lessons' library loaded. It runs one cell at a time and keeps what cells define.</summary>
internal sealed class LessonEngine : IDisposable
{
    private readonly CompositeKernel _engine;
    private readonly LiveViews _views;
    private volatile Interruption? _running;
    private volatile CellOutputs? _outputs;

    private LessonEngine(LiveViews views, ScriptKernel cells)
    {
        _views = views;
        cells.AddMiddleware(RunCodeAsync);
        _engine = new CompositeKernel { cells };
        _engine.DefaultKernelName = cells.Name;
    }

    /// <summary>Loads the library into the compiler, so that the first cell does not wait for it.</summary>
    /// <param name="liveControls">True if the controls of live views will be moved by messages.</param>
    /// <param name="viewStem">Beginning of the names of live views.</param>
    internal static async Task<LessonEngine> StartAsync(bool liveControls = false, string viewStem = "live")
    {
        // The compiler's start takes longest; what else the engine needs comes up beside it.
        var script = Task.Run(CellScript.StartAsync);
        Rendering.Install();
        var cells = new ScriptKernel();
        var engine = new LessonEngine(new LiveViews(liveControls, viewStem), cells);
        cells.GoOnFrom(await script.ConfigureAwait(false));
        return engine;
    }

    /// <summary>Runs a cell and hands on its outputs as they come.</summary>
    /// <param name="code">C# source.</param>
    /// <param name="emit">Called for every output, on any thread but never on two at once.</param>
    internal async Task<CellEnd> RunAsync(string code, Action<CellOutput> emit)
    {
        var clock = Stopwatch.StartNew();
        var outputs = new CellOutputs(_views, emit);
        var running = new Interruption();
        _running = running;
        _outputs = outputs;
        Cells.Screen = (value, id, replaces) =>
        {
            running.ThrowIfAsked();
            outputs.Show(value, id, replaces);
        };
        using (_engine.KernelEvents.Subscribe(outputs))
        {
            await _engine.SendAsync(new SubmitCode(OwnReferences.Without(code)), CancellationToken.None).ConfigureAwait(false);
        }
        _running = null;
        _outputs = null;
        var succeeded = outputs.End(running.IsAsked);
        return new CellEnd(succeeded, clock.Elapsed);
    }

    /// <summary>Shows a live view again with its controls at other places.</summary>
    /// <param name="move">The view and the places.</param>
    /// <param name="emit">Called for every output.</param>
    internal CellEnd Move(MoveRequest move, Action<CellOutput> emit)
    {
        var clock = Stopwatch.StartNew();
        var running = new Interruption();
        _running = running;
        var succeeded = true;
        try
        {
            running.Run(() =>
            {
                foreach (var parts in _views.Move(move.Live, move.Places))
                {
                    emit(new ShownOutput(parts, IsResult: false));
                }
            });
        }
#pragma warning disable CA1031 // The calculation is the reader's code; whatever it throws belongs into the view.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            succeeded = false;
            emit(running.IsAsked
                ? new ErrorOutput("Interrupt", CellOutputs.Interrupted, null, null, Compiled: true)
                : new ErrorOutput(failure.GetType().Name, failure.Message, null, null, Compiled: true));
        }
        _running = null;
        return new CellEnd(succeeded, clock.Elapsed);
    }

    /// <summary>Asks the running cell to stop and returns at once.</summary>
    internal void Interrupt() => _running?.Ask();

    /// <summary>What could be typed at a place in a cell.</summary>
    internal async Task<CompletionReply> CompleteAsync(CompleteRequest request)
    {
        var position = Math.Clamp(request.Position, 0, request.Code.Length);
        var before = request.Code[..position];
        var start = position;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] == '_'))
        {
            start--;
        }
        var typed = before[start..];
        var answer = await _engine.SendAsync(new RequestCompletions(request.Code, Place(request.Code, position))).ConfigureAwait(false);
        var items = answer.Events.OfType<CompletionsProduced>()
            .SelectMany(produced => produced.Completions)
            .Where(item => item.InsertText.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .DistinctBy(item => item.InsertText)
            // The engine writes a method as a form to fill in, Abs($1); a front end gets the name.
            .Select(item => new CompletionItem(item.InsertText.Split("($", 2)[0], item.Kind))
            .Distinct();
        return new CompletionReply(request.Id, start, position, [.. items]);
    }

    /// <summary>What stands at a place in a cell, as plain text and, where it is known, as Markdown; nothing if there is nothing to say.</summary>
    internal async Task<IReadOnlyList<ShownPart>> InspectAsync(string code, int position)
    {
        var place = Place(code, position);
        var hover = await _engine.SendAsync(new RequestHoverText(code, place)).ConfigureAwait(false);
        if (hover.Events.OfType<HoverTextProduced>().SelectMany(produced => produced.Content).FirstOrDefault() is { } said)
        {
            return InspectionWords.Of(said);
        }
        var help = await _engine.SendAsync(new RequestSignatureHelp(code, place)).ConfigureAwait(false);
        return help.Events.OfType<SignatureHelpProduced>().FirstOrDefault() is { Signatures.Count: > 0 } produced
            ? InspectionWords.Of(produced.Signatures)
            : [];
    }

    /// <summary>The step of the engine's pipeline that runs a cell's code: its console is ours, and it can be stopped.</summary>
    private async Task RunCodeAsync(KernelCommand command, KernelInvocationContext context, KernelPipelineContinuation next)
    {
        if (command is not SubmitCode || _running is not { } running || _outputs is not { } outputs)
        {
            await next(command, context).ConfigureAwait(false);
            return;
        }
        using (CellConsole.Lend(Emit))
        {
            await running.RunAsync(command, context, next).ConfigureAwait(false);
        }

        void Emit(CellOutput output)
        {
            running.ThrowIfAsked();
            outputs.Emit(output);
        }
    }

    private static LinePosition Place(string code, int position)
    {
        var before = code.AsSpan(0, position);
        return new LinePosition(before.Count('\n'), position - (before.LastIndexOf('\n') + 1));
    }

    public void Dispose() => _engine.Dispose();
}
