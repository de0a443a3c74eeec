using System.Net.WebSockets;
using System.Text.Json;
using System.Threading.Channels;

namespace StrutLessons.Desk.Live.Running;

/// <summary>One browser tab that shows a lesson: the two directions of its socket.</summary>
internal sealed class Tab(WebSocket socket)
{
    /// <summary>The longest message a page may send, in bytes: far more than a cell, far less than a memory.</summary>
    private const int LongestAsk = 2_000_000;

    /// <summary>A tab that reads so slowly is cut off; it connects again and gets the whole state.</summary>
    private const int LongestQueue = 5_000;

    private readonly Channel<Say> _says = Channel.CreateUnbounded<Say>();

    /// <summary>Names the tab among those of a lesson.</summary>
    internal string Id { get; } = Guid.NewGuid().ToString("N")[..12];

    /// <summary>Sends something, in order, without waiting.</summary>
    internal void Send(Say say)
    {
        _says.Writer.TryWrite(say);
        if (_says.Reader.Count > LongestQueue)
        {
            socket.Abort();
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
        _says.Writer.TryComplete();
        await sending.ConfigureAwait(false);
    }

    private static Ask? Parse(byte[] message)
    {
        try
        {
            return JsonSerializer.Deserialize(message, LiveJson.Default.Ask);
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
            while (await _says.Reader.WaitToReadAsync(cancel).ConfigureAwait(false))
            {
                while (_says.Reader.TryRead(out var say))
                {
                    var bytes = JsonSerializer.SerializeToUtf8Bytes(Join(say), LiveJson.Default.Say);
                    await socket.SendAsync(bytes, WebSocketMessageType.Text, endOfMessage: true, cancel).ConfigureAwait(false);
                }
            }
        }
        catch (Exception gone) when (gone is WebSocketException or OperationCanceledException or IOException)
        {
            // The reading side notices as well.
        }
    }

    /// <summary>Many short writes to one console piece go out as one.</summary>
    private Say Join(Say say)
    {
        if (say is not WriteSay write || !_says.Reader.TryPeek(out var next) || next is not WriteSay second || second.Key != write.Key)
        {
            return say;
        }
        var text = new System.Text.StringBuilder(write.Text);
        while (_says.Reader.TryPeek(out next) && next is WriteSay more && more.Key == write.Key && _says.Reader.TryRead(out _))
        {
            text.Append(more.Text);
        }
        return write with { Text = text.ToString() };
    }
}
