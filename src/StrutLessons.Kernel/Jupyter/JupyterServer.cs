using System.Runtime.InteropServices;
using System.Text.Json.Nodes;
using System.Threading.Channels;
using StrutLessons.Kernel.Engine;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// The kernel of Jupyter front ends. Requests on the shell channel are answered one after another; those on the control channel at
/// once, also while a cell runs. The sockets open before the engine is up: a front end finds its kernel at once and may ask already.
/// </summary>
internal sealed class JupyterServer : IDisposable
{
    private readonly Channel<JupyterRequest> _work = Channel.CreateUnbounded<JupyterRequest>();
    private readonly TaskCompletionSource _end = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly JupyterSockets _sockets;
    private readonly Task<LessonEngine> _engine;
    private readonly CellExecution _cells;
    private readonly LiveComms _comms;
    private long _taken;
    private long _abortUpTo;

    private JupyterServer(ConnectionFile connection)
    {
        _engine = Task.Run(() => LessonEngine.StartAsync(viewStem: "live-" + Guid.NewGuid().ToString("N")[..8]));
        _cells = new CellExecution(Publish);
        _comms = new LiveComms(Publish);
        _sockets = new JupyterSockets(connection, Take);
    }

    /// <summary>Serves the front end named by a connection file until it asks to end or goes away.</summary>
    /// <returns>The exit code of the process.</returns>
    internal static async Task<int> RunAsync(string connectionFile)
    {
        Console.SetIn(new NoKeyboard());
        try
        {
            using var server = new JupyterServer(ConnectionFile.Read(connectionFile));
            using var signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, interrupt =>
            {
                interrupt.Cancel = true;
                server.Interrupt();
            });
            var working = server.WorkAsync();
            await await Task.WhenAny(working, server._end.Task, ParentWatch.GoneAsync()).ConfigureAwait(false);
            return 0;
        }
        catch (ConnectionException refused)
        {
            await Console.Error.WriteLineAsync(refused.Message).ConfigureAwait(false);
            return 1;
        }
    }

    public void Dispose() => _sockets.Dispose();

    private void Publish(JupyterRequest request, string type, JsonObject content) =>
        _sockets.Send(JupyterChannel.Publish, request, type, content);

    private void State(JupyterRequest? cause, string state) =>
        _sockets.Send(JupyterChannel.Publish, cause, "status", new JsonObject { ["execution_state"] = state });

    private void Interrupt()
    {
        if (_engine.IsCompletedSuccessfully)
        {
            _engine.Result.Interrupt();
        }
    }

    /// <summary>On the sockets' thread.</summary>
    private void Take(JupyterRequest request)
    {
        if (request.Channel == JupyterChannel.Shell)
        {
            Interlocked.Increment(ref _taken);
            _work.Writer.TryWrite(request);
            return;
        }
        State(request, "busy");
        switch (request.Type)
        {
            case "interrupt_request":
                Interrupt();
                Reply(request, new JsonObject { ["status"] = "ok" });
                break;
            case "shutdown_request":
                ShutDown(request);
                break;
            case "kernel_info_request":
                Reply(request, KernelInfo.Content());
                break;
        }
        State(request, "idle");
    }

    private async Task WorkAsync()
    {
        State(null, "starting");
        var number = 0L;
        await foreach (var request in _work.Reader.ReadAllAsync().ConfigureAwait(false))
        {
            number++;
            State(request, "busy");
            try
            {
                await AnswerAsync(request, mayRun: number > _abortUpTo).ConfigureAwait(false);
            }
#pragma warning disable CA1031 // A question the kernel stumbles over must not end it and lose what the cells defined.
            catch (Exception fault)
#pragma warning restore CA1031
            {
                Reply(request, new JsonObject { ["status"] = "error", ["ename"] = fault.GetType().Name, ["evalue"] = fault.Message, ["traceback"] = new JsonArray() });
            }
            State(request, "idle");
        }
    }

    private async Task AnswerAsync(JupyterRequest request, bool mayRun)
    {
        switch (request.Type)
        {
            case "kernel_info_request":
                Reply(request, KernelInfo.Content());
                break;
            case "execute_request" when !mayRun:
                Reply(request, _cells.Aborted());
                break;
            case "execute_request":
                var (reply, abort) = await _cells.RunAsync(request, await _engine.ConfigureAwait(false)).ConfigureAwait(false);
                if (abort)
                {
                    // Cells that were sent together with this one do not run; those sent after its reply do.
                    _abortUpTo = Interlocked.Read(ref _taken);
                }
                Reply(request, reply);
                break;
            case "complete_request":
                Reply(request, await Questions.CompleteAsync(request, await _engine.ConfigureAwait(false)).ConfigureAwait(false));
                break;
            case "inspect_request":
                Reply(request, await Questions.InspectAsync(request, await _engine.ConfigureAwait(false)).ConfigureAwait(false));
                break;
            case "is_complete_request":
                Reply(request, Questions.IsComplete(request));
                break;
            case "history_request":
                Reply(request, _cells.History.Answer(request));
                break;
            case "comm_info_request":
                Reply(request, _comms.Answer(request));
                break;
            case "comm_open":
                _comms.Open(request);
                break;
            case "comm_msg":
                _comms.Move(request, await _engine.ConfigureAwait(false));
                break;
            case "comm_close":
                _comms.Close(request);
                break;
            case "shutdown_request":
                ShutDown(request);
                break;
        }
    }

    private void Reply(JupyterRequest request, JsonObject content) =>
        _sockets.Send(request.Channel, request, request.Type.Replace("_request", "_reply", StringComparison.Ordinal), content);

    private void ShutDown(JupyterRequest request)
    {
        var restart = request.Flag("restart", false);
        JsonObject Answer() => new() { ["status"] = "ok", ["restart"] = restart };
        Reply(request, Answer());
        Publish(request, "shutdown_reply", Answer());
        _end.TrySetResult();
    }
}
