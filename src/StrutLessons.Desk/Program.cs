using StrutLessons.Desk.Commands;

return await CommandLine.RunAsync(args).ConfigureAwait(false);
