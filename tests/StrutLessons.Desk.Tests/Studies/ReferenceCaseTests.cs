using System.Text.Json;
using StrutLessons.Tests;

namespace StrutLessons.Desk.Tests.Studies;

/// <summary>Every reference case sent through the verb <c>study</c> gives the numbers of the independent solvers, with the tolerances of the library's own tests.</summary>
public sealed class ReferenceCaseTests(ReferenceRun run) : IClassFixture<ReferenceRun>
{
    public static TheoryData<string> StrutIds => Ids(ReferenceFiles.Strut);

    public static TheoryData<string> JointIds => Ids(ReferenceFiles.Joints);

    public static TheoryData<string> PathIds => Ids(ReferenceFiles.Nonlinear);

    public static TheoryData<string> LadderIds => Ids(ReferenceFiles.Ladders);

    [Fact]
    public void Every_case_has_its_result_in_the_order_of_the_file()
    {
        Assert.Equal(0, run.Code);
        Assert.Equal(run.File["cases"]!.AsArray().Select(c => c!["id"]!.GetValue<string>()), run.Order);
        Assert.Equal(44 + 64 + 3 * 36 + 2 * 8, run.Order.Count);
    }

    [Theory]
    [MemberData(nameof(StrutIds))]
    public void Struts(string id)
    {
        var want = Reference(ReferenceFiles.Strut, id).GetProperty("output");
        void Check(string name, double tolerance, params object[] path) => Closeness.Relative(want.GetProperty(name).GetDouble(), run.At(id, path).GetDouble(), tolerance, $"{id} {name}");
        Check("N_cr", 1e-9, "capacity", "critical_load_N");
        Check("N_R", 1e-9, "capacity", "capacity_N");
        Check("N_pl", 1e-10, "capacity", "squash_load_N");
        Check("N_Ev", 1e-10, "capacity", "euler_load_v_N");
        Check("N_Eu", 1e-10, "capacity", "euler_load_u_N");
        Check("lambda_v_bar", 1e-10, "capacity", "slenderness");
        foreach (var (name, key) in new[] { ("A", "area_mm2"), ("c_y", "centroid_y_mm"), ("I_y", "I_y_mm4"), ("I_z", "I_z_mm4"), ("I_yz", "I_yz_mm4"), ("I_u", "I_u_mm4"), ("I_v", "I_v_mm4"), ("tan_alpha", "tan_alpha") })
        {
            Closeness.Relative(want.GetProperty("section").GetProperty(name).GetDouble(), run.At(id, "section", key).GetDouble(), 1e-10, $"{id} {name}");
        }
        var degenerate = want.TryGetProperty("degenerate", out var d) && d.ValueKind != JsonValueKind.False;
        if (!degenerate)
        {
            Assert.Equal(want.GetProperty("governing").GetString(), run.At(id, "capacity", "bows", 0, "reason").GetString());
        }
        var k = 0;
        foreach (var (name, response) in ReferenceFiles.Responses(Reference(ReferenceFiles.Strut, id)))
        {
            double At(params object[] path) => run.At(id, ["solutions", k, .. path]).GetDouble();
            Group(1e-3, ("d_u_mid", At("shape", 1, "deflection_u_v_mm", 0)), ("d_v_mid", At("shape", 1, "deflection_u_v_mm", 1)), ("d_y_mid", At("shape", 1, "deflection_mm", 0)), ("d_z_mid", At("shape", 1, "deflection_mm", 1)));
            Group(1e-6, ("th_y1", At("rotation_end_1_rad", 0)), ("th_z1", At("rotation_end_1_rad", 1)), ("th_y2", At("rotation_end_2_rad", 0)), ("th_z2", At("rotation_end_2_rad", 1)));
            Group(1e-6, ("th_y1", At("shape", 0, "slope_rad", 0)), ("th_z1", At("shape", 0, "slope_rad", 1)), ("th_y2", At("shape", 2, "slope_rad", 0)), ("th_z2", At("shape", 2, "slope_rad", 1)));
            // As in the library's own test, relative to the largest moment anywhere along the strut.
            Group(1, ("M_y_1", At("shape", 0, "moment_Nmm", 0)), ("M_z_1", At("shape", 0, "moment_Nmm", 1)), ("M_y_mid", At("shape", 1, "moment_Nmm", 0)), ("M_z_mid", At("shape", 1, "moment_Nmm", 1)), ("M_y_2", At("shape", 2, "moment_Nmm", 0)), ("M_z_2", At("shape", 2, "moment_Nmm", 1)));
            Group(0, ("s_max_comp", At("largest_compression_MPa")), ("s_max_tens", At("largest_tension_MPa")));
            k++;

            void Group(double floor, params (string Name, double Actual)[] values)
            {
                var largest = values.Max(v => Math.Abs(response.GetProperty(v.Name).GetDouble()));
                foreach (var (key, actual) in values)
                {
                    Closeness.Relative(response.GetProperty(key).GetDouble(), actual, 1e-9, $"{id} {name} {key}", Math.Max(largest, floor));
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(JointIds))]
    public void Joints(string id)
    {
        var reference = Reference(ReferenceFiles.Joints, id);
        var want = reference.GetProperty("result");
        double Want(string path) => path.Split('.').Aggregate(want, (e, name) => e.GetProperty(name)).GetDouble();
        void Check(string path, double tolerance, double? scale, params object[] at) => Closeness.Relative(Want(path), run.At(id, ["plates", .. at]).GetDouble(), tolerance, $"{id} {path}", scale);
        void Three(string group, string own)
        {
            Check(group + "f_ww", 0.02, null, own, "deflection_per_force_mm_per_N");
            Check(group + "f_thetatheta", 0.02, null, own, "slope_per_moment_rad_per_Nmm");
            Check(group + "f_wtheta", 0.02, Math.Sqrt(Want(group + "f_ww") * Want(group + "f_thetatheta")), own, "deflection_per_moment_per_N");
        }
        double free = run.File["cases"]!.AsArray().Single(c => c!["id"]!.GetValue<string>() == id)!["joint"]!["gusset"]!["free_length_mm"]!.GetValue<double>();
        switch (reference.GetProperty("family").GetString())
        {
            case "G":
                Three("", "gusset_alone");
                Check("f_omegaomega", 0.02, null, "gusset_alone", "roll_per_twist_rad_per_Nmm");
                Closeness.Relative(Want("c_phi_kNm_per_rad") * 1e6, run.At(id, "plates", "stiffness_Nmm_per_rad").GetDouble(), 0.02, id);
                Check("hinge_from_bolts_mm", 0.03, free, "hinge_distance_mm");
                foreach (var (load, key) in new[] { ("Ncr_free_kN", "free_N"), ("Ncr_guided_kN", "guided_N"), ("Ncr_wheld_kN", "held_N") })
                {
                    Closeness.Relative(Want(load) * 1e3, run.At(id, "buckling", key).GetDouble(), 0.03, $"{id} {load}");
                }
                Closeness.Relative(Want("f_thetatheta_at_N_test"), run.At(id, "plates_under_compression", "slope_per_moment_rad_per_Nmm").GetDouble(), 0.02, $"{id} under N");
                Closeness.Relative(Want("f_ww_at_N_test"), run.At(id, "plates_under_compression", "deflection_per_force_mm_per_N").GetDouble(), 0.02, $"{id} under N");
                break;
            case "F":
                Three("gusset_on_girder_flanges_held.", "flanges_held");
                Three("gusset_on_full_girder.", "whole_girder");
                Check("gusset_alone_f_thetatheta", 0.02, null, "gusset_alone", "slope_per_moment_rad_per_Nmm");
                Check("local_rigid_foot_f", 0.02, null, "flange_foot_flanges_held", "rigid_foot_rad_per_Nmm");
                Check("local_uniform_moment_f", 0.02, null, "flange_foot_flanges_held", "uniform_moment_rad_per_Nmm");
                Check("full_girder_rigid_foot_f", 0.02, null, "flange_foot_whole_girder", "rigid_foot_rad_per_Nmm");
                Check("full_girder_uniform_f", 0.02, null, "flange_foot_whole_girder", "uniform_moment_rad_per_Nmm");
                break;
            default:
                Three("gusset_on_web_flanges_held.", "flanges_held");
                Three("gusset_on_full_girder.", "whole_girder");
                Three("web_local_flanges_held.", "web_foot_flanges_held");
                Three("web_full_girder.", "web_foot_whole_girder");
                break;
        }
    }

    [Theory]
    [MemberData(nameof(PathIds))]
    public void Nonlinear_paths(string id)
    {
        var c = Reference(ReferenceFiles.Nonlinear, id);
        var want = c.GetProperty("result");
        JsonElement Peak(string variant) => run.At(variant + " " + id, "reference", 0);
        double Want(string name) => want.GetProperty(name).GetDouble();
        var peak = Peak("path");
        Closeness.Relative(Want("N_u"), peak.GetProperty("peak_load_N").GetDouble(), 0.005, id);
        Assert.True(peak.GetProperty("stable_to_peak").GetBoolean());
        Assert.Equal(peak.GetProperty("peak_load_N").GetDouble(), peak.GetProperty("lowest_peak_load_N").GetDouble());
        Vector("vC_mid", "wC_mid", peak.GetProperty("centroid_mid_mm"));
        Vector("vS_mid", "wS_mid", peak.GetProperty("shear_centre_mid_mm"));
        Closeness.Relative(-Want("twist_mid_rad"), peak.GetProperty("twist_mid_rad").GetDouble(), 0.03, id + " twist", Math.Max(Math.Abs(Want("twist_mid_rad")), 1e-3));
        Closeness.Relative(Want("shortening_P"), peak.GetProperty("shortening_mm").GetDouble(), 0.03, id + " shortening");
        var variants = c.GetProperty("variants_32el_24x3");
        Closeness.Relative(variants.GetProperty("N_u_no_twist").GetDouble(), Peak("no twist").GetProperty("peak_load_N").GetDouble(), 0.005, id + " without twist");
        Closeness.Relative(variants.GetProperty("N_u_twist_but_no_wagner").GetDouble(), Peak("no Wagner").GetProperty("peak_load_N").GetDouble(), 0.005, id + " without Wagner");

        void Vector(string y, string z, JsonElement own)
        {
            double dy = own[0].GetDouble() - Want(y), dz = own[1].GetDouble() + Want(z);
            Assert.True(Math.Sqrt(dy * dy + dz * dz) <= 0.03 * Math.Sqrt(Want(y) * Want(y) + Want(z) * Want(z)), $"{id} {y}");
        }
    }

    [Theory]
    [MemberData(nameof(LadderIds))]
    public void Twist_ladders(string id)
    {
        var c = Reference(ReferenceFiles.Ladders, id);
        double Want(string name) => c.GetProperty(name).GetDouble();
        string with = "ladder " + id, flat = "flat ladder " + id;
        Closeness.Relative(Want("N_first_yield_exact"), run.At(with, "elastic_rod", 0, "first_yield_N").GetDouble(), 1e-5, id);
        Closeness.Relative(Want("N_first_yield_exact_no_twist"), run.At(flat, "elastic_rod", 0, "first_yield_N").GetDouble(), 1e-5, id);
        Closeness.Relative(Want("N_first_yield_exact"), run.At(with, "roll", 0, "first_yield_N").GetDouble(), 0.005, id);
        Closeness.Relative(Want("N_first_yield_linearised"), run.At(with, "roll", 0, "first_yield_without_roll_N").GetDouble(), 5e-4, id);
        Closeness.Relative(Want("Ncr_flexural"), run.At(with, "roll", 0, "critical_load_without_roll_N").GetDouble(), 1e-7, id);
        for (var i = 0; i < c.GetProperty("points").GetArrayLength(); i++)
        {
            var point = c.GetProperty("points")[i];
            Compare(point.GetProperty("exact"), run.At(with, "elastic_rod", 0, "states", i), 0.005);
            Compare(point.GetProperty("exact_no_twist"), run.At(flat, "elastic_rod", 0, "states", i), 0.005);
            Compare(point.GetProperty("linearised"), run.At(with, "roll", 0, "states_without_roll", i), 5e-4);
        }
    }

    private static void Compare(JsonElement want, JsonElement own, double tolerance)
    {
        double Get(string name) => want.GetProperty(name).GetDouble();
        double dy = own.GetProperty("centroid_mid_mm")[0].GetDouble() - Get("vC"), dz = own.GetProperty("centroid_mid_mm")[1].GetDouble() + Get("wC");
        Assert.True(Math.Sqrt(dy * dy + dz * dz) <= tolerance * Math.Sqrt(Get("vC") * Get("vC") + Get("wC") * Get("wC")));
        var twist = want.TryGetProperty("twist", out var t) ? -t.GetDouble() : 0;
        Closeness.Relative(twist, own.GetProperty("twist_mid_rad").GetDouble(), tolerance, "twist", Math.Max(Math.Abs(twist), 1e-5));
        var scale = Math.Max(-Get("smin"), Math.Abs(Get("smax")));
        Closeness.Relative(-Get("smin"), own.GetProperty("largest_compression_MPa").GetDouble(), tolerance, "compression", scale);
        Closeness.Relative(Get("smax"), own.GetProperty("largest_tension_MPa").GetDouble(), tolerance, "tension", scale);
    }

    private static TheoryData<string> Ids(JsonElement file) => [.. ReferenceFiles.Cases(file).Select(ReferenceFiles.Id)];

    private static JsonElement Reference(JsonElement file, string id) => ReferenceFiles.Cases(file).Single(c => ReferenceFiles.Id(c) == id);
}
