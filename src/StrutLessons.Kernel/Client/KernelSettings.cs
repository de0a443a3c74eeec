namespace StrutLessons.Kernel.Client;

/// <summary>How a kernel process is started.</summary>
public sealed record KernelSettings
{
    /// <summary>Folder in which the cells run; the current one if null.</summary>
    public string? WorkingFolder { get; init; }

    /// <summary>Memory that cells may use for their objects, in MiB; a cell that wants more fails.</summary>
    public int MemoryLimitMiB { get; init; } = 2048;

    /// <summary>True if the controls of live views will be moved by messages; otherwise such views come as frames made beforehand.</summary>
    public bool LiveControls { get; init; }

    /// <summary>Time to wait for the engine to come up.</summary>
    public TimeSpan StartLimit { get; init; } = TimeSpan.FromMinutes(2);
}
