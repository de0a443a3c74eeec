using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace StrutLessons.Kernel.Wire;

/// <summary>How messages between a client and a kernel process are written: one JSON object per line, UTF-8.</summary>
internal static class WireFormat
{
    private static readonly WireJson Json = new(new JsonSerializerOptions(JsonSerializerDefaults.Web)
    {
        // The text goes through a pipe, never into a page: no need to escape beyond what JSON asks for.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    });

    internal static string Write(Request request) => JsonSerializer.Serialize(request, Json.Request);

    internal static string Write(Reply reply) => JsonSerializer.Serialize(reply, Json.Reply);

    /// <summary>The request in a line; null if the line holds something else.</summary>
    internal static Request? ReadRequest(string line) => Read(line, Json.Request);

    /// <summary>The reply in a line; null if the line holds something else, for example text written past the console.</summary>
    internal static Reply? ReadReply(string line) => Read(line, Json.Reply);

    private static T? Read<T>(string line, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type) where T : class
    {
        try
        {
            return line.StartsWith('{') ? JsonSerializer.Deserialize(line, type) : null;
        }
        catch (Exception unreadable) when (unreadable is JsonException or NotSupportedException)
        {
            return null;
        }
    }
}

/// <summary>Generated readers and writers: no reflection at start-up.</summary>
[JsonSerializable(typeof(Request))]
[JsonSerializable(typeof(Reply))]
internal sealed partial class WireJson : JsonSerializerContext;
