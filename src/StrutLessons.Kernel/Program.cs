using StrutLessons.Kernel.Jupyter;
using StrutLessons.Kernel.Wire;

if (args is ["--connection", var connectionFile])
{
    // The kernel of a Jupyter front end: five sockets on this machine, named by the connection file.
    return await JupyterServer.RunAsync(connectionFile).ConfigureAwait(false);
}
// The kernel of the lessons' own programs: requests from standard input, one JSON object per line, answers on standard output.
using var server = PipeServer.TakeConsole();
await server.ServeAsync(liveControls: args.Contains("--live")).ConfigureAwait(false);
return 0;
