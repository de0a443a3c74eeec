using System.Runtime.InteropServices;

namespace StrutLessons.Desk.Commands;

/// <summary>Hears the signals that ask this program to stop, and remembers which one came: without it nobody could say why a run ended early.</summary>
internal sealed class StopSignals : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly PosixSignalRegistration[] _heard;
    private PosixSignal? _received;

    internal StopSignals() => _heard =
        [.. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGQUIT }.Select(signal => PosixSignalRegistration.Create(signal, Hear))];

    /// <summary>Cancelled by the first signal.</summary>
    internal CancellationToken Token => _stop.Token;

    /// <summary>The first signal that came; null if none did.</summary>
    internal PosixSignal? Received => _stop.IsCancellationRequested ? _received : null;

    /// <summary>What is said when a signal has stopped the program.</summary>
    internal static string Words(PosixSignal signal) => signal switch
    {
        PosixSignal.SIGINT or PosixSignal.SIGQUIT => "Stopped from the keyboard.",
        _ => "Stopped by another program or a time limit outside (signal TERM).",
    };

    public void Dispose()
    {
        foreach (var heard in _heard)
        {
            heard.Dispose();
        }
        _stop.Dispose();
    }

    private void Hear(PosixSignalContext context)
    {
        // The work ends in order: kernel processes are ended and what is done so far is kept.
        context.Cancel = true;
        _received ??= context.Signal;
        _stop.Cancel();
    }
}
