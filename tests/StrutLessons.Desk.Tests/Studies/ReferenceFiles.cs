using System.Text.Json;
using System.Text.Json.Nodes;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>Turns the reference cases (independent solvers, tests/StrutLessons.Tests/Cases) into case files of ours. The twisting ones have z away from the gusset.</summary>
internal static class ReferenceFiles
{
    internal static JsonElement Strut { get; } = Load("strut.json");

    internal static JsonElement Joints { get; } = Load("joints.json");

    internal static JsonElement Nonlinear { get; } = Load("nonlinear.json");

    internal static JsonElement Ladders { get; } = Load("twist_ladders.json");

    internal static IEnumerable<JsonElement> Cases(JsonElement file) => file.GetProperty("cases").EnumerateArray();

    internal static string Id(JsonElement reference) => reference.GetProperty("id").GetString()!;

    internal static JsonObject File(IEnumerable<JsonObject> cases) => new() { ["format"] = "strut-lessons cases 1", ["cases"] = new JsonArray([.. cases]) };

    /// <summary>Loads at which the reference case gives the shape: half the capacity and the Euler load, where they are below the critical load.</summary>
    internal static IEnumerable<(string Name, JsonElement Response)> Responses(JsonElement reference)
    {
        foreach (var name in new[] { "response_half", "response_N_Ev" })
        {
            if (reference.GetProperty("output").TryGetProperty(name, out var response) && response.ValueKind == JsonValueKind.Object)
            {
                yield return (name, response);
            }
        }
    }

    internal static JsonObject OfStrut(JsonElement reference)
    {
        var input = reference.GetProperty("input");
        double Get(string name) => input.GetProperty(name).GetDouble();
        var section = input.GetProperty("section");
        JsonObject End(int i) => new()
        {
            ["load_point_mm"] = new JsonArray(Get("y_e" + i), Get("z_e" + i)),
            ["spring_in_plane_Nmm_per_rad"] = Spring(input.GetProperty("k_in" + i)),
            ["spring_out_of_plane_Nmm_per_rad"] = Spring(input.GetProperty("k_out" + i)),
        };
        var direction = input.GetProperty("bow_dir");
        JsonNode turn = direction.ValueKind == JsonValueKind.Number ? direction.GetDouble() : direction.GetString() switch { "y" => 0, "z" => 90, var axis => axis! };
        var loads = Responses(reference).Select(r => (JsonNode)r.Response.GetProperty("N").GetDouble()).ToArray();
        return new()
        {
            ["id"] = Id(reference),
            ["section"] = new JsonObject
            {
                ["connected_leg_mm"] = section.GetProperty("b_c").GetDouble(), ["outstanding_leg_mm"] = section.GetProperty("b_o").GetDouble(),
                ["thickness_mm"] = section.GetProperty("t").GetDouble(), ["root_radius_mm"] = section.GetProperty("r1").GetDouble(), ["toe_radius_mm"] = section.GetProperty("r2").GetDouble(),
            },
            ["steel"] = new JsonObject { ["yield_strength_MPa"] = Get("f_y"), ["elastic_modulus_MPa"] = Get("E") },
            ["length_mm"] = Get("L"), ["end_1"] = End(1), ["end_2"] = End(2),
            ["bows"] = new JsonArray(new JsonObject { ["amplitude_mm"] = Get("e0") * Get("bow_sign"), ["direction"] = turn }),
            ["find"] = loads.Length > 0 ? new JsonArray("section", "capacity", "solutions") : new JsonArray("section", "capacity"),
            ["loads_N"] = new JsonArray(loads), ["places_mm"] = new JsonArray(0, Get("L") / 2, Get("L")),
        };
    }

    internal static JsonObject OfJoint(JsonElement reference)
    {
        var family = reference.GetProperty("family").GetString();
        var input = reference.GetProperty("input");
        var gusset = family == "G" ? input : input.GetProperty("gusset");
        double Plate(string name) => gusset.GetProperty(name).GetDouble();
        double Get(string name) => input.GetProperty(name).GetDouble();
        var joint = new JsonObject
        {
            ["gusset"] = new JsonObject
            {
                ["thickness_mm"] = Plate("t"), ["width_left_mm"] = Plate("b_left"), ["width_right_mm"] = Plate("b_right"), ["free_length_mm"] = Plate("g"),
                ["end_distance_mm"] = Plate("e_end"), ["taper"] = Plate("taper"), ["inclination_degrees"] = Plate("alpha_deg"),
            },
            ["patch_width_mm"] = Plate("patch_width"), ["patch_length_mm"] = Plate("L_group"),
        };
        if (family == "G")
        {
            joint["compression_N"] = reference.GetProperty("result").GetProperty("N_test_kN").GetDouble() * 1e3;
            return new() { ["id"] = Id(reference), ["joint"] = joint, ["find"] = new JsonArray("hand_formula", "plates", "plates_under_compression", "buckling") };
        }
        var support = new JsonObject
        {
            ["girder"] = new JsonObject { ["height_mm"] = Get("h"), ["width_mm"] = Get("b"), ["web_mm"] = Get("tw"), ["flange_mm"] = Get("tf") },
            ["span_mm"] = Get("L_girder"), ["position_mm"] = Get("a"), ["on"] = family == "F" ? "flange" : "web",
        };
        if (family == "W")
        {
            support["height_mm"] = Get("y0_from_bottom_flange_midplane");
        }
        joint["support"] = support;
        return new() { ["id"] = Id(reference), ["joint"] = joint, ["find"] = new JsonArray("hand_formula", "plates") };
    }

