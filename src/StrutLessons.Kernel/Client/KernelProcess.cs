using System.Collections.Concurrent;
using System.Diagnostics;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Client;

/// <summary>
/// A kernel process and the way to talk to it. Whatever a cell does happens in that process: an endless loop or a crash
/// ends it and never the program that holds this object. Safe for use from several threads; cells run one at a time.
/// </summary>
public sealed class KernelProcess : IAsyncDisposable
{
    private readonly Process _process;
    private readonly ConcurrentDictionary<long, Pending> _pending = new();
    private readonly TaskCompletionSource _ready = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly SemaphoreSlim _writing = new(1, 1);
    private readonly LastWords _lastWords = new();
    private readonly Task _reading;
    private long _lastId;
    private volatile bool _ended;

    private KernelProcess(Process process)
    {
        _process = process;
        process.ErrorDataReceived += (_, line) => _lastWords.Add(line.Data);
        process.BeginErrorReadLine();
        _reading = Task.Run(ReadRepliesAsync);
    }

    /// <summary>True once the process has gone.</summary>
    public bool HasEnded => _ended;

    /// <summary>The operating system's number of the process.</summary>
    public int ProcessId => _process.Id;

    /// <summary>Starts a kernel process and waits until the lessons' library is loaded.</summary>
    /// <exception cref="KernelException">The process did not come up; the message says why.</exception>
    public static async Task<KernelProcess> StartAsync(KernelSettings? settings = null, CancellationToken cancel = default)
    {
        settings ??= new KernelSettings();
        var process = Process.Start(KernelCommandLine.Build(settings)) ?? throw new KernelException("The kernel process cannot be started.");
        var kernel = new KernelProcess(process);
        try
        {
            await kernel._ready.Task.WaitAsync(settings.StartLimit, cancel).ConfigureAwait(false);
            return kernel;
        }
        catch (Exception failure)
        {
            await kernel.DisposeAsync().ConfigureAwait(false);
            throw failure is TimeoutException
                ? new KernelException($"The kernel process was not ready after {settings.StartLimit.TotalSeconds:0} s.")
                : failure;
        }
    }

    /// <summary>Runs a cell. An error in the cell is a result, not an exception.</summary>
    /// <param name="code">C# source.</param>
    /// <param name="onOutput">Called for each output as soon as it arrives.</param>
    /// <param name="timeLimit">After this time the process is ended and the cell counts as timed out; null for no limit.</param>
    /// <param name="cancel">Ends the process.</param>
    public Task<CellRun> RunAsync(
        string code, Action<CellOutput>? onOutput = null, TimeSpan? timeLimit = null, CancellationToken cancel = default) =>
        RunAsync(id => new RunRequest(id, code), onOutput, timeLimit, cancel);

    /// <summary>Shows a live view again with its controls at other places.</summary>
    /// <param name="live">The view's name, from its <see cref="LiveForm"/>.</param>
    /// <param name="places">Where each control stands: a value, or the index of a choice.</param>
    /// <param name="timeLimit">After this time the process is ended; null for no limit.</param>
    /// <param name="cancel">Ends the process.</param>
    public Task<CellRun> MoveAsync(string live, IReadOnlyList<double> places, TimeSpan? timeLimit = null, CancellationToken cancel = default) =>
        RunAsync(id => new MoveRequest(id, live, places), null, timeLimit, cancel);

