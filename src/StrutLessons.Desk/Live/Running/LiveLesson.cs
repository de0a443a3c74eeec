using StrutLessons.Desk.Live.Keeping;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Live.Running;

/// <summary>
/// An open lesson: its cells with the user's text, what they have shown, and the tabs that look at it. All tabs see the same. The
/// lock guards the cells; running code happens elsewhere and reports through <see cref="Change"/>.
/// </summary>
internal sealed class LiveLesson : IAsyncDisposable
{
    private readonly Lock _one = new();
    private readonly List<Tab> _tabs = [];
    private readonly List<LiveCell> _cells = [];
    private readonly HashSet<string> _finished;
    private readonly KeptFile _file;
    private readonly CellRunner _runner;
    private string? _lastNotice;

    internal LiveLesson(NotebookFile notebook, KeptFile file, Func<CancellationToken, Task<Kernel.Client.KernelProcess>> startKernel, LiveSettings settings)
    {
        Notebook = notebook;
        _file = file;
        Recorder = new OutputRecorder(_cells, Broadcast);
        _runner = new CellRunner(this, startKernel, settings);
        var kept = file.Read();
        _finished = [.. kept.Finished];
        _cells.AddRange(notebook.Cells.Where(cell => cell.Kind == CellKind.Code).Select(LiveCell.Of));
        kept.Edits.ToList().ForEach(Restore);
    }

    internal NotebookFile Notebook { get; }

    /// <summary>Writes what cells show; call it inside <see cref="Change"/>.</summary>
    internal OutputRecorder Recorder { get; }

    /// <summary>When the last tab left; null while one looks.</summary>
    internal DateTimeOffset? LeftAt { get; private set; } = DateTimeOffset.UtcNow;

    /// <summary>The cells, for pages; a copy.</summary>
    internal IReadOnlyList<CellView> Views()
    {
        lock (_one)
        {
            return [.. _cells.Select(cell => cell.View())];
        }
    }

    /// <summary>The lesson with the user's changes.</summary>
    internal NotebookFile ToNotebook()
    {
        lock (_one)
        {
            List<NotebookCell> cells = [.. Notebook.Cells.Select(cell => Find(cell.Id) is { } own ? cell with { Source = own.Text } : cell)];
            foreach (var added in _cells.Where(cell => cell.Shipped is null))
            {
                cells.Insert(cells.FindIndex(cell => cell.Id == added.After) + 1, new NotebookCell(added.Id, CellKind.Code, added.Text, []));
            }
            return Notebook with { Cells = cells };
        }
    }

    internal void Join(Tab tab)
    {
        lock (_one)
        {
            _tabs.Add(tab);
            LeftAt = null;
            tab.Send(All(tab));
        }
    }

    internal void Leave(Tab tab)
    {
        lock (_one)
        {
            _tabs.Remove(tab);
            LeftAt = _tabs.Count == 0 ? DateTimeOffset.UtcNow : null;
        }
    }

    /// <summary>Does what a page asks.</summary>
    internal void Answer(Ask ask, Tab tab)
    {
        switch (ask)
        {
            case EditAsk edit:
                Change(() => Edit(edit, tab));
                break;
            case OriginalAsk original:
                Change(() => BackToOriginal(original.Cell));
                break;
            case OtherAsk other:
                Change(() => Settle(other));
                break;
            case AddAsk add:
                Change(() => Add(add.After));
                break;
            case DeleteAsk delete:
                Change(() => Delete(delete.Cell));
                break;
            case RunAsk run:
                _runner.Run(run.Cells);
                break;
            case StopAsk:
                _ = _runner.StopAsync();
                break;
            case RestartAsk:
                _ = _runner.RestartAsync();
                break;
            case CompleteAsk complete:
                _ = _runner.CompleteAsync(complete, tab);
                break;
            case MoveAsk move:
                _ = _runner.MoveAsync(move, tab);
                break;
        }
    }

    /// <summary>Ends the kernel process of a lesson that nobody looks at; text and outputs stay.</summary>
    internal Task RestAsync() => _runner.EndAsync();

    public async ValueTask DisposeAsync() => await _runner.DisposeAsync().ConfigureAwait(false);

    /// <summary>Changes cells under the lock.</summary>
    internal void Change(Action change)
    {
        lock (_one)
        {
            change();
        }
    }

    internal LiveCell? Find(string id) => _cells.Find(cell => cell.Id == id);

    internal IReadOnlyList<LiveCell> Cells => _cells;

