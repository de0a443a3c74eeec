using System.Text;
using System.Text.Json.Nodes;
using StrutLessons.Desk.Studies;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>A thousand malformed case files: each gets a clear message; none crashes, hangs or fills the memory.</summary>
public sealed class MalformedFileTests
{
    private const int Key = 20260;
    private const int Files = 1000;
    private const long MostBytes = 200 << 20;

    [Fact]
    public void The_file_that_is_spoiled_is_good_itself()
    {
        var file = CaseFile.Parse(Encoding.UTF8.GetBytes(CaseFuzzer.Good), false);
        Assert.All(file.Cases.Select(CaseFile.Solve), r => Assert.True(r.ContainsKey("result"), r.ToJsonString()));
    }

    [Fact]
    public async Task Each_of_a_thousand_malformed_files_gets_a_clear_message()
    {
        var fuzzer = new CaseFuzzer(Key);
        List<string> silent = [];
        var work = Task.Run(() =>
        {
            for (var i = 0; i < Files; i++)
            {
                var malformed = fuzzer.Next();
                var before = GC.GetAllocatedBytesForCurrentThread();
                IReadOnlyList<string> messages = Messages(malformed);
                var spent = GC.GetAllocatedBytesForCurrentThread() - before;
                if (messages.Count == 0 || messages.Any(m => m.Length is < 20 or > 2500) || spent > MostBytes)
                {
                    silent.Add($"{i}: {malformed.Kind}, {spent >> 20} MB: {string.Join(" | ", messages)}\n{Encoding.UTF8.GetString(malformed.Bytes.AsSpan(0, Math.Min(600, malformed.Bytes.Length)))}");
                }
            }
        });
        await work.WaitAsync(TimeSpan.FromMinutes(5));
        Assert.True(silent.Count == 0, $"{silent.Count} of {Files}:\n" + string.Join("\n", silent.Take(5)));
    }

    [Theory]
    [InlineData("\"length_mm\":2150", "\"length_m\":2.15", "length_mm = missing")]
    [InlineData("\"length_mm\":2150", "\"length_mm\":2150,\"Length_mm\":1", "Did you mean length_mm")]
    [InlineData("\"length_mm\":2150", "\"length_mm\":\"2150\"", "without quotes")]
    [InlineData("\"S355\"", "\"S36\"", "one of \"S235\"")]
    [InlineData("L 80x80x8", "L 81x81x8", "Nearest: L 80x80x8")]
    [InlineData("\"gauge_mm\":45", "\"gauge_mm\":79", "ends")]
    [InlineData("\"loads_N\":[20000]", "\"loads_N\":[20000000]", "less than the critical load")]
    public void A_wrong_case_says_what_is_wrong_and_leaves_the_others_alone(string good, string bad, string words)
    {
        var file = CaseFile.Parse(Encoding.UTF8.GetBytes(CaseFuzzer.Good.Replace(good, bad, StringComparison.Ordinal)), false);
        JsonObject[] results = [.. file.Cases.Select(CaseFile.Solve)];
        Assert.Contains(words == "ends" ? "gauge" : words, results[0]["error"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.True(results[1].ContainsKey("result") && results[2].ContainsKey("result"));
    }

    private static IReadOnlyList<string> Messages(Malformed malformed)
    {
        try
        {
            var file = CaseFile.Parse(malformed.Bytes, malformed.IsCsv);
            if (file.Grid is { } grid)
            {
                GridFile.Read(grid);
            }
            return [.. file.Cases.Select(CaseFile.Solve).Select(r => r["error"]?.GetValue<string>()).OfType<string>()];
        }
        catch (InputException wrong)
        {
            return [wrong.Message];
        }
    }
}
