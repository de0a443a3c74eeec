using System.Text.Json.Nodes;
using StrutLessons.Joints;

namespace StrutLessons.Desk.Studies;

/// <summary>Small pieces of a result. A number that does not exist is null; an infinite stiffness reads "rigid".</summary>
internal static class Results
{
    internal static JsonNode? Number(double value) => double.IsFinite(value) ? JsonValue.Create(value) : double.IsPositiveInfinity(value) ? JsonValue.Create("rigid") : null;

    internal static JsonNode? Number(double? value) => value is { } number ? Number(number) : null;

    internal static JsonArray Pair(Planar vector) => [Number(vector.Y), Number(vector.Z)];

    internal static JsonArray List<T>(IEnumerable<T> items, Func<T, JsonNode?> form) => [.. items.Select(form)];

    internal static JsonObject Joint(JointHinge joint) => new()
    {
        ["stiffness_Nmm_per_rad"] = Number(joint.OutOfPlaneStiffness),
        ["hinge_distance_mm"] = Number(joint.HingeDistance),
        ["in_plane_stiffness_Nmm_per_rad"] = Number(joint.InPlaneStiffness),
        ["imposed_rotation_rad_per_N"] = Number(joint.ImposedRotationPerNewton),
        ["compliance_rad_per_Nmm"] = Number(joint.Compliance),
        ["elastic_centre_mm"] = Number(joint.ElasticCentre),
        ["parts"] = List(joint.Contributions, p => new JsonObject { ["name"] = p.Name, ["compliance_rad_per_Nmm"] = Number(p.Compliance), ["hinge_distance_mm"] = Number(p.HingeDistance) }),
        ["notes"] = List(joint.Notes, n => JsonValue.Create(n)),
    };
}
