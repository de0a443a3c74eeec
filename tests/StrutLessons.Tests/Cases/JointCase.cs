using System.Text.Json;
using StrutLessons.Joints;

namespace StrutLessons.Tests;

/// <summary>
/// One of the 64 reference cases of Cases/joints.json: thin-plate finite element analyses of gussets (G), gussets on a girder
/// flange (F) and across a girder web (W), made with an independent program. The file's "model" entry defines the geometry.
/// </summary>
internal sealed record JointCase(string Id, string Family, JsonElement Input, JsonElement Result)
{
    private static readonly Lazy<IReadOnlyList<JointCase>> Loaded = new(Load);

    internal static IReadOnlyList<JointCase> All => Loaded.Value;

    internal static JointCase Find(string id) => All.Single(c => c.Id == id);

    internal static TheoryData<string> Ids(string family) => [.. All.Where(c => c.Family == family).Select(c => c.Id)];

    internal double In(string name) => Input.GetProperty(name).GetDouble();

    internal double Out(params string[] path) => path.Aggregate(Result, (e, name) => e.GetProperty(name)).GetDouble();

    /// <summary>The gusset and its rigid patch.</summary>
    internal (Gusset Plate, double PatchWidth, double PatchLength) Gusset()
    {
        JsonElement g = Family == "G" ? Input : Input.GetProperty("gusset");
        double Get(string n) => g.GetProperty(n).GetDouble();
        var plate = new Gusset(Get("t"), Get("b_left"), Get("b_right"), Get("g"), Get("e_end"), Get("taper"), Get("alpha_deg"));
        return (plate, Get("patch_width"), Get("L_group"));
    }

    private static List<JointCase> Load()
    {
        using JsonDocument file = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", "joints.json")));
        return [.. file.RootElement.GetProperty("cases").EnumerateArray().Select(c => new JointCase(
            c.GetProperty("id").GetString()!, c.GetProperty("family").GetString()!, c.GetProperty("input").Clone(), c.GetProperty("result").Clone()))];
    }
}
