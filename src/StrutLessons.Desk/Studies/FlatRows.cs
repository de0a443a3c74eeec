using System.Globalization;
using System.Text.Json.Nodes;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>
/// Cases and results as rows of comma-separated values. A column's name is the path to a value, <c>ends.gusset.thickness_mm</c>; a list is written
/// with semicolons between its items, or item by item as <c>loads_N.0</c>.
/// </summary>
internal static class FlatRows
{
    /// <summary>Each row below the headings as a case.</summary>
    internal static List<JsonObject> ToCases(string text)
    {
        List<JsonObject> cases = [];
        IReadOnlyList<string>? headings = null;
        foreach (var row in CsvRows.Read(new StringReader(text)))
        {
            if (headings is null)
            {
                headings = row;
                if (headings.Distinct().Count() < headings.Count || headings.Any(h => h.Length is 0 or > 200 || h.Count(c => c == '.') > 8))
                {
                    throw new InputException("headings", CaseNode.Short(string.Join(",", headings)), "a different path for each column, such as ends.arm_mm", "Give every column a name of its own.");
                }
                continue;
            }
            if (row.Count != headings.Count)
            {
                throw new InputException($"row {cases.Count + 2}", $"{row.Count} fields", $"as many as headings, {headings.Count}", "A comma in a text needs quotes around the text.");
            }
            var made = new JsonObject();
            for (var c = 0; c < row.Count; c++)
            {
                if (row[c].Length > 0)
                {
                    Put(made, headings[c], row[c]);
                }
            }
            cases.Add((JsonObject)Lists(made)!);
        }
        return cases.Count > 0 ? cases : throw new InputException("case file", "without rows", "headings and at least one row", "Write one case in each row.");
    }

    /// <summary>The values of a result with their paths.</summary>
    internal static IEnumerable<(string Path, string Value)> Flatten(JsonNode? node, string path) => node switch
    {
        JsonObject all => all.SelectMany(m => Flatten(m.Value, path.Length == 0 ? m.Key : $"{path}.{m.Key}")),
        JsonArray list => list.SelectMany((item, i) => Flatten(item, $"{path}.{i}")),
        JsonValue value => [(path, value.TryGetValue(out string? words) ? words : value.TryGetValue(out double number) ? number.ToString(CultureInfo.InvariantCulture) : value.ToJsonString())],
        _ => [],
    };

    /// <summary>A field with quotes where it needs them (RFC 4180).</summary>
    internal static string Field(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : '"' + text.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';

    private static void Put(JsonObject row, string path, string text)
    {
        var names = path.Split('.');
        var at = row;
        foreach (var name in names[..^1])
        {
            if (at[name] is null)
            {
                at[name] = new JsonObject();
            }
            at = at[name] as JsonObject ?? throw new InputException(path, CaseNode.Short(text), "below a path that is an object", "One column gives a value where another goes deeper.");
        }
        if (at.ContainsKey(names[^1]))
        {
            throw new InputException(path, CaseNode.Short(text), "given once", "One column gives a value where another goes deeper.");
        }
        at[names[^1]] = text.Contains(';', StringComparison.Ordinal) ? new JsonArray([.. text.Split(';', StringSplitOptions.TrimEntries).Select(Value)]) : names is ["id"] or ["note"] ? JsonValue.Create(text) : Value(text);
    }

    /// <summary>Objects whose names are 0, 1, 2 … are lists.</summary>
    private static JsonNode? Lists(JsonNode? node)
    {
        if (node is not JsonObject all)
        {
            return node?.DeepClone();
        }
        return all.Count > 0 && all.Select(m => m.Key).SequenceEqual(Enumerable.Range(0, all.Count).Select(i => i.ToString(CultureInfo.InvariantCulture)))
            ? new JsonArray([.. all.Select(m => Lists(m.Value))])
            : new JsonObject(all.Select(m => KeyValuePair.Create(m.Key, Lists(m.Value))));
    }

    private static JsonNode? Value(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? JsonValue.Create(number) : JsonValue.Create(text);
}
