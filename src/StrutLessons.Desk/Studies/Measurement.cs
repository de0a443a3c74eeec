using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>Times studies of a growing number of struts, on one core and on all: critical load and capacity for both signs of the bow, written to a file.</summary>
internal static class Measurement
{
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(3);

    /// <summary>Ten sections, ten gussets, and as many slendernesses as make up the number.</summary>
    internal static Study StudyOf(int struts) => Study.Of(new StudyStrut())
        .Vary(StudyVariable.Section, "L 60x60x6", "L 70x70x7", "L 80x80x8", "L 90x90x9", "L 100x100x10", "L 120x120x12", "L 100x65x8", "L 120x80x10", "L 150x100x12", "L 150x150x15")
        .Range(StudyVariable.GussetThickness, 6, 24, 10)
        .Range(StudyVariable.Slenderness, 0.3, 3, Math.Max(2, struts / 100))
        .Find(StudyQuantity.Length, StudyQuantity.Spring, StudyQuantity.CriticalLoad, StudyQuantity.Capacity, StudyQuantity.GoverningBow, StudyQuantity.Reason);

    /// <summary>The table as Markdown, with the machine below.</summary>
    internal static void Run(IReadOnlyList<int> sizes, int threads, TextWriter output, CancellationToken cancel)
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("strut-lessons-").FullName, "struts.csv");
        // The just-in-time compiler needs some seconds until the code is at its best.
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < WarmUp;)
        {
            Once(40_000, threads, file, cancel);
        }
        output.WriteLine("| struts | threads | time (s) | µs per strut | core seconds | speed-up | file (MB) | largest memory (MB) |");
        output.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach (var size in sizes)
        {
            var alone = 0.0;
            foreach (var count in new[] { 1, threads }.Distinct())
            {
                var (time, core) = LeastOf(Runs(size), size, count, file, cancel);
                alone = count == 1 ? time : alone;
                output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"| {size} | {count} | {time:0.000} | {1e6 * time / size:0.00} | {core:0.00} | {alone / time:0.00} | {new FileInfo(file).Length / 1e6:0.0} | {LargestMemory():0} |"));
            }
        }
        output.WriteLine();
        output.WriteLine(Machine());
        File.Delete(file);
        File.Delete(StudyFile.DescriptionOf(file));
    }

    /// <summary>The machine in words, for below a table.</summary>
    internal static string Machine() =>
        $"{Processor()}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription.Trim()}, {RuntimeInformation.FrameworkDescription}.";

    /// <summary>More runs of the small sizes: the clock and the machine disturb them most.</summary>
    private static int Runs(int size) => Math.Clamp(300_000 / size, 3, 100);

    private static (double Time, double Core) LeastOf(int runs, int struts, int threads, string file, CancellationToken cancel) =>
        Enumerable.Range(0, runs).Select(_ => Once(struts, threads, file, cancel)).MinBy(run => run.Time);

    private static (double Time, double Core) Once(int struts, int threads, string file, CancellationToken cancel)
    {
        File.Delete(file);
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var clock = Stopwatch.StartNew();
        using (var bar = new StudyBar())
        {
            StudyOf(struts).Write(file, new StudySettings { Threads = threads, Progress = bar }, cancel);
        }
        var time = clock.Elapsed.TotalSeconds;
        process.Refresh();
        return (time, (process.TotalProcessorTime - before).TotalSeconds);
    }

    /// <summary>Largest working set so far, 10⁶ bytes.</summary>
    private static double LargestMemory()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 / 1e6;
    }

    private static string Processor()
    {
        const string linux = "/proc/cpuinfo";
        var named = File.Exists(linux) ? File.ReadLines(linux).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal)) : null;
        return named is null ? RuntimeInformation.ProcessArchitecture.ToString() : named[(named.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
    }
}
