using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>The forms of a value as the protocol carries them: by media type, JSON as JSON and not as text.</summary>
internal static class MimeBundle
{
    internal static JsonObject Of(IEnumerable<ShownPart> parts)
    {
        var bundle = new JsonObject();
        foreach (var part in parts)
        {
            bundle[part.MimeType] = IsJson(part.MimeType) ? Parse(part.Content) : JsonValue.Create(part.Content);
        }
        return bundle;
    }

    private static bool IsJson(string mimeType) =>
        mimeType == "application/json" || (mimeType.StartsWith("application/", StringComparison.Ordinal) && mimeType.EndsWith("+json", StringComparison.Ordinal));

    /// <summary>A value that only claims to be JSON is passed on as the text it is.</summary>
    private static JsonNode? Parse(string content)
    {
        try
        {
            return JsonNode.Parse(content);
        }
        catch (JsonException)
        {
            return JsonValue.Create(content);
        }
    }
}
