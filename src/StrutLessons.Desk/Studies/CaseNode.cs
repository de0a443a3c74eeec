using System.Text.Json;

namespace StrutLessons.Desk.Studies;

/// <summary>
/// An object of a case file while it is read. Every value is asked for by name, type and range; whatever is left over at the end is refused, so that a
/// misspelt key or a wrong unit never passes in silence. Messages name the place in the case.
/// </summary>
internal sealed class CaseNode
{
    private readonly JsonElement _element;
    private readonly string _path;
    private readonly HashSet<string> _asked = [];

    internal CaseNode(JsonElement element, string path)
    {
        _path = path;
        _element = element.ValueKind == JsonValueKind.Object ? element : throw Wrong(path, element, "an object { … }", "Put the values between braces, each with its name.");
    }

    internal string Path => _path;

    internal bool Has(string key) => Find(key) is not null;

    /// <summary>The value, for those who look at its kind themselves.</summary>
    internal JsonElement? Find(string key)
    {
        _asked.Add(key);
        return _element.TryGetProperty(key, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
    }

    internal double Number(string key, double least, double most) => Find(key) is { } value ? NumberOf(value, At(key), least, most) : throw Missing(key, "a number");

    internal double Number(string key, double least, double most, double otherwise) => Find(key) is { } value ? NumberOf(value, At(key), least, most) : otherwise;

    internal double? NumberOrNone(string key, double least, double most) => Find(key) is { } value ? NumberOf(value, At(key), least, most) : null;

    internal int Whole(string key, int least, int most, int otherwise)
    {
        var value = Number(key, least, most, otherwise);
        return value == Math.Floor(value) ? (int)value : throw Wrong(At(key), _element.GetProperty(key), "a whole number", "Give 1, 2, 3 and so on.");
    }

    internal bool Flag(string key, bool otherwise) => Find(key) switch
    {
        null => otherwise,
        { ValueKind: JsonValueKind.True } => true,
        { ValueKind: JsonValueKind.False } => false,
        // A table of comma-separated values knows words alone.
        { ValueKind: JsonValueKind.String } text when text.GetString() is "true" or "false" => text.GetString() == "true",
        { } other => throw Wrong(At(key), other, "true or false", "Write it without quotes."),
    };

    internal string Text(string key, string otherwise) => Find(key) is { } value ? TextOf(value, At(key)) : otherwise;

    internal T Choice<T>(string key, T otherwise, params (string Word, T Value)[] choices) => Find(key) is { } value ? ChoiceOf(value, At(key), choices) : otherwise;

    internal CaseNode Object(string key) => Find(key) is { } value ? new(value, At(key)) : throw Missing(key, "an object { … }");

    internal CaseNode? ObjectOrNone(string key) => Find(key) is { } value ? new(value, At(key)) : null;

    /// <summary>A list of numbers; one number counts as a list of one.</summary>
    internal double[] Numbers(string key, double least, double most, int longest)
    {
        if (Find(key) is not { } value)
        {
            return [];
        }
        if (value.ValueKind == JsonValueKind.Number)
        {
            return [NumberOf(value, At(key), least, most)];
        }
        return value.ValueKind == JsonValueKind.Array && value.GetArrayLength() <= longest
            ? [.. value.EnumerateArray().Select((v, i) => NumberOf(v, $"{At(key)}[{i}]", least, most))]
            : throw Wrong(At(key), value, $"a list of at most {longest} numbers", "Put the numbers between [ and ].");
    }

    /// <summary>Two numbers, y and z.</summary>
    internal Planar Pair(string key, double most, Planar? otherwise = null)
    {
        if (!Has(key))
        {
            return otherwise ?? throw Missing(key, "two numbers [y, z]");
        }
        return Numbers(key, -most, most, 2) is [var y, var z] ? new(y, z) : throw Wrong(At(key), Find(key)!.Value, "two numbers [y, z]", "y runs along the connected leg, z towards the gusset.");
    }

    internal string[] Words(string key, params string[] allowed)
    {
        if (Find(key) is not { } value)
        {
            return [];
        }
        return value.ValueKind == JsonValueKind.Array && value.GetArrayLength() <= 200
            ? [.. value.EnumerateArray().Select((v, i) => ChoiceOf(v, $"{At(key)}[{i}]", [.. allowed.Select(a => (a, a))]))]
            : [ChoiceOf(value, At(key), [.. allowed.Select(a => (a, a))])];
    }

    /// <summary>Refuses what nobody asked for.</summary>
    internal void Done()
    {
        foreach (var member in _element.EnumerateObject())
        {
            if (!_asked.Contains(member.Name))
            {
                throw Wrong(At(Short(member.Name)), member.Value, "left out: nothing here has this name",
                    $"Did you mean {Nearest(member.Name)}? A unit belongs to the name, as in length_mm. Known here: {string.Join(", ", _asked)}.");
            }
        }
    }

    internal string At(string key) => _path.Length == 0 ? key : $"{_path}.{key}";

    internal static double NumberOf(JsonElement value, string at, double least, double most)
    {
        if (value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out var number))
        {
            throw Wrong(at, value, "a number", "Write it without quotes and without its unit; the unit is part of the name.");
        }
        return number >= least && number <= most
            ? number
            : throw Wrong(at, value, FormattableString.Invariant($"between {least:G6} and {most:G6}"), "Check the unit: it is part of the name.");
    }

    internal static string TextOf(JsonElement value, string at) => value.ValueKind == JsonValueKind.String && value.GetString() is { Length: > 0 and <= 200 } text
        ? text
        : throw Wrong(at, value, "words in quotes, at most 200 letters", "Put the words between double quotes.");

    internal static T ChoiceOf<T>(JsonElement value, string at, params (string Word, T Value)[] choices)
    {
        var text = value.ValueKind == JsonValueKind.String ? value.GetString() : null;
        foreach (var (word, chosen) in choices)
        {
            if (word == text)
            {
                return chosen;
            }
        }
        throw Wrong(at, value, "one of " + string.Join(", ", choices.Select(c => $"\"{c.Word}\"")), "Choose one of these words.");
    }

    internal static InputException Wrong(string at, JsonElement value, string allowed, string advice) => new(at, Short(value.GetRawText()), allowed, advice);

    internal InputException Missing(string key, string allowed) => new(At(key), "missing", allowed, $"Add \"{key}\".");

    /// <summary>The beginning of a long value is enough to find it.</summary>
    internal static string Short(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, 12, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= 60 ? line : line[..60] + "…";
    }

    private string Nearest(string name) => _asked.MinBy(a => Distance(a, Short(name))) ?? "";

    /// <summary>Letters to change, add or leave out (Levenshtein's distance).</summary>
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0]++;
            for (var j = 1; j <= b.Length; j++)
            {
                (corner, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, corner + (a[i - 1] == b[j - 1] ? 0 : 1)));
            }
        }
        return row[^1];
    }
}
