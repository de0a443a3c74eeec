using System.Diagnostics;
using System.Globalization;
using MathNet.Numerics.Statistics;
using StrutLessons.Desk.Studies;
using StrutLessons.Kernel.Client;

namespace StrutLessons.Desk.Readiness;

/// <summary>How long a kernel process takes from its start to the first result of a cell, and how long the cell after that.</summary>
internal static class KernelStarts
{
    private static readonly (string Words, string Code)[] FirstCells =
    [
        ("1 + 1", "1 + 1"),
        ("a drawn section", "var section = AngleCatalogue.Find(\"L 80x80x8\").Connected();\nDraw.Section(section, SectionParts.Usual | SectionParts.Ellipse)"),
    ];

    /// <summary>Starts kernels one after another and writes a table.</summary>
    /// <param name="starts">Starts for each first cell.</param>
    /// <param name="to">Where the table goes.</param>
    /// <param name="cancel">Stops between two starts.</param>
    internal static async Task RunAsync(int starts, TextWriter to, CancellationToken cancel)
    {
        to.WriteLine("| first cell | starts | median (s) | least (s) | most (s) | core seconds | next cell (ms) |");
        to.WriteLine("|---|---|---|---|---|---|---|");
        foreach (var (words, code) in FirstCells)
        {
            var taken = new List<Start>();
            while (taken.Count < starts)
            {
                taken.Add(await OneAsync(code, cancel).ConfigureAwait(false));
            }
            to.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {words} | {starts} | {taken.Select(start => start.Seconds).Median():0.00} | {taken.Min(start => start.Seconds):0.00} | {taken.Max(start => start.Seconds):0.00} | {taken.Select(start => start.CoreSeconds).Median():0.00} | {taken.Select(start => start.NextCellMs).Median():0} |"));
        }
        to.WriteLine();
        to.WriteLine(Measurement.Machine());
    }

    private static async Task<Start> OneAsync(string code, CancellationToken cancel)
    {
        var clock = Stopwatch.StartNew();
        await using var kernel = await KernelProcess.StartAsync(cancel: cancel).ConfigureAwait(false);
        var first = await kernel.RunAsync(code, cancel: cancel).ConfigureAwait(false);
        var seconds = clock.Elapsed.TotalSeconds;
        using var process = Process.GetProcessById(kernel.ProcessId);
        var coreSeconds = process.TotalProcessorTime.TotalSeconds;
        clock.Restart();
        var next = await kernel.RunAsync("var twice = 2 * 21; twice", cancel: cancel).ConfigureAwait(false);
        var nextMs = clock.Elapsed.TotalMilliseconds;
        return first.Ending == CellEnding.Succeeded && next.Ending == CellEnding.Succeeded
            ? new Start(seconds, coreSeconds, nextMs)
            : throw new KernelException("A cell of the measurement failed; `ready` looks for the cause.");
    }

    private readonly record struct Start(double Seconds, double CoreSeconds, double NextCellMs);
}
