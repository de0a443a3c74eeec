using System.Security.Cryptography;
using System.Text.Json;

namespace StrutLessons.Desk.Live.Keeping;

/// <summary>
/// Reads and writes the kept state of one lesson. A write replaces the file as a whole or not at all. A file that somebody else
/// has written meanwhile, or that cannot be read, is put aside under another name and never lost.
/// </summary>
internal sealed class KeptFile(string path, string lesson)
{
    private byte[] _last = [];

    /// <summary>What is kept; empty if there is nothing.</summary>
    internal KeptLesson Read()
    {
        if (!File.Exists(path))
        {
            return KeptLesson.Empty(lesson);
        }
        try
        {
            var bytes = File.ReadAllBytes(path);
            var kept = JsonSerializer.Deserialize(bytes, KeptJson.Default.KeptLesson);
            if (kept is { Format: 1, Edits: not null, Finished: not null })
            {
                _last = SHA256.HashData(bytes);
                return kept;
            }
        }
        catch (Exception unreadable) when (unreadable is JsonException or IOException or UnauthorizedAccessException)
        {
            // Left as it is; the next write puts it aside.
        }
        return KeptLesson.Empty(lesson);
    }

    /// <summary>Keeps the state.</summary>
    /// <exception cref="IOException">The disk refuses it.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    internal void Write(KeptLesson kept)
    {
        var folder = Path.GetDirectoryName(path)!;
        UserFolder.Make(folder);
        PutForeignAside();
        var bytes = JsonSerializer.SerializeToUtf8Bytes(kept, KeptJson.Default.KeptLesson);
        var draft = path + ".new";
        using (var file = new FileStream(draft, FileMode.Create, FileAccess.Write))
        {
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        File.Move(draft, path, overwrite: true);
        _last = SHA256.HashData(bytes);
    }

    private void PutForeignAside()
    {
        if (!File.Exists(path) || SHA256.HashData(File.ReadAllBytes(path)).AsSpan().SequenceEqual(_last))
        {
            return;
        }
        var aside = path[..^".json".Length];
        for (var n = 2; ; n++)
        {
            if (!File.Exists($"{aside}.{n}.json"))
            {
                File.Move(path, $"{aside}.{n}.json");
                return;
            }
        }
    }
}
