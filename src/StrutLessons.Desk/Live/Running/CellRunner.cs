using System.Diagnostics;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Desk.Live.Running;

/// <summary>
/// Runs the cells of one lesson in a kernel process of its own, one at a time. The process is started when first needed and may be
/// ended at any time; the lesson's text is out of its reach.
/// </summary>
internal sealed class CellRunner(LiveLesson lesson, Func<CancellationToken, Task<KernelProcess>> startKernel, LiveSettings settings) : IAsyncDisposable
{
    /// <summary>What the engine itself needs beside the objects of the cells, in MiB.</summary>
    private const int EngineMiB = 768;

    private static readonly TimeSpan WatchInterval = TimeSpan.FromMilliseconds(500);

    private readonly Lock _one = new();
    private readonly SemaphoreSlim _starting = new(1, 1);
    private readonly CancellationTokenSource _end = new();
    private readonly Queue<string> _waiting = [];
    private Task _work = Task.CompletedTask;
    private KernelProcess? _kernel;
    private KernelSay _state = new("none", null);
    private volatile string? _reason;
    private volatile bool _busy;
    private int _moving;
    private int _calls;

    internal KernelSay Say() => _state;

    private bool IsBusy => _busy || _moving > 0;

    /// <summary>Puts cells into the queue; one that waits already keeps its place.</summary>
    internal void Run(IReadOnlyList<string> cells)
    {
        lock (_one)
        {
            lesson.Change(() =>
            {
                foreach (var cell in cells.Where(id => !_waiting.Contains(id)).Select(lesson.Find).OfType<LiveCell>())
                {
                    _waiting.Enqueue(cell.Id);
                    if (cell.State != CellState.Running)
                    {
                        lesson.SetState(cell, CellState.Waiting);
                    }
                }
            });
            if (_work.IsCompleted && _waiting.Count > 0)
            {
                _work = Task.Run(WorkAsync);
            }
        }
    }

    /// <summary>Asks the running cell to stop; ends the process if it does not listen.</summary>
    internal async Task StopAsync()
    {
        ForgetWaiting();
        if (_kernel is not { } kernel || !IsBusy)
        {
            return;
        }
        try
        {
            await kernel.InterruptAsync().ConfigureAwait(false);
        }
        catch (ObjectDisposedException)
        {
            return;
        }
        for (var clock = Stopwatch.StartNew(); IsBusy && clock.Elapsed < settings.StopLimit;)
        {
            await Task.Delay(30).ConfigureAwait(false);
        }
        if (IsBusy)
        {
            _reason = $"The cell did not stop within {settings.StopLimit.TotalSeconds:0} s of being asked, so its kernel process was ended.";
            kernel.Kill();
        }
    }

    /// <summary>Ends the process and starts a fresh one.</summary>
    internal async Task RestartAsync()
    {
        await EndAsync().ConfigureAwait(false);
        try
        {
            await KernelAsync().ConfigureAwait(false);
        }
        catch (Exception refused) when (refused is KernelException or OperationCanceledException)
        {
            // The page has been told.
        }
    }

    /// <summary>Ends the process. What cells have shown stays and is marked as old.</summary>
    internal async Task EndAsync()
    {
        ForgetWaiting();
        _reason = "The kernel was restarted while the cell was running.";
        await DropKernelAsync().ConfigureAwait(false);
        await _work.ConfigureAwait(false);
        // One that was just starting has come up meanwhile.
        await DropKernelAsync().ConfigureAwait(false);
        _reason = null;
        MarkOld();
        Tell("none");
    }

    internal async Task CompleteAsync(CompleteAsk ask, Tab tab)
    {
        // While a cell runs the engine has no ear; an answer that comes late is of no use.
        var reply = _busy ? null : await TryAsync(kernel => kernel.CompleteAsync(ask.Text, ask.Position)).ConfigureAwait(false);
        tab.Send(new CompletionSay(ask.Id, reply?.Start ?? ask.Position, reply?.End ?? ask.Position, [.. (reply?.Items ?? []).Take(200)]));
    }

