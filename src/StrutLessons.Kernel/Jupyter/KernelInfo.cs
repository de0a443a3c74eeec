using System.Text.Json.Nodes;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>What the kernel says about itself.</summary>
internal static class KernelInfo
{
    /// <summary>Version of the Jupyter messaging protocol that is spoken.</summary>
    internal const string ProtocolVersion = "5.3";

    internal static JsonObject Content() => new()
    {
        ["status"] = "ok",
        ["protocol_version"] = ProtocolVersion,
        ["implementation"] = "StrutLessons",
        ["implementation_version"] = typeof(KernelInfo).Assembly.GetName().Version!.ToString(3),
        ["banner"] = "StrutLessons: how the ends of an angle strut decide what it carries. A teaching aid, not a design check.",
        ["debugger"] = false,
        ["help_links"] = new JsonArray(),
        ["language_info"] = new JsonObject
        {
            ["name"] = KernelSpec.Language,
            ["version"] = "14.0",
            ["mimetype"] = "text/x-csharp",
            ["file_extension"] = ".cs",
            ["pygments_lexer"] = "csharp",
            ["codemirror_mode"] = "text/x-csharp",
        },
    };
}
