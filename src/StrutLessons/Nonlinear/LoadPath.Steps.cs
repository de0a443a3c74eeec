namespace StrutLessons.Nonlinear;

public sealed partial record LoadPath : IWorked
{
    private const string Followed = "path of equilibrium by arc length; fibres, exact rotations";

    /// <summary>From the squash load to the peak and the state of the strut there. Without a peak the strut's own numbers alone.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        ReferenceSection section = Strut.Section;
        double yield = Strut.Steel.YieldStrength, squash = Strut.SquashLoad;
        double euler = Math.PI * Math.PI * Strut.Steel.ElasticModulus * section.Iv / (Strut.Length * Strut.Length);
        List<WorkedStep> steps =
        [
            new("Length of the bar", "L", "", "", Strut.Length, "mm", "given"),
            new("Stress-free bow", "e_0", "", "", Strut.Bow.Length, "mm", "given"),
            new("Peak of the residual stress", @"\sigma_r", "", "", Strut.ResidualPeak, "MPa", "given"),
            new("Euler load of the hinged bar about v–v", "N_{Ev}", @"\frac{\pi^2 E I_v}{L^2}",
                $@"\frac{{\pi^2 \cdot {Tex.Number(Strut.Steel.ElasticModulus)} \cdot {Tex.Number(section.Iv)}}}{{{Tex.Number(Strut.Length)}^2}} / 1000",
                euler / 1e3, "kN", "Euler, 1744 (any textbook)"),
        ];
        if (double.IsFinite(yield))
        {
            steps.Add(new("Squash load", "N_{pl}", "A f_y", $@"{Tex.Number(section.Area)} \cdot {Tex.Number(yield)} / 1000", squash / 1e3, "kN", "definition"));
            steps.Add(new("Relative slenderness of the bar", @"\bar\lambda_v", @"\sqrt{\frac{N_{pl}}{N_{Ev}}}",
                $@"\sqrt{{\frac{{{Tex.Number(squash / 1e3)}}}{{{Tex.Number(euler / 1e3)}}}}}", Math.Sqrt(squash / euler), "", "EN 1993-1-1:2005, 6.3.1.2"));
        }

        if (Peak is not { } peak)
        {
            return steps;
        }

        steps.Add(new($"Peak load after {PeakIndex} steps{(StableToPeak ? "" : "; a branch leaves the path before it")}", "N_u",
            @"\max N", "", peak.Load / 1e3, "kN", Followed));
        if (!StableToPeak)
        {
            steps.Add(new("Peak load with a small disturbance in the shape of the branch", "N_{u,b}", @"\max N", "", LowestPeakLoad / 1e3, "kN", Followed));
        }
        if (double.IsFinite(yield))
        {
            steps.Add(new("Reduction factor", @"\chi_u", @"\frac{N_u}{N_{pl}}", $@"\frac{{{Tex.Number(peak.Load / 1e3)}}}{{{Tex.Number(squash / 1e3)}}}",
                peak.Load / squash, "", "definition"));
        }

        steps.Add(new("Displacement of the centroid at mid-length", "d_m", @"\sqrt{v_C^2 + w_C^2}",
            $@"\sqrt{{({Tex.Number(peak.CentroidMid.Y)})^2 + ({Tex.Number(peak.CentroidMid.Z)})^2}}", peak.CentroidMid.Length, "mm", Followed));
        steps.Add(new("Roll at mid-length", @"\varphi_m", @"\varphi \cdot \frac{180}{\pi}", $@"{Tex.Bracketed(peak.TwistMid)} \cdot \frac{{180}}{{\pi}}",
            peak.TwistMid * 180 / Math.PI, "°", Followed));
        steps.Add(new("Shortening between the load points", "s", "", "", peak.Shortening, "mm", Followed));
        steps.Add(new("Share of the strut that has yielded", @"V_y/V", "", "", 100 * peak.YieldedFraction, "%", Followed));
        return steps;
    }
}
