using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>A page's socket without a page.</summary>
internal sealed class RawTab : IAsyncDisposable
{
    private readonly ClientWebSocket _socket = new();

    /// <summary>Connects as a page does.</summary>
    /// <exception cref="WebSocketException">The program refuses.</exception>
    internal static async Task<RawTab> ConnectAsync(Uri server, string lesson, string? cookie, string? origin, string? host = null)
    {
        var tab = new RawTab();
        void Set(string name, string? value)
        {
            if (value is not null)
            {
                tab._socket.Options.SetRequestHeader(name, value);
            }
        }
        Set("Cookie", cookie);
        Set("Origin", origin);
        Set("Host", host);
        await tab._socket.ConnectAsync(new Uri($"ws://{server.Authority}/{lesson}/socket"), CancellationToken.None);
        return tab;
    }

    internal Task AskAsync(object ask) =>
        _socket.SendAsync(JsonSerializer.SerializeToUtf8Bytes(ask), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);

    /// <summary>Waits for something that the program says.</summary>
    internal async Task<JsonNode> HearAsync(Func<JsonNode, bool> isIt)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(90));
        while (true)
        {
            using var message = new MemoryStream();
            var buffer = new byte[8192];
            WebSocketReceiveResult part;
            do
            {
                part = await _socket.ReceiveAsync(buffer, patience.Token);
                message.Write(buffer, 0, part.Count);
            }
            while (!part.EndOfMessage);
            var said = JsonNode.Parse(Encoding.UTF8.GetString(message.ToArray()))!;
            if (isIt(said))
            {
                return said;
            }
        }
    }

    internal Task<JsonNode> HearAsync(string say) => HearAsync(said => (string?)said["say"] == say);

    public ValueTask DisposeAsync()
    {
        _socket.Dispose();
        return ValueTask.CompletedTask;
    }
}
