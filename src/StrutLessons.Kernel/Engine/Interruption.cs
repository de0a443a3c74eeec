using System.Runtime.ExceptionServices;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Stops one running cell, also inside a loop that asks nobody or a wait without end. Code that cannot be stopped this way
/// (a call into the operating system that does not return, a task that the cell has given to the pool) is left to whoever ends
/// the process.
/// </summary>
#pragma warning disable CA1001 // A source without a timer holds nothing to free, and it may still be cancelling when the cell has ended.
internal sealed class Interruption
#pragma warning restore CA1001
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    /// <summary>
    /// So many looks in a row must find the thread waiting before it is woken: one that has been stopped and is on its way out
    /// waits for a lock now and then, and must not be disturbed there.
    /// </summary>
    private const int LooksBeforeWaking = 5;

    /// <summary>
    /// A cell that shows something stops there by itself within this time. Force is for the others: on its way into the operating
    /// system a thread must not be stopped, the runtime itself may fall.
    /// </summary>
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(150);

    private readonly CancellationTokenSource _force = new();
    private volatile Thread? _thread;
    private volatile bool _asked;

    /// <summary>True once somebody has asked to stop the cell.</summary>
    internal bool IsAsked => _asked;

    /// <summary>Cancelled when the cell is to be stopped by force.</summary>
    internal CancellationToken Force => _force.Token;

    /// <summary>Asks the cell to stop and returns at once.</summary>
    internal void Ask()
    {
        _asked = true;
        _ = ForceAsync();
    }

    /// <summary>Called where a cell shows something: a good place to stop.</summary>
    /// <exception cref="OperationCanceledException">Somebody has asked to stop the cell.</exception>
    internal void ThrowIfAsked()
    {
        if (_asked)
        {
            throw new OperationCanceledException(CellOutputs.Interrupted);
        }
    }

    /// <summary>The step of the engine's pipeline that runs the cell's code.</summary>
    internal Task RunAsync(KernelCommand command, KernelInvocationContext context, KernelPipelineContinuation next)
    {
        try
        {
            Run(() => next(command, context).GetAwaiter().GetResult());
        }
        catch (Exception stopped) when (IsAsked && stopped is OperationCanceledException or ThreadInterruptedException)
        {
            context.Fail(command, message: CellOutputs.Interrupted);
        }
        return Task.CompletedTask;
    }

    /// <summary>Runs code that can be stopped.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <exception cref="ThreadInterruptedException">It was stopped while it slept.</exception>
    internal void Run(Action code)
    {
        Exception? failure = null;
        // A thread on which code was stopped once does not let itself be stopped a second time (.NET 10): each run has its own.
        var thread = new Thread(() => failure = Stoppable(code)) { IsBackground = true, Name = "cell" };
        _thread = thread;
        thread.Start();
        thread.Join();
        _thread = null;
        if (failure is not null)
        {
            ExceptionDispatchInfo.Throw(failure);
        }
    }

    private Exception? Stoppable(Action code)
    {
        try
        {
            new StoppableThreads(this).Run(code);
            return null;
        }
#pragma warning disable CA1031 // Handed on to the thread that waits.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            return failure;
        }
    }

    private async Task ForceAsync()
    {
        await Task.Delay(Grace).ConfigureAwait(false);
        // Cancelling waits until the thread has taken notice, which it does not do while it sleeps: never waited for here.
        _ = _force.CancelAsync();
        var asleep = 0;
        for (var waited = TimeSpan.Zero; waited < Patience && _thread is { } thread; waited += Pause)
        {
            await Task.Delay(Pause).ConfigureAwait(false);
            asleep = _thread == thread && thread.ThreadState.HasFlag(ThreadState.WaitSleepJoin) ? asleep + 1 : 0;
            if (asleep >= LooksBeforeWaking)
            {
                thread.Interrupt();
                asleep = 0;
            }
        }
    }
}
