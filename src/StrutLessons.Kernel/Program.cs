using StrutLessons.Kernel.Wire;

// The kernel process: reads requests from standard input, one JSON object per line, and answers on standard output.
using var server = PipeServer.TakeConsole();
await server.ServeAsync(liveControls: args.Contains("--live")).ConfigureAwait(false);
