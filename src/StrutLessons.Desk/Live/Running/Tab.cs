using System.Net.WebSockets;
using System.Text;
using System.Text.Json;

namespace StrutLessons.Desk.Live.Running;

/// <summary>One browser tab that shows a lesson: the two directions of its socket.</summary>
internal sealed class Tab(WebSocket socket) : IDisposable
{
    /// <summary>The longest message a page may send, in bytes: far more than a cell, far less than a memory.</summary>
    private const int LongestAsk = 2_000_000;

    /// <summary>A tab that reads so slowly is cut off; it connects again and gets the whole state.</summary>
    private const int LongestQueue = 5_000;

    private readonly Queue<Waiting> _says = [];
    private readonly SemaphoreSlim _more = new(0);
    private Waiting? _last;
    private bool _isOver;

    /// <summary>Names the tab among those of a lesson.</summary>
    internal string Id { get; } = Guid.NewGuid().ToString("N")[..12];

    /// <summary>Sends something, in order, without waiting.</summary>
    internal void Send(Say say)
    {
        lock (_says)
        {
            if (_isOver)
            {
                return;
            }
            // Many short writes to one console piece go out as one.
            if (say is WriteSay write && _last?.TryAppend(write) == true)
            {
                return;
            }
            _last = new Waiting(say);
            _says.Enqueue(_last);
            if (_says.Count > LongestQueue)
            {
                socket.Abort();
            }
            _more.Release();
        }
    }

    /// <summary>Serves the socket until one side closes it.</summary>
    internal async Task ServeAsync(Action<Ask> answer, CancellationToken stop)
    {
        var sending = SendAllAsync(stop);
        try
        {
            while (await ReadAsync(stop).ConfigureAwait(false) is { } message)
            {
                if (message is { Length: > 0 } && Parse(message) is { } ask)
                {
                    answer(ask);
                }
            }
        }
        catch (Exception gone) when (gone is WebSocketException or OperationCanceledException or IOException)
        {
            // The tab was closed, the machine slept, or the program ends.
        }
        lock (_says)
        {
            _isOver = true;
        }
        _more.Release();
        await sending.ConfigureAwait(false);
    }

    public void Dispose() => _more.Dispose();

    private static Ask? Parse(byte[] message)
    {
        try
        {
            return JsonSerializer.Deserialize(message, LiveJson.Wire.Ask);
        }
        catch (Exception unreadable) when (unreadable is JsonException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>The next message; null when the other side closes.</summary>
    private async Task<byte[]?> ReadAsync(CancellationToken cancel)
    {
        using var message = new MemoryStream();
        var buffer = new byte[16 * 1024];
        while (true)
        {
            var part = await socket.ReceiveAsync(buffer.AsMemory(), cancel).ConfigureAwait(false);
            if (part.MessageType != WebSocketMessageType.Text || message.Length + part.Count > LongestAsk)
            {
                return null;
            }
            message.Write(buffer, 0, part.Count);
            if (part.EndOfMessage)
            {
                return message.ToArray();
            }
        }
    }

    private async Task SendAllAsync(CancellationToken cancel)
    {
        try
        {
            while (true)
            {
                await _more.WaitAsync(cancel).ConfigureAwait(false);
                if (Next() is not { } say)
                {
                    return;
                }
                var bytes = JsonSerializer.SerializeToUtf8Bytes(say, LiveJson.Wire.Say);
                await socket.SendAsync(bytes, WebSocketMessageType.Text, endOfMessage: true, cancel).ConfigureAwait(false);
            }
        }
        catch (Exception gone) when (gone is WebSocketException or OperationCanceledException or IOException)
        {
            // The reading side notices as well.
        }
    }

    private Say? Next()
    {
        lock (_says)
        {
            if (_isOver || !_says.TryDequeue(out var next))
            {
                return null;
            }
            _last = _last == next ? null : _last;
            return next.Say;
        }
    }

    /// <summary>Something that waits to be sent.</summary>
    private sealed class Waiting(Say say)
    {
        private StringBuilder? _text;

        internal Say Say => _text is null ? say : (WriteSay)say with { Text = _text.ToString() };

        internal bool TryAppend(WriteSay more)
        {
            if (say is not WriteSay first || first.Key != more.Key)
            {
                return false;
            }
            _text ??= new StringBuilder(first.Text);
            _text.Append(more.Text);
            return true;
        }
    }
}
