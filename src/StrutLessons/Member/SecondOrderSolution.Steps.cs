namespace StrutLessons.Member;

public sealed partial record SecondOrderSolution : IWorked
{
    private const string Theory = "second-order theory of the elastic column (Timoshenko and Gere, Theory of Elastic Stability, ch. 1 and 2, from memory)";

    /// <summary>From the load to the rotations, the displacement and the moments at mid-length.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        double length = numbers.Length, middle = length / 2;
        Planar shift = Deflection(middle), bow = BowAt(middle), total = shift + bow;
        (double alongU, double alongV) = PrincipalMoment(middle);
        string n = Tex.Number(Load / 1e3);
        return
        [
            new("Load", "N", "", "", Load / 1e3, "kN", "given"),
            new("Critical load with the springs", "N_{cr}", @"\det K(N) = 0", "", CriticalLoad / 1e3, "kN", Theory),
            new("Euler load about v–v, hinged", "N_{Ev}", @"\frac{\pi^2 E I_v}{L^2}",
                $@"\frac{{\pi^2 \cdot {Tex.Number(numbers.StiffnessU / 1e9)}}}{{{Tex.Number(length / 1e3)}^2}}", numbers.EulerU / 1e3, "kN", Theory),
            new("How close the load is to the critical one", @"N/N_{cr}", @"\frac{N}{N_{cr}}",
                $@"\frac{{{n}}}{{{Tex.Number(CriticalLoad / 1e3)}}}", Load / CriticalLoad, "", "definition"),
            new("Wave number of the shape about v–v", "q_v L", @"L\sqrt{\frac{N}{E I_v}}",
                $@"{Tex.Number(length / 1e3)}\sqrt{{\frac{{{n}}}{{{Tex.Number(numbers.StiffnessU / 1e9)}}}}}",
                length * Math.Sqrt(Load / numbers.StiffnessU), "rad", Theory),
            Slope("1", "in the plane of the gusset", "v'_1", RotationEnd1.Y),
            Slope("1", "out of the plane of the gusset", "w'_1", RotationEnd1.Z),
            Slope("2", "in the plane of the gusset", "v'_2", RotationEnd2.Y),
            Slope("2", "out of the plane of the gusset", "w'_2", RotationEnd2.Z),
            new("Displacement at mid-length along u, bow included", "u_m", @"d_u(\tfrac{L}{2}) + d_{0u}(\tfrac{L}{2})",
                $"{Tex.Number(Strut.Section.AlongU(shift))} + {Tex.Bracketed(Strut.Section.AlongU(bow))}", Strut.Section.AlongU(total), "mm", Theory),
            new("Displacement at mid-length along v, bow included", "v_m", @"d_v(\tfrac{L}{2}) + d_{0v}(\tfrac{L}{2})",
                $"{Tex.Number(Strut.Section.AlongV(shift))} + {Tex.Bracketed(Strut.Section.AlongV(bow))}", Strut.Section.AlongV(total), "mm", Theory),
            new("Moment at mid-length about v–v", "M_{u,m}", @"E I_v\, d_u''(\tfrac{L}{2})", "", alongU / 1e6, "kNm", Theory),
            new("Moment at mid-length about u–u", "M_{v,m}", @"E I_u\, d_v''(\tfrac{L}{2})", "", alongV / 1e6, "kNm", Theory),
        ];

        static WorkedStep Slope(string end, string plane, string symbol, double value) =>
            new($"Rotation of end {end} {plane}", symbol, @"K\theta = f", "", value * 1e3, "mrad", Theory);
    }
}
