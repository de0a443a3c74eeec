using System.Text.Json;
using StrutLessons.Sections;

namespace StrutLessons.Tests;

/// <summary>
/// One of the 44 reference cases of Cases/strut.json: elastic second-order struts computed by five independent formulations
/// (50-digit general solution, transfer matrix, Hermite elements, collocation, boundary-value solver).
/// </summary>
internal sealed record StrutCase(string Id, JsonElement Input, JsonElement Output)
{
    private static readonly Lazy<IReadOnlyList<StrutCase>> Loaded = new(Load);

    internal static IReadOnlyList<StrutCase> All => Loaded.Value;

    internal static StrutCase Find(string id) => All.Single(c => c.Id == id);

    internal double In(string name) => Input.GetProperty(name).GetDouble();

    internal double Out(string name) => Output.GetProperty(name).GetDouble();

    internal AngleSection Section()
    {
        JsonElement s = Input.GetProperty("section");
        double Get(string n) => s.GetProperty(n).GetDouble();
        double bc = Get("b_c"), bo = Get("b_o");
        var angle = new Angle(s.GetProperty("name").GetString()!, Math.Max(bc, bo), Math.Min(bc, bo), Get("t"), Get("r1"), Get("r2"));
        return angle.Connected(bc >= bo ? ConnectedLeg.Long : ConnectedLeg.Short);
    }

    private static List<StrutCase> Load()
    {
        using JsonDocument file = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", "strut.json")));
        return [.. file.RootElement.GetProperty("cases").EnumerateArray().Select(
            c => new StrutCase(c.GetProperty("id").GetString()!, c.GetProperty("input").Clone(), c.GetProperty("output").Clone()))];
    }
}
