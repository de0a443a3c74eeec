using System.Text.Json;
using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Cases;

/// <summary>
/// The reference ladders in twist_ladders.json: elastic struts at four loads each, from an exact rod with and without twist and from a linearised solution.
/// Their z points away from the gusset and stress is tension positive; this class turns everything into the library's axes.
/// </summary>
public sealed record TwistLadder(string Id, ReferenceStrut Strut, JsonElement Data)
{
    public static IReadOnlyList<TwistLadder> All { get; } = Load();

    public double Number(string name) => Data.GetProperty(name).GetDouble();

    public IReadOnlyList<double> Loads => [.. Data.GetProperty("points").EnumerateArray().Select(p => p.GetProperty("N").GetDouble())];

    /// <summary>State of one kind ("linearised", "exact_no_twist", "exact") at one rung, in the library's axes.</summary>
    public LadderState State(int rung, string kind)
    {
        JsonElement s = Data.GetProperty("points")[rung].GetProperty(kind);
        double Get(string name) => s.GetProperty(name).GetDouble();
        double twist = s.TryGetProperty("twist", out JsonElement t) ? -t.GetDouble() : 0;
        return new LadderState(new Planar(Get("vC"), -Get("wC")), twist, -Get("smin"), Get("smax"));
    }

    public override string ToString() => Id;

    private static List<TwistLadder> Load()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Cases", "twist_ladders.json");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file));
        return [.. document.RootElement.GetProperty("cases").EnumerateArray().Select(c => Read(c.Clone()))];
    }

    private static TwistLadder Read(JsonElement c)
    {
        double Number(string name) => c.GetProperty(name).GetDouble();
        JsonElement direction = c.GetProperty("bowdir"), eccentricity = c.GetProperty("ecc");
        var along = new Planar(direction[0].GetDouble(), -direction[1].GetDouble());
        var point = new Planar(eccentricity[0].GetDouble(), -eccentricity[1].GetDouble());
        var end = new ReferenceEnd(point, NonlinearCase.Stiffness(c.GetProperty("kin")), NonlinearCase.Stiffness(c.GetProperty("kout")));
        var strut = new ReferenceStrut(
            ReferenceSection.Angle(Number("b1"), Number("b2"), Number("t")), ReferenceSteel.WithYield(Number("fy_for_first_yield")),
            Number("L"), (Number("bow") / along.Length) * along, 0, end, end);
        return new TwistLadder(c.GetProperty("id").GetString()!, strut, c);
    }
}

/// <summary>One rung of a ladder, compression positive.</summary>
public readonly record struct LadderState(Planar CentroidMid, double Twist, double LargestCompression, double LargestTension);
