using System.Text.Json.Nodes;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>Errors of a cell as the protocol carries them: a name, a sentence, and lines that point into the cell.</summary>
internal static class ErrorContent
{
    private const int LinesAround = 2;

    /// <summary>A new object for each call: it is sent twice, to everybody and to whoever asked.</summary>
    internal static JsonObject Of(IReadOnlyList<ErrorOutput> errors, string code) => new()
    {
        ["ename"] = errors[0].Name,
        ["evalue"] = errors[0].Message,
        ["traceback"] = new JsonArray([.. errors.SelectMany(error => Lines(error, code)).Select(line => JsonValue.Create(line))]),
    };

    private static IEnumerable<string> Lines(ErrorOutput error, string code)
    {
        yield return error.Line is { } line ? $"{error.Name} in line {line}: {error.Message}" : $"{error.Name}: {error.Message}";
        if (error.Line is not null)
        {
            yield return SourceExcerpt.Text(code.ReplaceLineEndings("\n").Split('\n'), error.Line, error.Column, LinesAround).TrimEnd('\n');
        }
    }
}
