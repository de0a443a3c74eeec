using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace StrutLessons.Desk.Studies;

/// <summary>A case file: a list of cases, or a grid. Read whole; what is wrong with the file itself is told at once, what is wrong with a case is its result.</summary>
/// <param name="Cases">The cases; empty for a grid.</param>
/// <param name="Grid">The grid; null for a list.</param>
/// <param name="Fingerprint">SHA-256 of the file's bytes: tells whether unfinished results belong to it.</param>
internal sealed record CaseFile(IReadOnlyList<JsonElement> Cases, JsonElement? Grid, string Fingerprint)
{
    internal const string Format = "strut-lessons cases 1";

    private const int LargestFile = 64 << 20;
    private const int MostCases = 200_000;
    private static readonly UTF8Encoding Strict = new(false, true);

    internal static CaseFile Read(string path)
    {
        if (new FileInfo(path).Length > LargestFile)
        {
            throw Wrong("more than 64 MB", "smaller", "Write a grid, or split the cases into several files.");
        }
        return Parse(File.ReadAllBytes(path), Path.GetExtension(path).Equals(".csv", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Reads the bytes of a file.</summary>
    /// <exception cref="InputException">The file is not UTF-8, not JSON or CSV, or not of this format.</exception>
    internal static CaseFile Parse(byte[] bytes, bool isCsv)
    {
        var text = Decoded(bytes);
        var fingerprint = Convert.ToHexString(SHA256.HashData(bytes));
        if (isCsv)
        {
            return new([.. FlatRows.ToCases(text).Select(Element)], null, fingerprint);
        }
        JsonElement root;
        try
        {
            using var document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = 32, AllowDuplicateProperties = false });
            root = document.RootElement.Clone();
        }
        catch (JsonException wrong)
        {
            throw Wrong($"not JSON (line {wrong.LineNumber + 1}): {CaseNode.Short(wrong.Message)}", "one JSON object, at most 32 levels deep, each name once", "A comma, bracket or quote may be missing, or the file was cut off.");
        }
        var node = new CaseNode(root, "");
        if (node.Find("format") is not { ValueKind: JsonValueKind.String } format || format.GetString() != Format)
        {
            throw new InputException("format", node.Find("format") is { } other ? CaseNode.Short(other.GetRawText()) : "missing", $"\"{Format}\"", "It says which version of the form the file follows.");
        }
        var grid = node.ObjectOrNone("grid") is not null ? node.Find("grid") : null;
        var cases = node.Find("cases");
        node.Find("note");
        node.Done();
        if (grid is null == cases is null)
        {
            throw Wrong(grid is null ? "without cases" : "with both cases and a grid", "one with \"cases\": [ … ] or with \"grid\": { … }", "Give one of the two.");
        }
        if (cases is { } list && (list.ValueKind != JsonValueKind.Array || list.GetArrayLength() is 0 or > MostCases))
        {
            throw CaseNode.Wrong("cases", list, $"a list of 1 to {MostCases} cases", "Put the cases between [ and ]; write a grid for more.");
        }
        return new(cases is { } found ? [.. found.EnumerateArray()] : [], grid, fingerprint);
    }

    /// <summary>Solves one case: its id with a result, or with an error.</summary>
    internal static JsonObject Solve(JsonElement element, int index)
    {
        var id = element.ValueKind == JsonValueKind.Object && element.TryGetProperty("id", out var given) && given.ValueKind == JsonValueKind.String ? CaseNode.Short(given.GetString()!) : $"{index + 1}";
        try
        {
            var node = new CaseNode(element, "");
            node.Text("id", "");
            node.Text("note", "");
            return new() { ["id"] = id, ["result"] = node.Has("joint") ? JointCaseSolver.Solve(node) : StrutCaseSolver.Solve(node) };
        }
        catch (InputException wrong)
        {
            return new() { ["id"] = id, ["error"] = wrong.Message };
        }
        catch (Exception failed) when (failed is InvalidOperationException or ArithmeticException or ArgumentException or NotSupportedException)
        {
            return new() { ["id"] = id, ["error"] = $"The calculation did not succeed: {failed.Message}" };
        }
    }

    private static string Decoded(byte[] bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] || (bytes.Length > 3 && (bytes[1] == 0 || bytes[0] == 0)))
        {
            throw Wrong("not UTF-8, but UTF-16 or UTF-32", "UTF-8", "Save the file again with the encoding UTF-8.");
        }
        try
        {
            return Strict.GetString(bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes.AsSpan(3) : bytes);
        }
        catch (DecoderFallbackException wrong)
        {
            throw Wrong($"not UTF-8 (byte {wrong.Index + 1})", "UTF-8", "Save the file again with the encoding UTF-8.");
        }
    }

    private static JsonElement Element(JsonObject row) => JsonSerializer.SerializeToElement(row);

    private static InputException Wrong(string value, string allowed, string advice) => new("case file", value, allowed, advice);
}