    /// <summary>Tells every tab.</summary>
    internal void Broadcast(Say say) => _tabs.ForEach(tab => tab.Send(say));

    /// <summary>Changes what a cell is doing and tells every tab.</summary>
    internal void SetState(LiveCell cell, CellState state, double? milliseconds = null)
    {
        cell.State = state;
        cell.Milliseconds = milliseconds;
        cell.IsOld = false;
        Broadcast(cell.StateSay());
        if (state == CellState.Done && _finished.Add(cell.Id))
        {
            Keep();
        }
    }

    private AllSay All(Tab tab) => new([.. _cells.Select(cell => cell.View())], _runner.Say(), tab.Id);

    private void Restore(KeptEdit edit)
    {
        var cell = Find(edit.Cell);
        if (cell is null)
        {
            // Added by the user, or a shipped cell that the lesson has lost since: the user's text stays.
            var before = _cells.FindIndex(other => other.Id == edit.After);
            cell = new LiveCell(edit.Cell, null, edit.After ?? _cells.LastOrDefault()?.Id, mustFail: false);
            _cells.Insert(before >= 0 ? before + 1 : _cells.Count, cell);
        }
        cell.Text = edit.Text;
        cell.Other = edit.Other;
        cell.Began = edit.Shipped;
        cell.Revision = 1;
    }

    private void Edit(EditAsk edit, Tab tab)
    {
        if (Find(edit.Cell) is not { } cell)
        {
            return;
        }
        if (cell.Text == edit.Text)
        {
            // Nothing to keep, but the page waits for word.
            tab.Send(cell.TextSay(tab.Id));
            return;
        }
        // The last writer wins; a text that the writer has not seen is kept beside it.
        if (edit.Base != cell.Revision)
        {
            cell.Other = cell.Text;
        }
        Write(cell, edit.Text, tab.Id);
    }

    private void Write(LiveCell cell, string text, string? by = null)
    {
        if (!cell.IsChanged)
        {
            cell.Began = cell.Shipped;
        }
        cell.Text = text.ReplaceLineEndings("\n");
        cell.Revision++;
        Broadcast(cell.TextSay(by));
        Keep();
    }

    private void BackToOriginal(string? id)
    {
        foreach (var cell in _cells.Where(cell => cell.Shipped is not null && (id is null || cell.Id == id)).ToArray())
        {
            cell.Other = null;
            Write(cell, cell.Shipped!);
        }
        if (id is null && _cells.RemoveAll(cell => cell.Shipped is null && cell.State is not (CellState.Waiting or CellState.Running)) > 0)
        {
            TellAll();
        }
    }

    private void Settle(OtherAsk ask)
    {
        if (Find(ask.Cell) is not { } cell)
        {
            return;
        }
        var text = ask.Take ? cell.Other ?? cell.Shipped ?? cell.Text : cell.Text;
        if (cell.Other is null)
        {
            cell.Began = cell.Shipped;
        }
        // What gives way now is offered in turn only if it was the other tab's; a choice is final.
        cell.Other = null;
        Write(cell, text);
    }

    private void Add(string after)
    {
        var at = _cells.FindIndex(cell => cell.Id == after);
        if (at >= 0)
        {
            _cells.Insert(at + 1, new LiveCell("own-" + Guid.NewGuid().ToString("N")[..8], null, after, mustFail: false));
            TellAll();
        }
    }

    private void Delete(string id)
    {
        if (Find(id) is { Shipped: null, State: not (CellState.Waiting or CellState.Running) } cell)
        {
            foreach (var follower in _cells.Where(other => other.After == id))
            {
                follower.After = cell.After;
            }
            _cells.Remove(cell);
            TellAll();
        }
    }

    private void TellAll()
    {
        _tabs.ForEach(tab => tab.Send(All(tab)));
        Keep();
    }

    private void Keep()
    {
        try
        {
            _file.Write(new KeptLesson(1, Notebook.Name, [.. _finished.Order(StringComparer.Ordinal)],
            [
                .. _cells.Where(cell => cell.Shipped is null || cell.IsChanged || cell.Other is not null)
                    .Select(cell => new KeptEdit(cell.Id, cell.Text, cell.Began, cell.After, cell.Other)),
            ]));
            Notice(null);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Notice($"Your changes stay on this page but cannot be kept on disk: {refused.Message}");
        }
    }

    /// <summary>The same words are said once, until the trouble is over.</summary>
    private void Notice(string? words)
    {
        if (words is not null && words != _lastNotice)
        {
            Broadcast(new NoticeSay(words));
        }
        _lastNotice = words;
    }
}
