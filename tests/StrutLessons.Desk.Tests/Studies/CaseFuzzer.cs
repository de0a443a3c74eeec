using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>A malformed case file: what was done to a good one, and its bytes.</summary>
internal sealed record Malformed(string Kind, byte[] Bytes, bool IsCsv);

/// <summary>Spoils a good case file in many ways. The same key gives the same files. Every way makes a file that is wrong for certain.</summary>
internal sealed class CaseFuzzer(int key)
{
    private const string Csv = "id,section,steel,length_mm,ends.load_point_mm,ends.spring_in_plane_Nmm_per_rad,ends.spring_out_of_plane_Nmm_per_rad\r\nA,L 80x80x8,S355,2150,18;27,rigid,3e7\r\nB,L 70x70x7,S235,1500,15;22,0,2e7\r\n";
    private readonly Random _random = new(key);

    internal static string Good { get; } = new JsonObject
    {
        ["format"] = "strut-lessons cases 1",
        ["cases"] = new JsonArray(
            JsonNode.Parse("""{"id":"a","section":"L 80x80x8","steel":"S355","length_mm":2150,"ends":{"bolts":{"gauge_mm":45,"diameter_mm":20},"gusset":{"thickness_mm":10,"width_mm":160,"free_length_mm":65},"support":{"girder":"IPE 360","span_mm":5600,"position_mm":2800},"method":"hand_formula"},"find":["capacity","solutions"],"loads_N":[20000],"places_mm":[0,100]}"""),
            JsonNode.Parse("""{"id":"b","section":{"connected_leg_mm":100,"outstanding_leg_mm":65,"thickness_mm":8},"steel":{"yield_strength_MPa":275},"length_mm":1800,"end_1":{"load_point_mm":[12,21],"spring_in_plane_Nmm_per_rad":0,"spring_out_of_plane_Nmm_per_rad":35000000},"end_2":{"load_point_mm":[12,21],"spring_in_plane_Nmm_per_rad":"rigid","spring_out_of_plane_Nmm_per_rad":0},"bows":[{"amplitude_mm":6,"direction":"u"}]}"""),
            JsonNode.Parse("""{"id":"c","joint":{"gusset":{"thickness_mm":10,"width_left_mm":70,"width_right_mm":90,"free_length_mm":70},"patch_width_mm":80,"patch_length_mm":60},"find":"hand_formula"}""")),
    }.ToJsonString();

    internal Malformed Next()
    {
        Func<Malformed>[] ways =
        [
            () => Json("cut off", Good[.._random.Next(Good.Length)]),
            () => Value("a word for a number", IsNumber, _ => "12 mm"),
            () => Value("a list for a number", IsNumber, v => new JsonArray(v.DeepClone(), v.DeepClone(), v.DeepClone())),
            () => Value("an object for a number", IsNumber, _ => new JsonObject { ["value"] = 1 }),
            () => Value("true for a number", IsNumber, _ => true),
            () => Value("a huge number", IsNumber, _ => JsonNode.Parse(Pick("1e300", "-1e300", "1e999", "-1e999", "9" + new string('0', 400), "1e15"))!),
            () => Value("a negative number", IsNumber, v => -Math.Abs(v.GetValue<double>()) - 1e6),
            () => Value("a number for a word", l => IsWord(l) && !MayBeNumber(l), _ => 7),
            () => Value("an unknown word", IsWord, _ => Pick("", "pinned", "L 81x81x8", new string('x', 5000), "\u0000", "🙂")),
            () => Value("deep nesting", _ => true, _ => JsonNode.Parse(Nested(_random.Next(4, 25)))!),
            () => Json("very deep nesting", Good.Replace("2150", Nested(_random.Next(40, 20_000)), StringComparison.Ordinal)),
            Duplicate,
            Unit,
            Encoding_,
            Missing,
            () => Json("not JSON", Pick("", "null", "[]", "{}", "7", "\"cases\"", "{\"format\":1}", Good + Good, Good.Replace(',', ';'), Good.Replace('"', '\''), Good.Replace("2150", "NaN", StringComparison.Ordinal), "// note\n" + Good)),
            () => Json("a byte that no text has", Good.Insert(_random.Next(Good.Length), Pick("\u0000", "\u0001", "\u001f"))),
            () => Json("wrong form", Good.Replace("cases 1", Pick("cases 2", "case", ""), StringComparison.Ordinal)),
            () => Json("no cases", "{\"format\":\"strut-lessons cases 1\",\"cases\":" + Pick("[]", "{}", "7", "null", "[null]", "[[]]", "[1,2]") + "}"),
            () => Json("wrong grid", "{\"format\":\"strut-lessons cases 1\",\"grid\":" + Pick("[]", "{}", "{\"vary\":{}, \"x\":1}", "{\"vary\":{\"section\":[7]}}", "{\"vary\":{\"length\":[1]}}", "{\"vary\":{\"system length\":{\"from\":2,\"to\":1,\"count\":5}}}", "{\"vary\":{\"system length\":[1e400]}}", "{\"vary\":{\"system length\":{\"from\":1,\"to\":2,\"count\":1e9}}}") + "}"),
            CsvFile,
        ];
        return ways[_random.Next(ways.Length)]();
    }

    private static bool IsNumber(JsonNode node) => node.GetValueKind() == System.Text.Json.JsonValueKind.Number;

