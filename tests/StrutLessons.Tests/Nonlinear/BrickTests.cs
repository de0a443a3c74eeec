using System.Text.Json;
using StrutLessons.Nonlinear;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>
/// Runs of the reference cases with 20-node bricks and J2 plasticity: a model that shares nothing with the rod. The bricks' end plates also stop warping,
/// legs may deform, and torsional shear takes part in yielding: 2 % is what these differences leave open.
/// </summary>
public class BrickTests
{
    public static TheoryData<string> Ids => [.. NonlinearCase.All.Where(c => c.Data.TryGetProperty("brick_check", out _)).Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_rod_agrees_with_bricks(string id)
    {
        NonlinearCase c = NonlinearCase.Get(id);
        JsonElement brick = c.Data.GetProperty("brick_check")[0];
        double hardening = brick.GetProperty("hardening").GetDouble();
        ReferenceSteel steel = c.Strut.Steel;
        var strut = new ReferenceStrut(c.Strut.Section, new ReferenceSteel(steel.ElasticModulus, steel.ShearModulus, steel.YieldStrength, hardening),
            c.Strut.Length, c.Strut.Bow, c.Strut.ResidualPeak, c.Strut.End1, c.Strut.End2);
        double peak = ReferenceAnalysis.Follow(strut, RodMesh.Standard, PathSettings.PeakOnly).PeakLoad;
        Closeness.Relative(brick.GetProperty("N_u_beam_H21").GetDouble(), peak, 0.005, "independent rod with hardening");
        Closeness.Relative(brick.GetProperty("N_u_bricks").GetDouble(), peak, 0.02, "bricks");
    }
}
