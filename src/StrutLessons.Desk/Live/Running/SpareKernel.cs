using StrutLessons.Kernel.Client;

namespace StrutLessons.Desk.Live.Running;

/// <summary>
/// Kernel processes for lessons. One is started ahead while the machine has nothing else to do, so that the first cell of a lesson
/// answers at once.
/// </summary>
internal sealed class SpareKernel(KernelSettings settings) : IAsyncDisposable
{
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(3);

    private readonly CancellationTokenSource _end = new();
    private readonly Lock _one = new();
    private Task<KernelProcess>? _spare;

    /// <summary>Starts the spare process if there is none.</summary>
    internal void Prepare()
    {
        lock (_one)
        {
            if (!_end.IsCancellationRequested)
            {
                _spare ??= KernelProcess.StartAsync(settings, _end.Token);
            }
        }
    }

    /// <summary>The spare process, or a fresh one.</summary>
    /// <exception cref="KernelException">It did not come up.</exception>
    internal async Task<KernelProcess> TakeAsync(CancellationToken cancel)
    {
        Task<KernelProcess>? spare;
        lock (_one)
        {
            (spare, _spare) = (_spare, null);
        }
        _ = PrepareLaterAsync();
        if (spare is not null)
        {
            try
            {
                var kernel = await spare.WaitAsync(cancel).ConfigureAwait(false);
                if (!kernel.HasEnded)
                {
                    return kernel;
                }
                await kernel.DisposeAsync().ConfigureAwait(false);
            }
            catch (KernelException)
            {
                // Another attempt tells whether it was chance.
            }
            catch (OperationCanceledException)
            {
                await DropAsync(spare).ConfigureAwait(false);
                throw;
            }
        }
        return await KernelProcess.StartAsync(settings, cancel).ConfigureAwait(false);
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync().ConfigureAwait(false);
        Task<KernelProcess>? spare;
        lock (_one)
        {
            (spare, _spare) = (_spare, null);
        }
        if (spare is not null)
        {
            await DropAsync(spare).ConfigureAwait(false);
        }
        _end.Dispose();
    }

    private static async Task DropAsync(Task<KernelProcess> spare)
    {
        try
        {
            await (await spare.ConfigureAwait(false)).DisposeAsync().ConfigureAwait(false);
        }
        catch (Exception gone) when (gone is KernelException or OperationCanceledException)
        {
            // It never came up.
        }
    }

    private async Task PrepareLaterAsync()
    {
        // The first cells have the machine to themselves.
        await Task.Delay(Rest).ConfigureAwait(false);
        Prepare();
    }
}