    /// <summary>Ids may be any words.</summary>
    private static bool IsWord(JsonNode node) => node.GetValueKind() == System.Text.Json.JsonValueKind.String && !node.GetPath().EndsWith("id", StringComparison.Ordinal);

    /// <summary>A spring may be a stiffness, a direction an angle.</summary>
    private static bool MayBeNumber(JsonNode node) => node.GetPath() is var path && (path.Contains("spring", StringComparison.Ordinal) || path.EndsWith("direction", StringComparison.Ordinal));

    private static Malformed Json(string kind, string text) => new(kind, Encoding.UTF8.GetBytes(text), false);

    private static string Nested(int depth) => new string('[', depth) + new string(']', depth);

    private static IEnumerable<JsonNode> Leaves(JsonNode? node) => node switch
    {
        JsonObject all => all.SelectMany(m => Leaves(m.Value)),
        JsonArray list => list.SelectMany(Leaves),
        JsonValue leaf => [leaf],
        _ => [],
    };

    private string Pick(params string[] choices) => choices[_random.Next(choices.Length)];

    private Malformed Value(string kind, Func<JsonNode, bool> fits, Func<JsonNode, JsonNode> spoil)
    {
        var root = JsonNode.Parse(Good)!;
        JsonNode[] leaves = [.. Leaves(root["cases"]).Where(l => fits(l) && !l.GetPath().EndsWith(".id", StringComparison.Ordinal))];
        // Where any number may stand, negative ones and large ones are no fault: load points, places, amplitudes.
        leaves = [.. leaves.Where(l => kind != "a negative number" || !l.GetPath().Contains("load_point", StringComparison.Ordinal))];
        var leaf = leaves[_random.Next(leaves.Length)];
        var path = leaf.GetPath();
        leaf.ReplaceWith(spoil(leaf));
        return Json($"{kind} at {path}", root.ToJsonString());
    }

    private Malformed Duplicate()
    {
        var name = Pick("\"section\":", "\"length_mm\":", "\"steel\":", "\"thickness_mm\":", "\"format\":", "\"id\":");
        var at = Good.IndexOf(name, StringComparison.Ordinal);
        return Json("the same name twice: " + name, Good.Insert(at, name + "1,"));
    }

    private Malformed Unit()
    {
        string[] names = ["length_mm", "thickness_mm", "gauge_mm", "free_length_mm", "yield_strength_MPa", "spring_in_plane_Nmm_per_rad", "patch_width_mm"];
        var name = Pick(names);
        var wrong = name[..(name.LastIndexOf("_mm", StringComparison.Ordinal) is var i and > 0 ? i : name.IndexOf("_MPa", StringComparison.Ordinal) is var j and > 0 ? j : name.IndexOf("_Nmm", StringComparison.Ordinal))];
        return Json("another unit for " + name, Good.Replace($"\"{name}\"", $"\"{wrong}{Pick("", "_m", "_cm", "_in", "_ksi", "_kNm_per_rad", "_MM")}\"", StringComparison.Ordinal));
    }

    private Malformed Encoding_()
    {
        var text = Good.Replace("\"a\"", "\"Strebe für Brücke\"", StringComparison.Ordinal);
        var kind = Pick("utf-16", "utf-16BE", "utf-32", "iso-8859-1");
        var encoding = Encoding.GetEncoding(kind);
        return new("encoding " + kind, _random.Next(2) == 0 ? [.. encoding.GetPreamble(), .. encoding.GetBytes(text)] : encoding.GetBytes(text), false);
    }

    private Malformed Missing()
    {
        var root = JsonNode.Parse(Good)!;
        var cases = root["cases"]!;
        (JsonObject Of, string Name)[] needed =
        [
            (cases[0]!.AsObject(), "section"), (cases[0]!.AsObject(), "steel"), (cases[0]!.AsObject(), "length_mm"), (cases[0]!.AsObject(), "ends"), (cases[0]!.AsObject(), "loads_N"),
            (cases[0]!["ends"]!.AsObject(), "gusset"), (cases[0]!["ends"]!.AsObject(), "bolts"), (cases[1]!.AsObject(), "end_2"), (cases[1]!["end_1"]!.AsObject(), "load_point_mm"), (cases[2]!["joint"]!.AsObject(), "gusset"),
        ];
        var (of, name) = needed[_random.Next(needed.Length)];
        of.Remove(name);
        return Json("without " + name, root.ToJsonString());
    }

    private Malformed CsvFile()
    {
        var text = _random.Next(7) switch
        {
            0 => Csv.Insert(_random.Next(Csv.Length - 30, Csv.Length - 4), "\""),
            1 => Csv.Replace("2150", "2150,", StringComparison.Ordinal),
            2 => Csv.Replace("length_mm", "steel", StringComparison.Ordinal),
            3 => Csv.Replace("length_mm", Pick("length_m", "length", "Length_mm", ""), StringComparison.Ordinal),
            4 => Csv.Replace("2150", Pick("2.15 m", "2150 mm", "-2150", "1e99", "1e999", "two"), StringComparison.Ordinal),
            5 => Csv.Replace("18;27", Pick("18", "18;27;3", "18;x", ";"), StringComparison.Ordinal),
            _ => Csv[..(Csv.IndexOf('\n', StringComparison.Ordinal) + 1)] + string.Create(CultureInfo.InvariantCulture, $"A,L 80x80x8{new string(',', _random.Next(1, 5000))}"),
        };
        return new("csv", Encoding.UTF8.GetBytes(text), true);
    }
}
