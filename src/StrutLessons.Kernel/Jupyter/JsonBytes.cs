using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>Writes JSON as UTF-8 without escaping more than JSON asks for: drawings and formulas are full of brackets.</summary>
internal static class JsonBytes
{
    private static readonly JsonWriterOptions Relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static byte[] Write(JsonNode json)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Relaxed))
        {
            json.WriteTo(writer);
        }
        return buffer.WrittenSpan.ToArray();
    }
}
