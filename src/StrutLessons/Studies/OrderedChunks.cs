namespace StrutLessons.Studies;

/// <summary>
/// Runs numbered pieces of work on several threads and hands their results on in the order of the numbers. At most a few results per thread
/// wait, so memory stays flat. When cancelled, pieces already begun are finished and handed on: nothing done is lost.
/// </summary>
internal sealed class OrderedChunks<T>(long first, long end, int threads, Func<int, Func<long, T>> worker, Action<T> take, CancellationToken cancel)
    where T : class
{
    private readonly object gate = new();
    private readonly T?[] waiting = new T?[4 * threads];
    private long next = first, taken = first;
    private bool taking;
    private Exception? failure;

    /// <exception cref="OperationCanceledException">Cancelled; everything begun was handed on.</exception>
    internal void Run()
    {
        var others = new Thread[threads - 1];
        for (int i = 0; i < others.Length; i++)
        {
            int number = i + 1;
            others[i] = new Thread(() => Work(number)) { IsBackground = true, Name = $"study {number}" };
            others[i].Start();
        }

        Work(0);
        foreach (Thread other in others)
        {
            other.Join();
        }

        if (failure is not null)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failure);
        }

        if (taken < end)
        {
            throw new OperationCanceledException(cancel);
        }
    }

    private void Work(int number)
    {
        try
        {
            Func<long, T> solve = worker(number);
            while (Begin() is { } chunk)
            {
                Finish(chunk, solve(chunk));
            }
        }
        catch (Exception e)
        {
            lock (gate)
            {
                failure ??= e;
                Monitor.PulseAll(gate);
            }
        }
    }

    private long? Begin()
    {
        lock (gate)
        {
            while (failure is null && next < end && next >= taken + waiting.Length && !cancel.IsCancellationRequested)
            {
                Monitor.Wait(gate, 200);
            }

            return failure is null && next < end && !cancel.IsCancellationRequested ? next++ : null;
        }
    }

    private void Finish(long chunk, T result)
    {
        lock (gate)
        {
            waiting[chunk % waiting.Length] = result;
            if (taking)
            {
                return;
            }

            taking = true;
        }

        // One thread at a time hands on, outside the lock, whatever has become next.
        while (true)
        {
            T ready;
            lock (gate)
            {
                if (taken >= end || waiting[taken % waiting.Length] is not { } found)
                {
                    taking = false;
                    return;
                }

                ready = found;
                waiting[taken % waiting.Length] = null;
            }

            take(ready);
            lock (gate)
            {
                taken++;
                Monitor.PulseAll(gate);
            }
        }
    }
}
