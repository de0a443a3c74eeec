using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using NetMQ;
using NetMQ.Sockets;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// The five sockets of the Jupyter messaging protocol, bound to this machine alone. One thread owns them, so messages leave in the
/// order in which they were sent, whatever threads they came from; it never runs a cell and answers heartbeats at any time.
/// </summary>
internal sealed class JupyterSockets : IDisposable
{
    private static readonly byte[] Delimiter = "<IDS|MSG>"u8.ToArray();

    private readonly MessageSigner _signer;
    private readonly MessageSigner _own;
    private readonly string _session = Guid.NewGuid().ToString("N");
    private readonly RouterSocket _shell = new();
    private readonly RouterSocket _control = new();
    private readonly RouterSocket _input = new();
    private readonly RouterSocket _heartbeat = new();
    private readonly PublisherSocket _publish = new();
    private readonly NetMQQueue<Action> _outgoing = new();
    private readonly NetMQPoller _poller;
    private readonly Action<JupyterRequest> _onRequest;

    /// <summary>Binds the sockets and starts to listen.</summary>
    /// <param name="connection">The ports and the key.</param>
    /// <param name="onRequest">Called on the sockets' thread for every message with a right signature; must return soon.</param>
    internal JupyterSockets(ConnectionFile connection, Action<JupyterRequest> onRequest)
    {
        _signer = new MessageSigner(connection.Key);
        _own = new MessageSigner(connection.Key);
        _onRequest = onRequest;
        Bind(_shell, connection.Shell);
        Bind(_control, connection.Control);
        Bind(_input, connection.Input);
        Bind(_heartbeat, connection.Heartbeat);
        Bind(_publish, connection.Publish);
        _shell.ReceiveReady += (_, ready) => Receive(ready.Socket, JupyterChannel.Shell);
        _control.ReceiveReady += (_, ready) => Receive(ready.Socket, JupyterChannel.Control);
        _heartbeat.ReceiveReady += (_, ready) => ready.Socket.SendMultipartMessage(ready.Socket.ReceiveMultipartMessage());
        _outgoing.ReceiveReady += (_, ready) =>
        {
            while (ready.Queue.TryDequeue(out var send, TimeSpan.Zero))
            {
                send();
            }
        };
        // Nobody is asked for keyboard input: the input socket is there for front ends that connect to it.
        _poller = [_shell, _control, _heartbeat, _outgoing];
        _poller.RunAsync("messages", isBackgroundThread: true);
    }

    /// <summary>Sends a message: a reply to whoever asked, or to every front end on the publishing channel.</summary>
    internal void Send(JupyterChannel channel, JupyterRequest? parent, string type, JsonObject content)
    {
        byte[][] parts = [JsonBytes.Write(Header(type)), parent?.Header ?? "{}"u8.ToArray(), "{}"u8.ToArray(), JsonBytes.Write(content)];
        _outgoing.Enqueue(() =>
        {
            var message = new NetMQMessage();
            foreach (var name in channel == JupyterChannel.Publish ? [Encoding.UTF8.GetBytes(type)] : parent!.Route)
            {
                message.Append(name);
            }
            message.Append(Delimiter);
            message.Append(_own.Sign(parts));
            foreach (var part in parts)
            {
                message.Append(part);
            }
            Socket(channel).SendMultipartMessage(message);
        });
    }

    /// <summary>Sends what is waiting and closes the sockets. Not from the sockets' own thread.</summary>
    public void Dispose()
    {
        using (var sent = new ManualResetEventSlim())
        {
            _outgoing.Enqueue(sent.Set);
            sent.Wait(TimeSpan.FromSeconds(2));
        }
        _poller.Dispose();
        foreach (var socket in new NetMQSocket[] { _shell, _control, _input, _heartbeat, _publish })
        {
            socket.Dispose();
        }
        _outgoing.Dispose();
        // Waits until the last words have left, as long as the sockets linger.
        NetMQConfig.Cleanup(block: true);
    }

    private NetMQSocket Socket(JupyterChannel channel) => channel switch
    {
        JupyterChannel.Shell => _shell,
        JupyterChannel.Control => _control,
        _ => _publish,
    };

    private static void Bind(NetMQSocket socket, int port)
    {
        // Without the limits nothing is dropped when a cell writes faster than a front end reads.
        socket.Options.SendHighWatermark = 0;
        socket.Options.ReceiveHighWatermark = 0;
        socket.Options.Linger = TimeSpan.FromSeconds(1);
        try
        {
            socket.Bind($"tcp://{ConnectionFile.Address}:{port}");
        }
        catch (NetMQException taken)
        {
            throw new ConnectionException($"Port {port} of the connection file cannot be opened: {taken.Message}");
        }
    }

    private void Receive(NetMQSocket socket, JupyterChannel channel)
    {
        if (Read(socket.ReceiveMultipartMessage(), channel) is { } request)
        {
            _onRequest(request);
        }
    }

    /// <summary>The request in a message; null if it is none, or is signed with another key, or has come before.</summary>
    private JupyterRequest? Read(NetMQMessage message, JupyterChannel channel)
    {
        var frames = message.Select(frame => frame.ToByteArray()).ToArray();
        var at = Array.FindIndex(frames, frame => frame.AsSpan().SequenceEqual(Delimiter));
        if (at < 0 || frames.Length < at + 6 || !_signer.Accepts(frames[at + 1], frames.AsSpan(at + 2, 4)))
        {
            return null;
        }
        try
        {
            var header = JsonElement.Parse(frames[at + 2]);
            return new JupyterRequest(
                channel, frames[..at], frames[at + 2], header.GetProperty("msg_type").GetString() ?? "", JsonElement.Parse(frames[at + 5]));
        }
        catch (Exception malformed) when (malformed is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }

    private JsonObject Header(string type) => new()
    {
        ["msg_id"] = Guid.NewGuid().ToString("N"),
        ["session"] = _session,
        ["username"] = "kernel",
        ["date"] = DateTime.UtcNow.ToString("yyyy-MM-ddTHH:mm:ss.ffffffZ"),
        ["msg_type"] = type,
        ["version"] = KernelInfo.ProtocolVersion,
    };
}
