using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using StrutLessons.Kernel.Jupyter;

namespace StrutLessons.Kernel.Notebooks;

/// <summary>
/// Reads and writes the nbformat 4.5 file format as far as a lesson needs it. The writer orders keys and indents as
/// notebook front ends do, so that saving a lesson there changes nothing but what was edited.
/// </summary>
internal static class NotebookJson
{
    internal static NotebookFile Read(string path)
    {
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllText(path));
            return Read(json.RootElement, path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException
            or KeyNotFoundException or InvalidOperationException)
        {
            throw new NotebookException($"{path} cannot be read as a notebook: {fault.Message}", fault);
        }
    }

    internal static string Write(NotebookFile notebook)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions
        {
            Indented = true,
            IndentSize = 1,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }))
        {
            json.WriteStartObject();
            json.WriteStartArray("cells");
            foreach (var cell in notebook.Cells)
            {
                Write(json, cell);
            }
            json.WriteEndArray();
            WriteMetadata(json);
            json.WriteNumber("nbformat", 4);
            json.WriteNumber("nbformat_minor", 5);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static NotebookFile Read(JsonElement root, string path)
    {
        if (root.GetProperty("nbformat").GetInt32() != 4)
        {
            throw new NotebookException($"{path} is not a notebook of format 4.");
        }
        var cells = root.GetProperty("cells").EnumerateArray().ToArray();
        return new NotebookFile(path, [.. cells.Select(ReadCell)], cells.Any(HasOutputs));
    }

    private static NotebookCell ReadCell(JsonElement cell)
    {
        var kind = cell.GetProperty("cell_type").GetString() switch
        {
            "markdown" => CellKind.Text,
            "code" => CellKind.Code,
            "raw" => CellKind.Raw,
            var other => throw new InvalidOperationException($"a cell has the unknown type '{other}'"),
        };
        // Ids came with format 4.5; an older notebook runs all the same, and the form test asks for them.
        var id = cell.TryGetProperty("id", out var given) ? given.GetString()! : "";
        string[] tags = cell.TryGetProperty("metadata", out var metadata) && metadata.TryGetProperty("tags", out var list)
            ? [.. list.EnumerateArray().Select(tag => tag.GetString()!)]
            : [];
        return new NotebookCell(id, kind, Text(cell.GetProperty("source")).ReplaceLineEndings("\n"), tags);
    }

    private static string Text(JsonElement multiline) => multiline.ValueKind == JsonValueKind.Array
        ? string.Concat(multiline.EnumerateArray().Select(line => line.GetString()))
        : multiline.GetString()!;

    private static bool HasOutputs(JsonElement cell) =>
        (cell.TryGetProperty("outputs", out var outputs) && outputs.GetArrayLength() > 0)
        || (cell.TryGetProperty("execution_count", out var count) && count.ValueKind != JsonValueKind.Null);

    private static void Write(Utf8JsonWriter json, NotebookCell cell)
    {
        json.WriteStartObject();
        json.WriteString("cell_type", cell.Kind switch { CellKind.Text => "markdown", CellKind.Code => "code", _ => "raw" });
        if (cell.Kind == CellKind.Code)
        {
            json.WriteNull("execution_count");
        }
        json.WriteString("id", cell.Id);
        json.WriteStartObject("metadata");
        if (cell.Tags.Count > 0)
        {
            json.WriteStartArray("tags");
            foreach (var tag in cell.Tags)
            {
                json.WriteStringValue(tag);
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
        if (cell.Kind == CellKind.Code)
        {
            json.WriteStartArray("outputs");
            json.WriteEndArray();
        }
        json.WriteStartArray("source");
        var lines = cell.Lines;
        for (var i = 0; i < lines.Count; i++)
        {
            var isLast = i == lines.Count - 1;
            if (!isLast || lines[i].Length > 0)
            {
                json.WriteStringValue(isLast ? lines[i] : lines[i] + "\n");
            }
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMetadata(Utf8JsonWriter json)
    {
        json.WriteStartObject("metadata");
        json.WriteStartObject("kernelspec");
        json.WriteString("display_name", KernelSpec.DisplayName);
        json.WriteString("language", KernelSpec.Language);
        json.WriteString("name", KernelSpec.Name);
        json.WriteEndObject();
        json.WriteStartObject("language_info");
        json.WriteString("file_extension", ".cs");
        json.WriteString("mimetype", "text/x-csharp");
        json.WriteString("name", KernelSpec.Language);
        json.WriteString("pygments_lexer", "csharp");
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
