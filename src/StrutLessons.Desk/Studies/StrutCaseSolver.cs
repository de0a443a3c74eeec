using System.Text.Json.Nodes;
using StrutLessons.Capacity;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Standards;
using StrutLessons.Stress;

namespace StrutLessons.Desk.Studies;

/// <summary>Reads a case with a strut and finds what it asks for.</summary>
internal static class StrutCaseSolver
{
    private static readonly string[] Wanted = ["section", "joints", "capacity", "solutions", "standards", "roll", "elastic_rod", "reference"];

    internal static JsonObject Solve(CaseNode at)
    {
        (AngleSection section, double torsion) = CaseParts.Section(at);
        var (steel, referenceSteel) = CaseParts.SteelOf(at, section.Thickness);
        double length = CaseParts.Length(at);
        var (one, two) = CaseEnds.Both(at, section);
        var strut = new Strut(section, steel, length, one.End, two.End, CaseParts.Bows(at, section, length));
        string[] find = at.Words("find", Wanted);
        double[] loads = at.Numbers("loads_N", 0, 1e12, 200), shares = at.Numbers("shares_of_critical_load", 0, 1, 200), places = at.Numbers("places_mm", 0, 1e6, 2001);
        ReferenceCase reference = ReferenceCase.Read(at);
        at.Done();

        find = find.Length == 0 ? ["capacity"] : find;
        double critical = CriticalLoad.Of(strut);
        double[] allLoads = [.. loads, .. shares.Select(s => s * critical)];
        if (allLoads.Length == 0 && find.Any(f => f is "solutions" or "elastic_rod"))
        {
            throw at.Missing("loads_N", "a list of loads for solutions and elastic_rod");
        }
        var result = new JsonObject();
        foreach (var part in find.Distinct())
        {
            result[part] = part switch
            {
                "section" => Section(section),
                "joints" => Results.List([one, two], e => e.Joint is { } joint ? Results.Joint(joint) : null),
                "capacity" => Capacity(strut),
                "solutions" => Results.List(strut.Bows.SelectMany(b => allLoads.Select(n => SecondOrderSolution.Of(strut, n, b))), s => Solution(s, places)),
                "standards" => Standards(strut, Math.Min(one.Bolts, two.Bolts)),
                "roll" => reference.Roll(strut, torsion, referenceSteel, allLoads),
                "elastic_rod" => reference.ElasticRod(strut, torsion, referenceSteel, allLoads),
                _ => reference.Path(strut, torsion, referenceSteel),
            };
        }
        return result;
    }

    private static JsonObject Section(AngleSection s) => new()
    {
        ["area_mm2"] = Results.Number(s.Area), ["centroid_y_mm"] = Results.Number(s.CentroidY), ["centroid_z_mm"] = Results.Number(s.CentroidZ),
        ["I_y_mm4"] = Results.Number(s.SecondMomentY), ["I_z_mm4"] = Results.Number(s.SecondMomentZ), ["I_yz_mm4"] = Results.Number(s.ProductMoment),
        ["I_u_mm4"] = Results.Number(s.SecondMomentU), ["I_v_mm4"] = Results.Number(s.SecondMomentV), ["i_u_mm"] = Results.Number(s.RadiusU), ["i_v_mm"] = Results.Number(s.RadiusV),
        ["axis_u"] = Results.Pair(s.AxisU), ["axis_v"] = Results.Pair(s.AxisV), ["angle_to_u_degrees"] = Results.Number(s.AngleToU * 180 / Math.PI), ["tan_alpha"] = Results.Number(s.TanAlpha),
        ["corners"] = Results.List(s.Corners, c => new JsonObject { ["name"] = Name(c.Corner), ["position_mm"] = Results.Pair(c.Position) }),
    };

    private static JsonObject Capacity(Strut strut)
    {
        CapacityResult r = StrutCapacity.Of(strut);
        return new()
        {
            ["critical_load_N"] = Results.Number(r.CriticalLoad), ["capacity_N"] = Results.Number(r.Load), ["squash_load_N"] = Results.Number(strut.SquashLoad),
            ["euler_load_v_N"] = Results.Number(strut.EulerLoadV), ["euler_load_u_N"] = Results.Number(strut.EulerLoadU), ["slenderness"] = Results.Number(strut.RelativeSlendernessV),
            ["reduction_factor"] = Results.Number(r.ReductionFactor), ["governing_bow"] = r.Governing.Bow.Name,
            ["bows"] = Results.List(r.Bows, b => new JsonObject
            {
                ["bow"] = b.Bow.Name, ["capacity_N"] = Results.Number(b.Load), ["reason"] = Word(b.Reason.ToString()), ["place"] = b.Place is { } p ? Place(p) : null,
                ["first_yield_in_compression"] = b.Compression is { } c ? Yield(c) : null, ["first_yield_in_tension"] = b.Tension is { } t ? Yield(t) : null,
            }),
        };

        static JsonObject Yield(FirstYieldPlace y) => new() { ["load_N"] = Results.Number(y.Load), ["place"] = Place(y.Place) };
    }

    private static JsonObject Solution(SecondOrderSolution s, double[] places)
    {
        StressExtremes extremes = s.Extremes();
        AngleSection section = s.Strut.Section;
        return new()
        {
            ["bow"] = s.Bow.Name, ["load_N"] = Results.Number(s.Load),
            ["rotation_end_1_rad"] = Results.Pair(s.RotationEnd1), ["rotation_end_2_rad"] = Results.Pair(s.RotationEnd2),
            ["largest_compression_MPa"] = Results.Number(extremes.LargestCompression), ["compression_places"] = Results.List(extremes.Compression, Place),
            ["largest_tension_MPa"] = Results.Number(extremes.LargestTension), ["tension_places"] = Results.List(extremes.Tension, Place),
            ["shape"] = Results.List(places, x => new JsonObject
            {
                ["x_mm"] = Results.Number(x), ["deflection_mm"] = Results.Pair(s.Deflection(x)),
                ["deflection_u_v_mm"] = new JsonArray { Results.Number(section.AlongU(s.Deflection(x))), Results.Number(section.AlongV(s.Deflection(x))) },
                ["slope_rad"] = Results.Pair(s.Slope(x)), ["moment_Nmm"] = Results.Pair(s.Moment(x)),
                ["stress_MPa"] = new JsonObject(section.Corners.Select(c => KeyValuePair.Create(Name(c.Corner), Results.Number(s.StressAt(c.Corner, x))))),
            }),
        };
    }

    private static JsonArray Standards(Strut strut, int bolts) => Results.List(StandardComparison.Of(strut, bolts).Results, r => new JsonObject
    {
        ["rule"] = r.Rule.Name, ["clause"] = r.Rule.Citation, ["nominal_N"] = Results.Number(r.NominalResistance), ["design_N"] = Results.Number(r.DesignResistance), ["refusal"] = r.Refusal,
    });

    private static JsonObject Place(StressPlace place) => new() { ["corner"] = Name(place.Corner), ["x_mm"] = Results.Number(place.X), ["stress_MPa"] = Results.Number(place.Stress) };

    internal static string Name(Corner corner) => Word(corner.ToString());

    /// <summary>Words of a file: <c>ConnectedToeOuter</c> reads connected_toe_outer.</summary>
    internal static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
