using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;
using StrutLessons.Kernel.Wire;
using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Engine;

/// <summary>Turns the engine's events of one cell into the cell's outputs.</summary>
internal sealed class CellOutputs(LiveViews views, Action<CellOutput> emit) : IObserver<KernelEvent>
{
    internal const string Interrupted = "The cell was interrupted.";

    private readonly Lock _one = new();
    private readonly List<ErrorOutput> _compilation = [];
    private CommandFailed? _failed;

    public void OnNext(KernelEvent value)
    {
        switch (value)
        {
            case StandardOutputValueProduced text:
                Emit(new StreamOutput("stdout", Text(text)));
                break;
            case StandardErrorValueProduced text:
                Emit(new StreamOutput("stderr", Text(text)));
                break;
            case ReturnValueProduced result:
                Emit(new ShownOutput(Parts(result.Value, result.FormattedValues), IsResult: true));
                break;
            case DisplayedValueProduced shown:
                Emit(new ShownOutput(Parts(shown.Value, shown.FormattedValues), IsResult: false, shown.ValueId));
                break;
            case DiagnosticsProduced produced:
                lock (_one)
                {
                    _compilation.AddRange(ErrorWords.Compilation(produced.Diagnostics));
                }
                break;
            case CommandFailed failed:
                lock (_one)
                {
                    _failed ??= failed;
                }
                break;
        }
    }

    /// <summary>Takes a value that the cell shows on the way.</summary>
    internal void Show(object? value, string id, bool replaces) =>
        Emit(new ShownOutput(Parts(value, []), IsResult: false, id, replaces));

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }

    /// <summary>Says why the cell failed, if it did. True if it succeeded.</summary>
    internal bool End(bool interrupted)
    {
        lock (_one)
        {
            if (interrupted)
            {
                emit(new ErrorOutput("Interrupt", Interrupted, null, null, Compiled: true));
                return false;
            }
            if (_failed is null)
            {
                return true;
            }
            var errors = _compilation.Count > 0 ? _compilation : [ErrorWords.Failure(_failed)];
            errors.ForEach(emit);
            return false;
        }
    }

    /// <summary>
    /// Hands on an output. It leaves on the cell's own thread, which may be stopped at any instruction but not inside a finally
    /// block: what has begun to leave leaves whole, and no lock stays closed.
    /// </summary>
    internal void Emit(CellOutput output)
    {
        try
        {
        }
        finally
        {
            lock (_one)
            {
                emit(output);
            }
        }
    }

    private IReadOnlyList<ShownPart> Parts(object? value, IReadOnlyCollection<FormattedValue> formatted) =>
        Rendering.Parts(value, formatted, views);

    private static string Text(DisplayEvent console) => string.Concat(console.FormattedValues.Select(form => form.Value));
}
