using System.Buffers.Text;
using System.Collections.Concurrent;

namespace StrutLessons.Studies;

/// <summary>
/// Tables of studies as files of comma-separated values (RFC 4180, UTF-8): written row by row, continued after a stop, merged from parts. A second file
/// with the ending <c>.columns.json</c> describes every column.
/// </summary>
public static class StudyFile
{
    private const int BufferSize = 1 << 20;

    /// <summary>Name of the file that describes the columns of a table.</summary>
    public static string DescriptionOf(string path) => Path.ChangeExtension(path, ".columns.json");

    internal static long Write(Study study, string path, StudySettings settings, CancellationToken cancel)
    {
        (long from, long to) = settings.Slice(study.Checked().Count);
        byte[] heading = CsvBytes.Heading(study);
        using var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read, BufferSize);
        (long next, long rows) = Continue(study, file, heading, from, to);
        File.WriteAllBytes(DescriptionOf(path), StudyJson.Description(study));
        var pool = new ConcurrentBag<CsvBytes>();
        try
        {
            StudyRun.Run(study, settings, next, to, () => pool.TryTake(out CsvBytes? used) ? used : new CsvBytes(), chunk =>
            {
                file.Write(chunk.Written);
                rows += chunk.Rows;
                chunk.Clear();
                pool.Add(chunk);
            }, cancel);
        }
        finally
        {
            file.Flush();
        }

        return rows;
    }

    /// <summary>Puts the parts of a study together into one table.</summary>
    /// <param name="parts">Files of the parts, in any order.</param>
    /// <param name="path">The file to write.</param>
    /// <returns>Number of rows.</returns>
    /// <exception cref="InputException">No part, a file in two places, or parts with other columns or overlapping cases.</exception>
    public static long Merge(IReadOnlyList<string> parts, string path)
    {
        ArgumentNullException.ThrowIfNull(parts);
        string here = Path.GetFullPath(path);
        if (parts.Count == 0 || parts.Any(p => Path.GetFullPath(p) == here))
        {
            throw new InputException("parts", parts.Count == 0 ? "none" : $"'{path}' among them", "at least one file other than the one to write", "Name the parts, then the file to write.");
        }

        (string Path, byte[] Heading, long First, long Last)[] ends = [.. parts.Select(EndsOf).OrderBy(p => p.First)];
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, BufferSize);
        file.Write(ends[0].Heading);
        long rows = 0, before = 0;
        foreach ((string part, byte[] heading, long first, long last) in ends)
        {
            if (!heading.AsSpan().SequenceEqual(ends[0].Heading) || first <= before)
            {
                throw new InputException("parts", $"'{part}'", $"with the columns of '{ends[0].Path}' and cases behind {before}", "Merge parts of one study, each once.");
            }

            using FileStream from = File.OpenRead(part);
            from.Position = heading.Length;
            from.CopyTo(file, BufferSize);
            (rows, before) = (rows + CountLines(part) - 1, last);
        }

        if (File.Exists(DescriptionOf(ends[0].Path)))
        {
            File.Copy(DescriptionOf(ends[0].Path), DescriptionOf(path), true);
        }

        return rows;
    }

    /// <summary>Where to go on: behind the last whole row, if the file is one of this study; from the start in an empty file.</summary>
    private static (long Next, long Rows) Continue(Study study, FileStream file, byte[] heading, long from, long to)
    {
        if (file.Length < heading.Length)
        {
            file.SetLength(0);
            file.Write(heading);
            return (from, 0);
        }

        var first = new byte[heading.Length];
        file.ReadExactly(first);
        (long end, byte[] last) = LastLine(file);
        long number = CaseOf(last);
        bool same = first.AsSpan().SequenceEqual(heading) && (end == heading.Length || (number > from && number <= to && last.AsSpan().SequenceEqual(RowOf(study, number - 1))));
        if (!same)
        {
            throw new InputException("file", $"'{Path.GetFileName(file.Name)}'", "new, or one with finished rows of this same study", "Choose another name, or remove the file.");
        }

        file.SetLength(end);
        file.Position = end;
        return end == heading.Length ? (from, 0) : (number, CountLines(file.Name) - 1);
    }

    private static byte[] RowOf(Study study, long index)
    {
        var row = new CsvBytes();
        StudyRun.Row(study, new StudySolver(study.Needs, study.Rules), index, new double[study.Factors.Length], row);
        return row.Written.ToArray();
    }

    /// <summary>The last whole line of a file, and where it ends; whatever follows was cut off when a run was stopped.</summary>
    private static (long End, byte[] Line) LastLine(FileStream file)
    {
        int size = (int)Math.Min(file.Length, 1 << 16);
        var tail = new byte[size];
        file.Position = file.Length - size;
        file.ReadExactly(tail);
        int end = tail.AsSpan().LastIndexOf((byte)'\n') + 1;
        int start = end > 0 ? tail.AsSpan(0, end - 1).LastIndexOf((byte)'\n') + 1 : 0;
        return (file.Length - size + end, tail[start..end]);
    }

    private static long CaseOf(ReadOnlySpan<byte> line) => Utf8Parser.TryParse(line, out long number, out int used) && used < line.Length && line[used] == ',' ? number : 0;

    private static (string Path, byte[] Heading, long First, long Last) EndsOf(string path)
    {
        using FileStream file = File.OpenRead(path);
        var head = new byte[Math.Min(file.Length, 1 << 16)];
        file.ReadExactly(head);
        int heading = head.AsSpan().IndexOf((byte)'\n') + 1;
        (long end, byte[] last) = LastLine(file);
        if (heading == 0 || end != file.Length)
        {
            throw new InputException("part", $"'{path}'", "a finished table", "Run this part to its end first.");
        }

        return (path, head[..heading], file.Length == heading ? long.MaxValue : CaseOf(head.AsSpan(heading)), CaseOf(last));
    }

    private static long CountLines(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1);
        var buffer = new byte[BufferSize];
        long lines = 0;
        for (int read = file.Read(buffer); read > 0; read = file.Read(buffer))
        {
            lines += buffer.AsSpan(0, read).Count((byte)'\n');
        }

        return lines;
    }
}
