namespace StrutLessons.Torsion;

public sealed partial record PointTorque : IWorked
{
    private const string Vlasov = "Vlasov, Thin-Walled Elastic Beams (from memory, re-derived)";

    /// <summary>Twist if only St Venant shear carried the torque, T a a′/(L G I_t), rad.</summary>
    public double StVenantOnly => Rate * Position * (Bar.Length - Position) / Bar.Length;

    /// <summary>
    /// Twist if only warping carried the torque, rad: the deflection of a beam of stiffness E I_w under a point load,
    /// its ends hinged (fork) or clamped (warping fixed).
    /// </summary>
    public double WarpingOnly
    {
        get
        {
            double l = Bar.Length, a = Position, b = l - a, ei = Bar.Warping;
            return Torque * ((Bar.End1, Bar.End2) switch
            {
                (WarpingEnd.Fork, WarpingEnd.Fork) => a * a * b * b / (3 * ei * l),
                (WarpingEnd.WarpingFixed, WarpingEnd.WarpingFixed) => Math.Pow(a * b / l, 3) / (3 * ei),
                (WarpingEnd.WarpingFixed, _) => a * a * a * b * b * (3 * l + b) / (12 * ei * l * l * l),
                _ => b * b * b * a * a * (3 * l + a) / (12 * ei * l * l * l),
            });
        }
    }

    /// <summary>The twist where the torque acts, with its two limits; torque in kNm, twist in mrad.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        TorsionBar bar = Bar;
        double k = bar.Decay, kl = k * bar.Length, a = Position, b = bar.Length - Position;
        var steps = new List<WorkedStep>
        {
            new("St Venant stiffness", "G I_t", "", "", bar.StVenant * 1e-9, "kNm²", "section"),
            new("Warping stiffness", "E I_w", "", "", bar.Warping * 1e-15, "kNm⁴", "section"),
            new("Decay of warping", @"\kappa", @"\sqrt{\frac{G I_t}{E I_w}}",
                $@"\sqrt{{\frac{{{Tex.Number(bar.StVenant * 1e-9)}}}{{{Tex.Number(bar.Warping * 1e-15)}}}}}", k * 1e3, "1/m", Vlasov),
            new("Length over which warping dies out, times how often it fits", @"\kappa L", @"\kappa L",
                $@"{Tex.Number(k * 1e3)} \cdot {Tex.Number(bar.Length * 1e-3)}", kl, "", Vlasov),
            new("Torque at a, taken by the nearer end the more", "T_1", "", "", SupportTorque1 * 1e-6, "kNm", "equilibrium and compatibility"),
        };
        string forks = @"\frac{T}{G I_t} \left[ \frac{a a'}{L} - \frac{\sinh\kappa a \, \sinh\kappa a'}{\kappa \sinh\kappa L} \right]";
        bool simple = bar.End1 == WarpingEnd.Fork && bar.End2 == WarpingEnd.Fork;
        if (simple)
        {
            steps.Add(new("Twist where the torque acts", @"\varphi(a)", forks,
                $@"\frac{{{Tex.Number(Torque * 1e-6)}}}{{{Tex.Number(bar.StVenant * 1e-9)}}} \left[ {Tex.Number(a * b / bar.Length * 1e-3)} - {Tex.Number(Hyperbolic.SinhSinh(k * a, k * b, kl) / k * 1e-3)} \right] \cdot 10^3",
                TwistAtTorque * 1e3, "mrad", Vlasov));
        }
        else
        {
            steps.Add(new("End value that stops warping at end 1", @"\varphi''_1", "", "", EndCurvature1 * 1e6, "1/m²", "φ′ = 0 at the end"));
            steps.Add(new("End value that stops warping at end 2", @"\varphi''_2", "", "", EndCurvature2 * 1e6, "1/m²", "φ′ = 0 at the end"));
            steps.Add(new("Twist where the torque acts", @"\varphi(a)", forks + @" + \varphi''_1 \psi(a) + \varphi''_2 \psi(a')", "", TwistAtTorque * 1e3, "mrad", Vlasov));
        }

        steps.Add(new("Limit: St Venant shear alone", @"\varphi_{SV}", @"\frac{T a a'}{L\, G I_t}",
            $@"\frac{{{Tex.Number(Torque * 1e-6)} \cdot {Tex.Number(a * 1e-3)} \cdot {Tex.Number(b * 1e-3)}}}{{{Tex.Number(bar.Length * 1e-3)} \cdot {Tex.Number(bar.StVenant * 1e-9)}}} \cdot 10^3", StVenantOnly * 1e3, "mrad", "any mechanics book"));
        steps.Add(new("Limit: warping alone, a beam of stiffness E I_w", @"\varphi_{w}", simple ? @"\frac{T a^2 a'^2}{3 E I_w L}" : "",
            simple ? $@"\frac{{{Tex.Number(Torque * 1e-6)} \cdot {Tex.Number(a * 1e-3)}^2 \cdot {Tex.Number(b * 1e-3)}^2}}{{3 \cdot {Tex.Number(bar.Warping * 1e-15)} \cdot {Tex.Number(bar.Length * 1e-3)}}} \cdot 10^3" : "", WarpingOnly * 1e3, "mrad", "beam deflection under a point load, any mechanics book"));
        return steps;
    }
}
