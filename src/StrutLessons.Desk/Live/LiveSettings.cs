namespace StrutLessons.Desk.Live;

/// <summary>How live pages are served.</summary>
public sealed record LiveSettings
{
    /// <summary>The notebooks in the order of the course.</summary>
    public required IReadOnlyList<string> Lessons { get; init; }

    /// <summary>Folder for edits and for files that cells write; nothing outside it is written.</summary>
    public required string UserFolder { get; init; }

    /// <summary>The port on the loopback address; a free one if 0.</summary>
    public int Port { get; init; }

    /// <summary>Memory that the cells of one lesson may use, in MiB.</summary>
    public int MemoryLimitMiB { get; init; } = 2048;

    /// <summary>A lesson that no tab has shown for this long loses its kernel process; text and outputs stay.</summary>
    public TimeSpan IdleLimit { get; init; } = TimeSpan.FromMinutes(30);

    /// <summary>Time a cell has to stop by itself before its kernel process is ended.</summary>
    public TimeSpan StopLimit { get; init; } = TimeSpan.FromSeconds(3);
}
