using StrutLessons.Plates;

namespace StrutLessons.Joints;

public sealed partial record JointByPlates : IWorked
{
    private const string Richardson = "extrapolation to the limit of two meshes (Richardson, Phil. Trans. R. Soc. A 226, 1927)";

    /// <summary>The analyses with their two meshes, then the joint in series; compliance in mrad/kNm.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        List<WorkedStep> steps = [.. Limit("Gusset on a rigid support, rotation per moment", "f_G", OnRigidSupport.SlopePerMoment)];
        if (FlangesHeld is not null)
        {
            steps.AddRange(Limit("Gusset on the girder, flanges held in their lines", "f_{held}", FlangesHeld.SlopePerMoment));
        }

        if (WholeGirder is not null)
        {
            steps.AddRange(Limit("Gusset on the whole girder between forks", "f_{whole}", WholeGirder.SlopePerMoment));
        }

        steps.AddRange(Hinge.WorkedSteps());
        return steps;
    }

    private static IEnumerable<WorkedStep> Limit(string what, string symbol, MeshEstimate mesh)
    {
        double coarse = mesh.Coarse * 1e9, fine = mesh.Fine * 1e9;
        yield return new($"{what}, limit of two meshes", symbol, @"f_{fine} + \frac{f_{fine} - f_{coarse}}{2^p - 1}",
            $@"{Tex.Number(fine)} + \frac{{{Tex.Number(fine)} - {Tex.Number(coarse)}}}{{2^{{{Tex.Number(MeshEstimate.SmoothOrder)}}} - 1}}", mesh.Value * 1e9, "mrad/kNm", Richardson);
    }
}
