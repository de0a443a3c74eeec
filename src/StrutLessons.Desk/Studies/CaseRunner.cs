using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>
/// Runs the cases of a file on several threads. Each result goes to a file beside the output as soon as it and those before it are done, so that a stop
/// loses nothing: the same call goes on from there. At the end the results are written in the form that is wanted, and the file beside is removed.
/// </summary>
internal static class CaseRunner
{
    /// <summary>Where unfinished results wait.</summary>
    internal static string UnfinishedOf(string output) => output + ".unfinished";

    /// <summary>Runs all cases; gives the number of those with an error.</summary>
    /// <exception cref="OperationCanceledException">Stopped; results so far stay in the unfinished file.</exception>
    internal static int Run(CaseFile file, string output, int threads, IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        var unfinished = UnfinishedOf(output);
        var done = Continue(unfinished, file);
        using (var writer = new StreamWriter(unfinished, true, new UTF8Encoding(false)) { NewLine = "\n" })
        {
            var clock = Stopwatch.StartNew();
            var before = done;
            var rest = Enumerable.Range(done, file.Cases.Count - done);
            // One case at a time for each thread: cases differ much in their time.
            var results = Partitioner.Create(rest, EnumerablePartitionerOptions.NoBuffering).AsParallel().AsOrdered().WithDegreeOfParallelism(threads)
                .WithMergeOptions(ParallelMergeOptions.NotBuffered).WithCancellation(cancel).Select(i => CaseFile.Solve(file.Cases[i], i).ToJsonString());
            foreach (var line in results)
            {
                writer.WriteLine(line);
                writer.Flush();
                done++;
                var rate = (done - before) / Math.Max(clock.Elapsed.TotalSeconds, 1e-6);
                progress?.Report(new(done, file.Cases.Count, rate, TimeSpan.FromSeconds((file.Cases.Count - done) / rate)));
            }
        }
        var failed = Write(unfinished, output);
        File.Delete(unfinished);
        return failed;
    }

    /// <summary>How many results of this very file are there already; a line that was cut off is dropped.</summary>
    private static int Continue(string unfinished, CaseFile file)
    {
        List<string> kept = [];
        if (File.Exists(unfinished))
        {
            var text = File.ReadAllText(unfinished);
            kept = [.. text[..(text.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries)];
        }
        if (kept.Count == 0 || kept[0] != file.Fingerprint)
        {
            kept = [file.Fingerprint];
        }
        File.WriteAllText(unfinished, string.Concat(kept.Select(line => line + "\n")));
        return kept.Count - 1;
    }

    private static int Write(string unfinished, string output)
    {
        var whole = output + ".new";
        var failed = Path.GetExtension(output).Equals(".csv", StringComparison.OrdinalIgnoreCase) ? WriteCsv(unfinished, whole) : WriteJson(unfinished, whole);
        File.Move(whole, output, true);
        return failed;
    }

    private static int WriteJson(string unfinished, string output)
    {
        var failed = 0;
        using var stream = new FileStream(output, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16);
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteString("format", "strut-lessons results 1");
        json.WriteString("caution", StudyJson.Caution);
        json.WriteStartArray("results");
        foreach (var result in Results(unfinished))
        {
            failed += result.ContainsKey("error") ? 1 : 0;
            result.WriteTo(json);
            if (json.BytesPending > 1 << 16)
            {
                json.Flush();
            }
        }
        json.WriteEndArray();
        json.WriteEndObject();
        return failed;
    }

    /// <summary>One row for each case, with every column that any case fills.</summary>
    private static int WriteCsv(string unfinished, string output)
    {
        var failed = 0;
        Dictionary<string, int> columns = new() { ["id"] = 0, ["error"] = 1 };
        foreach (var result in Results(unfinished))
        {
            foreach (var (path, _) in FlatRows.Flatten(result, ""))
            {
                columns.TryAdd(path, columns.Count);
            }
        }
        using var writer = new StreamWriter(output, false, new UTF8Encoding(false)) { NewLine = "\r\n" };
        writer.WriteLine(string.Join(',', columns.Keys.Select(FlatRows.Field)));
        foreach (var result in Results(unfinished))
        {
            failed += result.ContainsKey("error") ? 1 : 0;
            var row = new string[columns.Count];
            foreach (var (path, value) in FlatRows.Flatten(result, ""))
            {
                row[columns[path]] = FlatRows.Field(value);
            }
            writer.WriteLine(string.Join(',', row));
        }
        return failed;
    }

    private static IEnumerable<JsonObject> Results(string unfinished) => File.ReadLines(unfinished).Skip(1).Select(line => JsonNode.Parse(line)!.AsObject());
}