    private async Task<CellRun> RunAsync(
        Func<long, Request> request, Action<CellOutput>? onOutput, TimeSpan? timeLimit, CancellationToken cancel)
    {
        var clock = Stopwatch.StartNew();
        var outputs = new OutputCollector();
        var id = Interlocked.Increment(ref _lastId);
        var pending = new Pending(output =>
        {
            if (outputs.Add(output))
            {
                onOutput?.Invoke(output);
            }
        });
        try
        {
            var reply = await AskAsync(id, request(id), pending)
                .WaitAsync(timeLimit ?? Timeout.InfiniteTimeSpan, cancel).ConfigureAwait(false);
            return reply is DoneReply done
                ? new CellRun(done.Succeeded ? CellEnding.Succeeded : CellEnding.Failed, outputs.Outputs, TimeSpan.FromMilliseconds(done.Milliseconds))
                : Ended(CellEnding.Crashed, _lastWords.Explain());
        }
        catch (TimeoutException)
        {
            Kill();
            return Ended(CellEnding.TimedOut, new ErrorOutput(
                "TimeLimit", $"The cell was still running after {timeLimit!.Value.TotalSeconds:0.#} s and was stopped.", null, null, Compiled: true));
        }
        catch (OperationCanceledException)
        {
            Kill();
            throw;
        }

        CellRun Ended(CellEnding ending, ErrorOutput error)
        {
            pending.OnOutput(error);
            return new CellRun(ending, outputs.Outputs, clock.Elapsed);
        }
    }

    /// <summary>Asks what could be typed at a place in a cell; null if the process has gone.</summary>
    public async Task<CompletionReply?> CompleteAsync(string code, int position, CancellationToken cancel = default)
    {
        var id = Interlocked.Increment(ref _lastId);
        var reply = await AskAsync(id, new CompleteRequest(id, code, position), new Pending(_ => { })).WaitAsync(cancel).ConfigureAwait(false);
        return reply as CompletionReply;
    }

    /// <summary>Asks the running cell to stop. What earlier cells defined stays.</summary>
    public Task InterruptAsync() => WriteAsync(new InterruptRequest());

    /// <summary>Ends the process and everything it has started, at once.</summary>
    public void Kill()
    {
        try
        {
            _process.Kill(entireProcessTree: true);
        }
        catch (InvalidOperationException)
        {
            // It has gone already.
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Kill();
        await _process.WaitForExitAsync().ConfigureAwait(false);
        await _reading.ConfigureAwait(false);
        _process.Dispose();
        _writing.Dispose();
    }

    private async Task<Reply?> AskAsync(long id, Request request, Pending pending)
    {
        _pending[id] = pending;
        if (_ended || !await WriteAsync(request).ConfigureAwait(false))
        {
            pending.Answer.TrySetResult(null);
        }
        return await pending.Answer.Task.ConfigureAwait(false);
    }

    /// <summary>False if nobody reads any more.</summary>
    private async Task<bool> WriteAsync(Request request)
    {
        await _writing.WaitAsync().ConfigureAwait(false);
        try
        {
            await _process.StandardInput.WriteLineAsync(WireFormat.Write(request)).ConfigureAwait(false);
            await _process.StandardInput.FlushAsync().ConfigureAwait(false);
            return true;
        }
        catch (IOException)
        {
            return false;
        }
        finally
        {
            _writing.Release();
        }
    }

    private async Task ReadRepliesAsync()
    {
        while (await _process.StandardOutput.ReadLineAsync().ConfigureAwait(false) is { } line)
        {
            switch (WireFormat.ReadReply(line))
            {
                case ReadyReply:
                    _ready.TrySetResult();
                    break;
                case OutputReply output when _pending.TryGetValue(output.Id, out var cell):
                    cell.OnOutput(output.Output);
                    break;
                case DoneReply done when _pending.TryRemove(done.Id, out var cell):
                    cell.Answer.TrySetResult(done);
                    break;
                case CompletionReply completion when _pending.TryRemove(completion.Id, out var asked):
                    asked.Answer.TrySetResult(completion);
                    break;
            }
        }
        // The last words come through another pipe; wait until that is read out as well.
        await _process.WaitForExitAsync().ConfigureAwait(false);
        _ended = true;
        _ready.TrySetException(new KernelException("The kernel process ended before it was ready. " + _lastWords.Explain().Message));
        foreach (var asked in _pending.Values)
        {
            asked.Answer.TrySetResult(null);
        }
    }

    private sealed class Pending(Action<CellOutput> onOutput)
    {
        internal Action<CellOutput> OnOutput { get; } = onOutput;

        internal TaskCompletionSource<Reply?> Answer { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