    internal async Task MoveAsync(MoveAsk ask, Tab tab)
    {
        CellRun? run = null;
        Interlocked.Increment(ref _moving);
        try
        {
            run = _kernel is { HasEnded: false } kernel ? await MoveAsync(kernel, ask).ConfigureAwait(false) : null;
        }
        catch (ObjectDisposedException)
        {
            // Restarted at this very moment.
        }
        Interlocked.Decrement(ref _moving);
        if (run?.Ending == CellEnding.Crashed && !_busy && _kernel is { HasEnded: true } lost)
        {
            await LoseAsync(lost, run).ConfigureAwait(false);
        }
        CellOutput[] gone = [new ErrorOutput("Kernel", "The kernel process that made this has gone. Run the cell again.", null, null, Compiled: true)];
        lesson.Change(() => lesson.Recorder.Moved(ask, run?.Outputs ?? gone, tab.Id));
    }

    /// <summary>A calculation that takes long shows as work that can be stopped.</summary>
    private async Task<CellRun> MoveAsync(KernelProcess kernel, MoveAsk ask)
    {
        var moving = kernel.MoveAsync(ask.Live, ask.Places);
        if (await Task.WhenAny(moving, Task.Delay(WatchInterval)).ConfigureAwait(false) == moving || _busy)
        {
            return await moving.ConfigureAwait(false);
        }
        Tell("busy");
        var run = await moving.ConfigureAwait(false);
        if (!_busy && !kernel.HasEnded)
        {
            Tell("ready");
        }
        return run;
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync().ConfigureAwait(false);
        await EndAsync().ConfigureAwait(false);
        _starting.Dispose();
        _end.Dispose();
    }

    private async Task WorkAsync()
    {
        while (Next() is { } cell)
        {
            try
            {
                if (!await RunAsync(cell).ConfigureAwait(false))
                {
                    ForgetWaiting();
                }
            }
            catch (Exception refused) when (refused is KernelException or OperationCanceledException)
            {
                lesson.Change(() => lesson.SetState(cell, CellState.Idle));
                ForgetWaiting();
            }
        }
    }

    private LiveCell? Next()
    {
        lock (_one)
        {
            LiveCell? cell = null;
            lesson.Change(() =>
            {
                while (cell is null && _waiting.TryDequeue(out var id))
                {
                    cell = lesson.Find(id);
                }
            });
            // Without a cell this work ends, and a new request starts new work.
            _work = cell is null ? Task.CompletedTask : _work;
            return cell;
        }
    }

    /// <summary>True if the cells after it may run.</summary>
    private async Task<bool> RunAsync(LiveCell cell)
    {
        if (string.IsNullOrWhiteSpace(cell.Text))
        {
            lesson.Change(() => { OutputRecorder.Clear(cell); lesson.SetState(cell, CellState.Done); });
            return true;
        }
        var calls = _calls;
        var kernel = await KernelAsync().ConfigureAwait(false);
        if (calls != _calls)
        {
            // Stopped while the kernel came up.
            lesson.Change(() => lesson.SetState(cell, CellState.Idle));
            return false;
        }
        _busy = true;
        Tell("busy");
        var code = "";
        lesson.Change(() =>
        {
            OutputRecorder.Clear(cell);
            code = cell.Text;
            lesson.SetState(cell, CellState.Running);
        });
        var running = kernel.RunAsync(code, output => lesson.Change(() => lesson.Recorder.Add(cell, InWords(output))));
        await WatchAsync(kernel, running).ConfigureAwait(false);
        var run = await running.ConfigureAwait(false);
        _busy = false;
        var isAsIntended = run.Ending == CellEnding.Succeeded || (cell.MustFail && run.Ending == CellEnding.Failed);
        lesson.Change(() => lesson.SetState(cell, isAsIntended ? CellState.Done : CellState.Failed, run.Elapsed.TotalMilliseconds));
        if (run.Ending is CellEnding.Crashed or CellEnding.TimedOut)
        {
            await LoseAsync(kernel, run).ConfigureAwait(false);
        }
        else
        {
            Tell("ready");
        }
        return isAsIntended;
    }

