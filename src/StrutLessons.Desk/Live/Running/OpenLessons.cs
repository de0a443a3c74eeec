using StrutLessons.Desk.Live.Keeping;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Live.Running;

/// <summary>The course and those of its lessons that are open.</summary>
internal sealed class OpenLessons : IAsyncDisposable
{
    private readonly LiveSettings _settings;
    private readonly UserFolder _folder;
    private readonly SpareKernel _kernels;
    private readonly Dictionary<string, string> _files;
    private readonly Dictionary<string, LiveLesson> _open = [];
    private readonly Lock _one = new();
    private readonly Timer _sweep;

    internal OpenLessons(LiveSettings settings)
    {
        _settings = settings;
        _folder = new UserFolder(settings.UserFolder);
        _kernels = new SpareKernel(new KernelSettings
        {
            WorkingFolder = _folder.FilesFolder(),
            MemoryLimitMiB = settings.MemoryLimitMiB,
            LiveControls = true,
        });
        _files = [];
        foreach (var file in settings.Lessons)
        {
            // Two notebooks of one name, from two folders: the first is served.
            _files.TryAdd(Path.GetFileNameWithoutExtension(file), file);
        }
        Names = [.. settings.Lessons.Select(Path.GetFileNameWithoutExtension).OfType<string>().Distinct()];
        var interval = TimeSpan.FromSeconds(Math.Clamp(settings.IdleLimit.TotalSeconds / 4, 0.2, 60));
        _sweep = new Timer(_ => Sweep(), null, interval, interval);
    }

    /// <summary>The lessons' names in the order of the course.</summary>
    internal IReadOnlyList<string> Names { get; }

    /// <summary>A lesson as it is shipped; null if the course has none of this name.</summary>
    /// <exception cref="NotebookException">The file cannot be read.</exception>
    internal NotebookFile? Shipped(string name) => _files.TryGetValue(name, out var file) ? WithIds(NotebookFile.Read(file)) : null;

    /// <summary>Ids came with nbformat 4.5; cells of an older notebook, or twins, are named by their place.</summary>
    internal static NotebookFile WithIds(NotebookFile notebook)
    {
        var seen = new HashSet<string>();
        return notebook with
        {
            Cells = [.. notebook.Cells.Select((cell, i) => cell.Id.Length > 0 && seen.Add(cell.Id) ? cell : cell with { Id = $"place-{i + 1}" })],
        };
    }

    /// <summary>How far the user has come in a lesson.</summary>
    internal LessonProgress ProgressOf(NotebookFile shipped)
    {
        var kept = FileOf(shipped).Read();
        string[] cells = [.. shipped.Cells.Where(cell => cell.Kind == CellKind.Code && cell.Source.Trim().Length > 0).Select(cell => cell.Id)];
        return new LessonProgress(cells.Count(kept.Finished.Contains), cells.Length, kept.Edits.Count);
    }

    /// <summary>Opens a lesson, or finds the open one; null if the course has none of this name.</summary>
    /// <exception cref="NotebookException">The file cannot be read.</exception>
    internal LiveLesson? Open(string name)
    {
        lock (_one)
        {
            if (!_open.TryGetValue(name, out var lesson) && Shipped(name) is { } shipped)
            {
                lesson = new LiveLesson(shipped, FileOf(shipped), _kernels.TakeAsync, _settings);
                _open[name] = lesson;
                _kernels.Prepare();
            }
            return lesson;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _sweep.DisposeAsync().ConfigureAwait(false);
        LiveLesson[] open;
        lock (_one)
        {
            open = [.. _open.Values];
            _open.Clear();
        }
        await Task.WhenAll(open.Select(lesson => lesson.DisposeAsync().AsTask())).ConfigureAwait(false);
        await _kernels.DisposeAsync().ConfigureAwait(false);
    }

    private KeptFile FileOf(NotebookFile shipped) => new(_folder.FileFor(shipped.Path, Commands.LessonFolder.IsOfCourse(shipped.Path)), shipped.Name);

    private void Sweep()
    {
        lock (_one)
        {
            foreach (var lesson in _open.Values.Where(lesson => lesson.LeftAt is { } left && DateTimeOffset.UtcNow - left > _settings.IdleLimit))
            {
                _ = lesson.RestAsync();
            }
        }
    }
}

/// <summary>How far a lesson has come.</summary>
/// <param name="Done">Code cells that have run as they should.</param>
/// <param name="All">Code cells of the lesson.</param>
/// <param name="Changed">Cells with the user's own text.</param>
internal sealed record LessonProgress(int Done, int All, int Changed)
{
    /// <summary>In words, for the list, with a class for the style sheet.</summary>
    internal string Html => $"<span class=\"progress{(Done >= All ? " whole" : "")}\">{Words}</span>";

    private string Words => (Done, Changed) switch
    {
        (0, 0) => "not begun",
        _ when Done >= All => "✓ all cells run",
        (0, _) => "begun",
        _ => $"{Done} of {All} cells run",
    };
}
