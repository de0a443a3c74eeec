using System.Text.Json;
using StrutLessons.Plates;
using Xunit.Abstractions;

namespace StrutLessons.Tests.Plates;

/// <summary>One of the reference cases of Cases/joints.json: plate analyses of 64 joints by an independent solver.</summary>
internal sealed record JointCase(string Id, string Family, JsonElement Input, JsonElement Result)
{
    private static readonly Lazy<IReadOnlyList<JointCase>> Loaded = new(Load);

    /// <summary>All cases of a family: G rigid support, F girder flange, W girder web.</summary>
    internal static IEnumerable<JointCase> Of(string family) => Loaded.Value.Where(c => c.Family == family);

    internal double In(string name) => Input.GetProperty(name).GetDouble();

    /// <summary>A result; a dot in the name steps into a group.</summary>
    internal double Out(string path)
    {
        var at = Result;
        foreach (string name in path.Split('.'))
        {
            at = at.GetProperty(name);
        }

        return at.GetDouble();
    }

    internal GussetPlate Gusset()
    {
        var from = Family == "G" ? Input : Input.GetProperty("gusset");
        double Get(string name) => from.GetProperty(name).GetDouble();
        return new(
            Get("t"), Get("b_left"), Get("b_right"), Get("patch_width"), Get("g"), Get("L_group"), Get("e_end"),
            Get("alpha_deg") * Math.PI / 180, Get("taper"));
    }

    internal GirderShape Girder() => new(In("h"), In("b"), In("tw"), In("tf"));

    internal GirderSpan Span() => new(In("L_girder"), In("a"));

    internal double Height => In("y0_from_bottom_flange_midplane");

    /// <summary>Asserts that every ratio lies within a tolerance of 1 and writes the distribution to the test's output.</summary>
    internal static void AssertRatios(IEnumerable<(string Id, double Ratio)> ratios, double tolerance, string what, ITestOutputHelper output)
    {
        var sorted = ratios.OrderBy(r => r.Ratio).ToList();
        output.WriteLine(
            $"{what}, {sorted.Count} cases: min {sorted[0].Ratio:F4} ({sorted[0].Id}), median {sorted[sorted.Count / 2].Ratio:F4}, "
            + $"max {sorted[^1].Ratio:F4} ({sorted[^1].Id})");
        Assert.All(sorted, r => Assert.InRange(r.Ratio, 1 - tolerance, 1 + tolerance));
    }

    private static List<JointCase> Load()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", "joints.json")));
        return [.. file.RootElement.GetProperty("cases").EnumerateArray().Select(c => new JointCase(
            c.GetProperty("id").GetString()!, c.GetProperty("family").GetString()!, c.GetProperty("input").Clone(), c.GetProperty("result").Clone()))];
    }
}
