using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Formatting;
using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Engine;

/// <summary>What the engine knows about a name, in the forms that front ends can show.</summary>
internal static class InspectionWords
{
    private const string Markdown = "text/markdown";

    /// <summary>A name's declaration and summary.</summary>
    internal static IReadOnlyList<ShownPart> Of(FormattedValue said)
    {
        var text = said.Value.ReplaceLineEndings("\n");
        var plain = new ShownPart(PlainTextFormatter.MimeType, text.Replace("\n> ", "\n  ", StringComparison.Ordinal));
        return said.MimeType == Markdown ? [new ShownPart(Markdown, text), plain] : [plain];
    }

    /// <summary>The ways in which a method can be called.</summary>
    internal static IReadOnlyList<ShownPart> Of(IReadOnlyList<SignatureInformation> signatures) =>
        [new(PlainTextFormatter.MimeType, string.Join("\n", signatures.Select(Text)))];

    private static string Text(SignatureInformation signature)
    {
        var words = signature.Documentation?.Value.ReplaceLineEndings("\n").Trim();
        return string.IsNullOrEmpty(words) ? signature.Label : $"{signature.Label}\n  {words.Replace("\n", "\n  ", StringComparison.Ordinal)}";
    }
}
