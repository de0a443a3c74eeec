namespace StrutLessons.Tests.House;

/// <summary>The wrong inputs, one file per layer.</summary>
internal static partial class BadInputTable
{
    internal static IEnumerable<BadInput> All =>
        [.. Materials, .. Sections, .. Eccentricity, .. Joints, .. Torsion, .. GirderJoints, .. Plates, .. Member, .. Standards, .. JointsByPlates, .. Segments, .. Calibration, .. Studies];
}