    /// <summary>Ends a process that takes more memory than a lesson may have, whatever way it got it.</summary>
    private async Task WatchAsync(KernelProcess kernel, Task running)
    {
        while (await Task.WhenAny(running, Task.Delay(WatchInterval)).ConfigureAwait(false) != running)
        {
            try
            {
                using var process = Process.GetProcessById(kernel.ProcessId);
                if (process.WorkingSet64 >> 20 > settings.MemoryLimitMiB + EngineMiB)
                {
                    _reason = "The cell took more memory than it may use, and its kernel process was ended.";
                    kernel.Kill();
                    return;
                }
            }
            catch (Exception gone) when (gone is ArgumentException or InvalidOperationException)
            {
                return;
            }
        }
    }

    private async Task LoseAsync(KernelProcess kernel, CellRun run)
    {
        if (Interlocked.CompareExchange(ref _kernel, null, kernel) == kernel)
        {
            MarkOld();
            Tell("ended", _reason ?? run.Error?.Message);
            _reason = null;
            await kernel.DisposeAsync().ConfigureAwait(false);
        }
    }

    /// <summary>The kernel process, started if there is none.</summary>
    private async Task<KernelProcess> KernelAsync()
    {
        await _starting.WaitAsync(_end.Token).ConfigureAwait(false);
        try
        {
            if (_kernel is { HasEnded: false } running)
            {
                return running;
            }
            if (Interlocked.Exchange(ref _kernel, null) is { } gone)
            {
                MarkOld();
                lesson.Change(() => lesson.Broadcast(new NoticeSay("The kernel process had ended between two cells. A fresh one is used now: run the cells from the top.")));
                await gone.DisposeAsync().ConfigureAwait(false);
            }
            Tell("starting");
            _reason = null;
            _kernel = await startKernel(_end.Token).ConfigureAwait(false);
            Tell("ready");
            return _kernel;
        }
        catch (KernelException refused)
        {
            Tell("ended", refused.Message);
            throw;
        }
        finally
        {
            _starting.Release();
        }
    }

    private async Task<T?> TryAsync<T>(Func<KernelProcess, Task<T?>> ask) where T : class
    {
        try
        {
            return await ask(await KernelAsync().ConfigureAwait(false)).ConfigureAwait(false);
        }
        catch (Exception refused) when (refused is KernelException or OperationCanceledException)
        {
            return null;
        }
    }

    private CellOutput InWords(CellOutput output) =>
        output is ErrorOutput { Name: "Kernel" } error && _reason is { } reason ? error with { Message = reason } : output;

    private async Task DropKernelAsync()
    {
        if (Interlocked.Exchange(ref _kernel, null) is { } kernel)
        {
            await kernel.DisposeAsync().ConfigureAwait(false);
        }
    }

    private void ForgetWaiting()
    {
        Interlocked.Increment(ref _calls);
        lock (_one)
        {
            _waiting.Clear();
        }
        lesson.Change(() =>
        {
            foreach (var cell in lesson.Cells.Where(cell => cell.State == CellState.Waiting))
            {
                lesson.SetState(cell, CellState.Idle);
            }
        });
    }

    private void MarkOld() => lesson.Change(() =>
    {
        foreach (var cell in lesson.Cells.Where(cell => cell.State is CellState.Done or CellState.Failed && !cell.IsOld))
        {
            cell.IsOld = true;
            lesson.Broadcast(cell.StateSay());
        }
    });

    private void Tell(string state, string? words = null)
    {
        _state = new KernelSay(state, words);
        lesson.Change(() => lesson.Broadcast(_state));
    }
}
