using System.Text.Json.Nodes;
using StrutLessons.Joints;
using StrutLessons.Plates;

namespace StrutLessons.Desk.Studies;

/// <summary>Reads a case with a joint alone and finds its stiffness by hand formula and by plates.</summary>
internal static class JointCaseSolver
{
    internal static JsonObject Solve(CaseNode at)
    {
        CaseNode node = at.Object("joint");
        string[] find = at.Words("find", "hand_formula", "plates", "plates_under_compression", "buckling");
        find = find.Length == 0 ? ["hand_formula"] : find;
        Gusset gusset = CaseEnds.GussetOf(node.Object("gusset"));
        GussetFormula formula = GussetOnRigidSupport.HandFormula(gusset, node.Number("patch_width_mm", 5, 2000), node.Number("patch_length_mm", 0, 2000));
        var (support, seat) = node.ObjectOrNone("support") is { } supportNode ? CaseEnds.SupportOf(supportNode) : (null, null);
        double compression = find.Contains("plates_under_compression") ? node.Number("compression_N", -1e9, 1e9) : node.Number("compression_N", -1e9, 1e9, 0);
        node.Done();
        at.Done();

        JointHinge hand = support is null ? formula.Hinge
            : seat is null ? GussetOnGirderFlange.HandFormula(formula, support).Hinge : GussetOnGirderWeb.HandFormula(formula, support, seat).Hinge;
        JointByPlates? plates = find.Any(f => f != "hand_formula") ? Plates(formula, support, seat) : null;
        var result = new JsonObject();
        foreach (var part in find.Distinct())
        {
            result[part] = part switch
            {
                "hand_formula" => Results.Joint(hand),
                "plates" => Plates(plates!),
                "buckling" => Buckling(PlateOnRigidSupport.Buckling(plates!.Plate)),
                _ => Flexibility(PlateOnRigidSupport.FlexibilityUnder(plates!.Plate, compression).Limit),
            };
        }
        return result;
    }

    private static JointByPlates Plates(GussetFormula formula, GirderSupport? support, WebSeat? seat) => support is null ? formula.PlateAnalysis()
        : seat is null ? GussetOnGirderFlange.HandFormula(formula, support).PlateAnalysis() : GussetOnGirderWeb.HandFormula(formula, support, seat).PlateAnalysis();

    private static JsonObject Plates(JointByPlates plates)
    {
        JsonObject result = Results.Joint(plates.Hinge);
        result["mesh_error"] = Results.Number(plates.MeshError);
        result["gusset_alone"] = Flexibility(plates.OnRigidSupport.Limit);
        result["flanges_held"] = plates.FlangesHeld is { } held ? Flexibility(held.Limit) : null;
        result["whole_girder"] = plates.WholeGirder is { } whole ? Flexibility(whole.Limit) : null;
        if (plates is { Support: { Stiffened: false } support, FlangesHeld: { } joint })
        {
            GirderShape girder = joint.Girder;
            var span = new GirderSpan(support.Length, support.Position);
            double foot = plates.Inputs.Gusset.FootLength;
            if (plates.Seat is { } seat)
            {
                result["web_foot_flanges_held"] = Web(WebFoot.HeldFlanges(girder, foot, seat.Height).Limit);
                result["web_foot_whole_girder"] = Web(WebFoot.FullGirder(girder, foot, seat.Height, span).Limit);
            }
            else
            {
                result["flange_foot_flanges_held"] = Flange(FlangeFoot.HeldFlanges(girder, foot));
                result["flange_foot_whole_girder"] = Flange(FlangeFoot.FullGirder(girder, foot, span));
            }
        }
        return result;
    }

    private static JsonObject Flexibility(BoltFlexibility f) => new()
    {
        ["deflection_per_force_mm_per_N"] = Results.Number(f.DeflectionPerForce), ["deflection_per_moment_per_N"] = Results.Number(f.DeflectionPerMoment),
        ["slope_per_moment_rad_per_Nmm"] = Results.Number(f.SlopePerMoment), ["deflection_per_twist_per_N"] = Results.Number(f.DeflectionPerTwist),
        ["slope_per_twist_rad_per_Nmm"] = Results.Number(f.SlopePerTwist), ["roll_per_twist_rad_per_Nmm"] = Results.Number(f.RollPerTwist),
        ["hinge_distance_mm"] = Results.Number(f.HingeDistance),
    };

    private static JsonObject Web(WebFlexibility f) => new()
    {
        ["deflection_per_force_mm_per_N"] = Results.Number(f.DeflectionPerForce), ["deflection_per_moment_per_N"] = Results.Number(f.DeflectionPerMoment),
        ["slope_per_moment_rad_per_Nmm"] = Results.Number(f.SlopePerMoment),
    };

    private static JsonObject Flange(FlangeFootResult f) => new()
    {
        ["rigid_foot_rad_per_Nmm"] = Results.Number(f.RigidFoot.Value), ["uniform_moment_rad_per_Nmm"] = Results.Number(f.UniformMoment.Value),
        ["chord_rotation_rad_per_Nmm"] = Results.Number(f.ChordRotation.Value),
    };

    private static JsonObject Buckling(GussetBuckling b) => new()
    {
        ["free_N"] = Results.Number(b.Free.Value), ["guided_N"] = Results.Number(b.Guided.Value), ["held_N"] = Results.Number(b.Held.Value),
    };
}
