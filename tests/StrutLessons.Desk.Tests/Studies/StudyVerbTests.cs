using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;
using Parquet;
using Parquet.Schema;
using StrutLessons.Desk.Commands;
using StrutLessons.Desk.Studies;
using StrutLessons.Studies;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>The verbs study and merge, as another program calls them.</summary>
public sealed partial class StudyVerbTests : IDisposable
{
    private static readonly string Folder_ = Path.Combine(Repository.Top, "src", "StrutLessons.Desk", "Studies");
    private static readonly string[] Examples = [.. JsonBlock().Matches(File.ReadAllText(Path.Combine(Folder_, "case-file.md"))).Select(m => m.Groups[1].Value)];
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Folder_, "case-file.schema.json")));
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task The_examples_of_the_page_run_and_follow_the_schema()
    {
        Assert.Equal(2, Examples.Length);
        foreach (var example in Examples)
        {
            Assert.True(Follows(example));
        }
        Assert.Equal(0, await Study(Examples[0], "results.json"));
        using var results = JsonDocument.Parse(File.ReadAllText(At("results.json")));
        Assert.All(results.RootElement.GetProperty("results").EnumerateArray(), r => Assert.True(r.TryGetProperty("result", out _), r.ToString()));
        Assert.Contains("not a design check", results.RootElement.GetProperty("caution").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_accepts_the_reference_cases_and_refuses_a_wrong_unit()
    {
        JsonObject file = ReferenceFiles.File(
        [
            .. ReferenceFiles.Cases(ReferenceFiles.Strut).Select(ReferenceFiles.OfStrut), .. ReferenceFiles.Cases(ReferenceFiles.Joints).Select(ReferenceFiles.OfJoint),
            .. ReferenceFiles.Cases(ReferenceFiles.Nonlinear).Select(c => ReferenceFiles.OfPath(c, ReferenceFiles.Id(c), true, true)), .. ReferenceFiles.Cases(ReferenceFiles.Ladders).Select(c => ReferenceFiles.OfLadder(c, ReferenceFiles.Id(c), true)),
        ]);
        Assert.True(Follows(file.ToJsonString()));
        Assert.False(Follows(Examples[0].Replace("\"length_mm\": 2150", "\"length_m\": 2.15", StringComparison.Ordinal)));
        Assert.False(Follows(Examples[0].Replace("\"S355\"", "\"S36\"", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_wrong_case_gives_an_error_in_its_place_and_exit_code_1()
    {
        Assert.Equal(1, await Study(CaseFuzzer.Good.Replace("\"S355\"", "\"S36\"", StringComparison.Ordinal), "results.json"));
        using var results = JsonDocument.Parse(File.ReadAllText(At("results.json")));
        JsonElement[] all = [.. results.RootElement.GetProperty("results").EnumerateArray()];
        Assert.Equal(["a", "b", "c"], all.Select(r => r.GetProperty("id").GetString()));
        Assert.True(all[0].TryGetProperty("error", out _) && !all[0].TryGetProperty("result", out _));
        Assert.True(all[1].TryGetProperty("result", out _) && all[2].TryGetProperty("result", out _));
        Assert.False(File.Exists(CaseRunner.UnfinishedOf(At("results.json"))));
        Assert.Equal(1, await Study("[", "none.json"));
        Assert.False(File.Exists(At("none.json")));
    }

    [Fact]
    public async Task A_stopped_run_goes_on_where_it_was()
    {
        await Study(CaseFuzzer.Good, "whole.json");
        var file = CaseFile.Read(At("cases.json"));
        // As a stop leaves it: the first result whole, the second cut off. The first is changed, to see that it is kept.
        var first = CaseFile.Solve(file.Cases[0], 0);
        first["id"] = "kept";
        File.WriteAllText(CaseRunner.UnfinishedOf(At("stopped.json")), $"{file.Fingerprint}\n{first.ToJsonString()}\n{{\"id\":\"b\",\"res");
        Assert.Equal(0, CaseRunner.Run(file, At("stopped.json"), 2, null, CancellationToken.None));
        Assert.Equal(File.ReadAllText(At("whole.json")).Replace("\"id\": \"a\"", "\"id\": \"kept\"", StringComparison.Ordinal), File.ReadAllText(At("stopped.json")));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CaseRunner.Run(file, At("never.json"), 2, null, stop.Token));
        Assert.False(File.Exists(At("never.json")));
    }

    [Fact]
    public async Task The_same_cases_give_the_same_file_on_one_and_two_threads()
    {
        await Study(CaseFuzzer.Good, "one.json", "--threads", "1");
        await Study(CaseFuzzer.Good, "two.json", "--threads", "2");
        Assert.Equal(File.ReadAllText(At("one.json")), File.ReadAllText(At("two.json")));
    }

    [Fact]
    public async Task Cases_and_results_may_be_comma_separated()
    {
        File.WriteAllText(At("cases.csv"), "id,section,steel,length_mm,ends.load_point_mm,ends.spring_in_plane_Nmm_per_rad,ends.spring_out_of_plane_Nmm_per_rad,bows.0.amplitude_mm,bows.0.direction\r\n1,L 80x80x8,S355,2150,18;27,rigid,3e7,7,u\r\n2,L 80x80x8,S36,2150,18;27,rigid,3e7,7,u\r\n");
        Assert.Equal(1, await CommandLine.RunAsync(["study", At("cases.csv"), "--out", At("results.csv")]));
        StudyTable table = StudyTable.Read(At("results.csv"));
        Assert.Equal(2, table.RowCount);
        var json = """{"format":"strut-lessons cases 1","cases":[{"id":"1","section":"L 80x80x8","steel":"S355","length_mm":2150,"ends":{"load_point_mm":[18,27],"spring_in_plane_Nmm_per_rad":"rigid","spring_out_of_plane_Nmm_per_rad":3e7},"bows":[{"amplitude_mm":7,"direction":"u"}]}]}""";
        await Study(json, "same.json");
        using var same = JsonDocument.Parse(File.ReadAllText(At("same.json")));
        Assert.Equal(same.RootElement.GetProperty("results")[0].GetProperty("result").GetProperty("capacity").GetProperty("capacity_N").GetDouble(), table.Numbers("result.capacity.capacity_N")[0]);
        Assert.Contains("S235", table.Words("error")[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_grid_is_written_in_three_forms_and_in_parts()
    {
        foreach (var name in new[] { "grid.csv", "grid.json", "grid.parquet" })
        {
            Assert.Equal(0, await Study(Examples[1], name));
        }
        StudyTable table = StudyTable.Read(At("grid.csv"));
        Assert.Equal(88, table.RowCount);
        using var json = JsonDocument.Parse(File.ReadAllText(At("grid.json")));
        Assert.Equal(88, json.RootElement.GetProperty("rows").GetArrayLength());
        await using var reader = await ParquetReader.CreateAsync(At("grid.parquet"));
        DataField[] fields = reader.Schema.DataFields;
        Assert.Equal(table.Columns.Select(c => c.Heading), fields.Select(f => f.Name));
        Assert.All(table.Columns, c => Assert.Equal(c.Description, reader.CustomMetadata[c.Heading]));
        using var group = reader.OpenRowGroupReader(0);
        var capacity = new double?[88];
        await group.ReadAsync<double>(fields.Single(f => f.Name == "capacity (kN)"), capacity.AsMemory());
        Assert.Equal(table.Numbers("capacity").ToArray(), capacity.Select(v => v!.Value));

        await Study(Examples[1], "part-1.csv", "--part", "1/2");
        await Study(Examples[1], "part-2.csv", "--part", "2/2");
        Assert.Equal(0, await CommandLine.RunAsync(["merge", At("part-2.csv"), At("part-1.csv"), "--out", At("merged.csv")]));
        Assert.Equal(File.ReadAllBytes(At("grid.csv")), File.ReadAllBytes(At("merged.csv")));
    }

    private static bool Follows(string json)
    {
        using var instance = JsonDocument.Parse(json);
        return Schema.Evaluate(instance.RootElement).IsValid;
    }

    private Task<int> Study(string cases, string output, params string[] more)
    {
        File.WriteAllText(At("cases.json"), cases);
        return CommandLine.RunAsync(["study", At("cases.json"), "--out", At(output), .. more]);
    }

    private string At(string name) => Path.Combine(_folder, name);

    [GeneratedRegex("```json\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex JsonBlock();
}
