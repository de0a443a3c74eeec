using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Desk.Commands;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>All reference cases, sent once through the verb <c>study</c>: written as a case file, run, read back.</summary>
public sealed class ReferenceRun : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public ReferenceRun()
    {
        IEnumerable<JsonObject> cases =
        [
            .. ReferenceFiles.Cases(ReferenceFiles.Strut).Select(ReferenceFiles.OfStrut),
            .. ReferenceFiles.Cases(ReferenceFiles.Joints).Select(ReferenceFiles.OfJoint),
            .. ReferenceFiles.Cases(ReferenceFiles.Nonlinear).SelectMany(c => new[]
            {
                ReferenceFiles.OfPath(c, "path " + ReferenceFiles.Id(c), true, true), ReferenceFiles.OfPath(c, "no twist " + ReferenceFiles.Id(c), false, true),
                ReferenceFiles.OfPath(c, "no Wagner " + ReferenceFiles.Id(c), true, false),
            }),
            .. ReferenceFiles.Cases(ReferenceFiles.Ladders).SelectMany(c => new[]
            {
                ReferenceFiles.OfLadder(c, "ladder " + ReferenceFiles.Id(c), true), ReferenceFiles.OfLadder(c, "flat ladder " + ReferenceFiles.Id(c), false),
            }),
        ];
        File = ReferenceFiles.File(cases);
        string input = Path.Combine(_folder, "cases.json"), output = Path.Combine(_folder, "results.json");
        System.IO.File.WriteAllText(input, File.ToJsonString());
        Code = CommandLine.RunAsync(["study", input, "--out", output]).GetAwaiter().GetResult();
        using var results = JsonDocument.Parse(System.IO.File.ReadAllText(output));
        Order = [.. results.RootElement.GetProperty("results").EnumerateArray().Select(r => r.GetProperty("id").GetString()!)];
        Results = results.RootElement.GetProperty("results").EnumerateArray().Zip(Order).ToDictionary(p => p.Second, p => p.First.Clone());
    }

    public int Code { get; }

    public JsonObject File { get; }

    public IReadOnlyList<string> Order { get; }

    public IReadOnlyDictionary<string, JsonElement> Results { get; }

    public void Dispose() => Directory.Delete(_folder, true);

    /// <summary>A value of a result; a name or a number steps in.</summary>
    internal JsonElement At(string id, params object[] path)
    {
        var result = Results[id];
        Assert.True(result.TryGetProperty("result", out var at), result.ToString());
        return path.Aggregate(at, (e, step) => step is int i ? e[i] : e.GetProperty((string)step));
    }
}
