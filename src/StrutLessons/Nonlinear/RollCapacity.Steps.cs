namespace StrutLessons.Nonlinear;

public sealed partial record RollCapacity : IWorked
{
    private const string Flexure = "linearised second-order rod, roll held at zero (Timoshenko and Gere, Theory of Elastic Stability, ch. 1, from memory)";
    private const string Coupled = "linearised second-order rod with roll about the shear centre (Timoshenko and Gere, Theory of Elastic Stability, ch. 5, from memory)";

    /// <summary>Both capacities, what roll does to them, and how far the section rolls.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        double plane = FlexureOnly.Load / 1e3, roll = WithRoll.Load / 1e3;
        return
        [
            new("Critical load, roll held", "N_{cr}", @"\det K(N) = 0", "", CriticalFlexural / 1e3, "kN", Flexure),
            new("Critical load with roll", "N_{cr,T}", @"\det K_T(N) = 0", "", Critical / 1e3, "kN", Coupled),
            new("Capacity of the plane model", "N_R", @"\max_{x,\,\text{corner}} |\sigma(N)| = f_y", "", plane, "kN", Flexure),
            new("Capacity with roll", "N_{R,T}", @"\max_{x,\,\text{corner}} |\sigma_T(N)| = f_y", "", roll, "kN", Coupled),
            new("What roll does", "N_{R,T}/N_R", @"\frac{N_{R,T}}{N_R}", $@"\frac{{{Tex.Number(roll)}}}{{{Tex.Number(plane)}}}", Ratio, "", "definition"),
            new("Roll at mid-length at first yield", @"\varphi_m", @"\varphi \cdot \frac{180}{\pi}", $@"{Tex.Bracketed(WithRoll.TwistMid)} \cdot \frac{{180}}{{\pi}}",
                WithRoll.TwistMid * 180 / Math.PI, "°", Coupled),
        ];
    }
}