    internal static JsonObject OfPath(JsonElement reference, string id, bool twist, bool wagner)
    {
        double Get(string name) => reference.GetProperty(name).GetDouble();
        var direction = reference.GetProperty("bow_dir");
        var amplitude = Get("bow_amplitude");
        JsonObject End(int i) => TwistingEnd(Get("ecc_y"), -Get("ecc_z"), reference.GetProperty("k_in")[i], reference.GetProperty("k_out")[i]);
        return new()
        {
            ["id"] = id,
            ["section"] = Sharp(Get("b_connected"), Get("b_outstanding"), Get("t")),
            ["steel"] = new JsonObject { ["yield_strength_MPa"] = Get("fy"), ["elastic_modulus_MPa"] = Get("E"), ["shear_modulus_MPa"] = Get("G"), ["hardening_modulus_MPa"] = Get("hardening") },
            ["length_mm"] = Get("L"), ["end_1"] = End(0), ["end_2"] = End(1),
            ["bows"] = new JsonArray(new JsonObject { ["vector_mm"] = new JsonArray(amplitude * direction[0].GetDouble(), -amplitude * direction[1].GetDouble()) }),
            ["find"] = new JsonArray("reference"),
            ["reference"] = new JsonObject { ["mesh"] = "standard", ["residual_stress_MPa"] = Get("residual_peak"), ["twist"] = twist, ["wagner"] = wagner },
        };
    }

    internal static JsonObject OfLadder(JsonElement reference, string id, bool twist)
    {
        double Get(string name) => reference.GetProperty(name).GetDouble();
        var direction = reference.GetProperty("bowdir");
        double y = direction[0].GetDouble(), z = -direction[1].GetDouble(), scale = Get("bow") / Math.Sqrt(y * y + z * z);
        var point = reference.GetProperty("ecc");
        return new()
        {
            ["id"] = id,
            ["section"] = Sharp(Get("b1"), Get("b2"), Get("t")),
            ["steel"] = new JsonObject { ["yield_strength_MPa"] = Get("fy_for_first_yield"), ["shear_modulus_MPa"] = 80769 },
            ["length_mm"] = Get("L"), ["ends"] = TwistingEnd(point[0].GetDouble(), -point[1].GetDouble(), reference.GetProperty("kin"), reference.GetProperty("kout")),
            ["bows"] = new JsonArray(new JsonObject { ["vector_mm"] = new JsonArray(scale * y, scale * z) }),
            ["find"] = twist ? new JsonArray("elastic_rod", "roll") : new JsonArray("elastic_rod"),
            ["loads_N"] = new JsonArray([.. reference.GetProperty("points").EnumerateArray().Select(p => (JsonNode)p.GetProperty("N").GetDouble())]),
            ["reference"] = new JsonObject { ["twist"] = twist, ["residual_stress_MPa"] = 0 },
        };
    }

    private static JsonObject Sharp(double connected, double outstanding, double t) => new()
    {
        ["connected_leg_mm"] = connected, ["outstanding_leg_mm"] = outstanding, ["thickness_mm"] = t,
        // Thin rectangles along the mid-lines: the reference solvers' own torsion constant.
        ["torsion_constant_mm4"] = (connected + outstanding - t) * t * t * t / 3,
    };

    private static JsonObject TwistingEnd(double y, double z, JsonElement inPlane, JsonElement outOfPlane) => new()
    {
        ["load_point_mm"] = new JsonArray(y, z), ["spring_in_plane_Nmm_per_rad"] = Spring(inPlane), ["spring_out_of_plane_Nmm_per_rad"] = Spring(outOfPlane),
    };

    private static JsonNode Spring(JsonElement value) => value.ValueKind == JsonValueKind.String ? "rigid" : value.GetDouble();

    private static JsonElement Load(string name)
    {
        using var file = JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", name)));
        return file.RootElement.Clone();
    }
}
