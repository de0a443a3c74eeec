using StrutLessons.Kernel.Client;

namespace StrutLessons.Notebook.Tests.Kernel;

/// <summary>One kernel process for tests that leave it as they found it.</summary>
public sealed class KernelFixture : IAsyncLifetime
{
    public KernelProcess Process { get; private set; } = null!;

    public async Task InitializeAsync() => Process = await KernelProcess.StartAsync();

    public async Task DisposeAsync() => await Process.DisposeAsync();
}
