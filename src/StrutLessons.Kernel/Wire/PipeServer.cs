using System.Text;
using System.Threading.Channels;
using StrutLessons.Kernel.Engine;

namespace StrutLessons.Kernel.Wire;

/// <summary>
/// Serves one client over the process's standard streams. The real standard output belongs to the messages alone:
/// what a cell writes to the console is captured by the engine, and everything else goes to standard error.
/// </summary>
internal sealed class PipeServer : IDisposable
{
    private readonly StreamReader _requests;
    private readonly StreamWriter _replies;
    private readonly Lock _writing = new();
    private volatile LessonEngine? _engine;

    private PipeServer(Stream input, Stream output)
    {
        _requests = new StreamReader(input, Encoding.UTF8);
        _replies = new StreamWriter(output, new UTF8Encoding(false)) { AutoFlush = true, NewLine = "\n" };
    }

    /// <summary>Takes over the standard streams. Call it before anything else can write to the console.</summary>
    internal static PipeServer TakeConsole()
    {
        var server = new PipeServer(Console.OpenStandardInput(), Console.OpenStandardOutput());
        Console.SetOut(Console.Error);
        Console.SetIn(new NoKeyboard());
        return server;
    }

    /// <summary>Answers requests until the client asks to stop or goes away.</summary>
    /// <param name="liveControls">True if the client moves the controls of live views by messages.</param>
    internal async Task ServeAsync(bool liveControls)
    {
        var work = Channel.CreateUnbounded<Request>();
        // A client that goes away must end this process even while a cell is in an endless loop.
        var reading = new Thread(() => ReadRequests(work.Writer)) { IsBackground = true, Name = "requests" };
        reading.Start();

        using var engine = await LessonEngine.StartAsync(liveControls).ConfigureAwait(false);
        _engine = engine;
        Send(new ReadyReply());
        await foreach (var request in work.Reader.ReadAllAsync().ConfigureAwait(false))
        {
            switch (request)
            {
                case RunRequest run:
                    await RunAsync(engine, run).ConfigureAwait(false);
                    break;
                case MoveRequest move:
                    var end = engine.Move(move, output => Send(new OutputReply(move.Id, output)));
                    Send(new DoneReply(move.Id, end.Succeeded, end.Elapsed.TotalMilliseconds));
                    break;
                case CompleteRequest complete:
                    Send(await engine.CompleteAsync(complete).ConfigureAwait(false));
                    break;
            }
        }
    }

    public void Dispose()
    {
        _requests.Dispose();
        _replies.Dispose();
    }

    private async Task RunAsync(LessonEngine engine, RunRequest run)
    {
        var end = await engine.RunAsync(run.Code, output => Send(new OutputReply(run.Id, output))).ConfigureAwait(false);
        Send(new DoneReply(run.Id, end.Succeeded, end.Elapsed.TotalMilliseconds));
    }

    private void ReadRequests(ChannelWriter<Request> work)
    {
        while (_requests.ReadLine() is { } line)
        {
            switch (WireFormat.ReadRequest(line))
            {
                case InterruptRequest:
                    _engine?.Interrupt();
                    break;
                case StopRequest:
                    Environment.Exit(0);
                    break;
                case { } request:
                    work.TryWrite(request);
                    break;
            }
        }
        Environment.Exit(0);
    }

    private void Send(Reply reply)
    {
        var line = WireFormat.Write(reply);
        lock (_writing)
        {
            _replies.WriteLine(line);
        }
    }
}
