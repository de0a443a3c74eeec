using System.Runtime;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Where a cell goes on after an <c>await</c>: on a thread of its own that can be stopped like the one it began on. A thread of the
/// pool cannot be stopped; one thread for all would wait for itself where a cell blocks on a task of its own. Once somebody has
/// asked to stop the cell, nothing goes on: force must not meet a thread on its way from one await to the next.
/// </summary>
internal sealed class StoppableThreads(Interruption interruption) : SynchronizationContext
{
    /// <summary>Runs code on the calling thread, which has been started for it; what it awaits goes on here.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    internal void Run(Action code)
    {
        SetSynchronizationContext(this);
#pragma warning disable SYSLIB0046 // Made for hosts of scripts: there is no other way to stop code that does not co-operate.
        ControlledExecution.Run(code, interruption.Force);
#pragma warning restore SYSLIB0046
    }

    public override void Post(SendOrPostCallback d, object? state)
    {
        if (!interruption.IsAsked)
        {
            // The continuation brings its own execution context.
            new Thread(() => GoOn(d, state)) { IsBackground = true, Name = "cell, after an await" }.UnsafeStart();
        }
    }

    public override SynchronizationContext CreateCopy() => this;

    private void GoOn(SendOrPostCallback continuation, object? state)
    {
        try
        {
            Run(() => continuation(state));
        }
        catch (OperationCanceledException) when (interruption.IsAsked)
        {
            // The cell has been told so.
        }
    }
}
