using System.Text.Json;
using StrutLessons.Capacity;
using StrutLessons.Member;

namespace StrutLessons.Tests.Capacity;

public class CapacityCaseTests
{
    public static TheoryData<string> Ids => [.. StrutCase.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Critical_load_and_capacity_agree_with_the_reference_cases_to_nine_digits(string id)
    {
        StrutCase c = StrutCase.Find(id);
        CapacityResult result = StrutCapacity.Of(c.ToStrut());
        Closeness.Relative(c.Out("N_cr"), result.CriticalLoad, 1e-9, $"{id} N_cr");
        Closeness.Relative(c.Out("N_R"), result.Load, 1e-9, $"{id} N_R");
        Closeness.Relative(c.Out("N_R"), StrutCapacity.LoadOf(result.Strut), 1e-9, $"{id} N_R without trace");
        Closeness.Relative(c.Out("N_pl"), result.Strut.SquashLoad, 1e-10, $"{id} N_pl");
        Closeness.Relative(c.Out("N_Ev"), result.Strut.EulerLoadV, 1e-10, $"{id} N_Ev");
        Closeness.Relative(c.Out("N_Eu"), result.Strut.EulerLoadU, 1e-10, $"{id} N_Eu");
        Closeness.Relative(c.Out("lambda_v_bar"), result.Strut.RelativeSlendernessV, 1e-10, $"{id} slenderness");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Governing_criterion_corner_and_place_agree_with_the_reference_cases(string id)
    {
        StrutCase c = StrutCase.Find(id);
        Strut strut = c.ToStrut();
        BowCapacity result = StrutCapacity.Of(strut).Governing;
        string governing = c.Output.GetProperty("governing").GetString()!;
        bool degenerate = c.Output.TryGetProperty("degenerate", out JsonElement d) && d.ValueKind != JsonValueKind.False;
        if (!degenerate)
        {
            Assert.Equal(governing, result.Reason.ToString().ToLowerInvariant());
        }

        CheckFirst("comp", result.Compression);
        CheckFirst("tens", result.Tension);
        if (result.Place is { } place && !degenerate)
        {
            Assert.Contains(Allowed(""), p => p.Corner == CornerNames.Of(place.Corner) && Math.Abs(p.X - place.X) <= 1e-6 * strut.SystemLength);
        }

        void CheckFirst(string name, FirstYieldPlace? found)
        {
            JsonElement want = c.Output.GetProperty("N_R_" + name);
            if (want.ValueKind == JsonValueKind.Null)
            {
                Assert.Null(found);
                return;
            }

            // A straight, concentric strut never yields before it buckles; the reference then writes the critical load.
            Assert.True(degenerate || found is not null, $"{id} N_R_{name}: no yielding found");
            Closeness.Relative(want.GetDouble(), found?.Load ?? CriticalLoad.Of(strut), 1e-9, $"{id} N_R_{name}");
        }

        List<(string Corner, double X)> Allowed(string suffix)
        {
            var list = new List<(string, double)> { (c.Output.GetProperty("point" + suffix).GetString()!, c.Out("x" + suffix)) };
            if (c.Output.TryGetProperty("ties", out JsonElement ties) && ties.ValueKind == JsonValueKind.Array)
            {
                list.AddRange(ties.EnumerateArray().Select(t => (t[0].GetString()!, t[1].GetDouble())));
            }

            return list;
        }
    }
}
