namespace StrutLessons.Torsion;

/// <summary>
/// A torque T at the distance a from end 1 of a bar with warping, solved in closed form. Immutable; every function of x is exact.
/// </summary>
/// <remarks>
/// Between forks, with a′ = L − a and x ≤ a: φ = T/(G I_t) [x a′/L − sinh κx sinh κa′/(κ sinh κL)]; beyond a the same seen from the
/// other end (Vlasov, Thin-Walled Elastic Beams; from memory, re-derived). An end that cannot warp adds the end value of φ″ that
/// makes φ′ = 0 there; the shape of a unit end value is ψ = [sinh κ(L − x)/sinh κL − (1 − x/L)]/κ².
/// </remarks>
public sealed partial record PointTorque
{
    internal PointTorque(TorsionBar bar, double torque, double position)
    {
        Bar = bar;
        Torque = Guard.Finite(torque, "torque T", "N mm", "Give the torque in N mm (1 kNm = 1 000 000 N mm).");
        Position = position > 0 && position < bar.Length
            ? position
            : throw Guard.Fail(position, "torque position a", "mm",
                $"inside the girder, greater than 0 and less than L = {Guard.Text(bar.Length)} mm",
                "Measure from end 1; at the ends twist is prevented.");
        (EndCurvature1, EndCurvature2) = EndCurvatures();
    }

    /// <summary>The bar.</summary>
    public TorsionBar Bar { get; }

    /// <summary>T, N mm.</summary>
    public double Torque { get; }

    /// <summary>a from end 1, mm.</summary>
    public double Position { get; }

    /// <summary>φ″ at end 1, 1/mm²; 0 at a fork.</summary>
    public double EndCurvature1 { get; }

    /// <summary>φ″ at end 2, 1/mm²; 0 at a fork.</summary>
    public double EndCurvature2 { get; }

    /// <summary>Twist φ where the torque acts, rad.</summary>
    public double TwistAtTorque => Twist(Position);

    /// <summary>Twist per torque at the same point, rad/(N mm); does not depend on T.</summary>
    public double Compliance => Torque == 0 ? Bar.Under(1, Position).TwistAtTorque : TwistAtTorque / Torque;

    /// <summary>Torque that end 1 takes, N mm.</summary>
    public double SupportTorque1 => (Torque * (Bar.Length - Position) + Bar.Warping * (EndCurvature1 - EndCurvature2)) / Bar.Length;

    /// <summary>Torque that end 2 takes, N mm.</summary>
    public double SupportTorque2 => Torque - SupportTorque1;

    private double Rate => Torque / Bar.StVenant;

    /// <summary>Twist φ(x), rad.</summary>
    /// <exception cref="InputException">x outside the bar.</exception>
    public double Twist(double x)
    {
        double l = Inside(x), k = Bar.Decay, kl = k * l;
        (double near, double far, _) = Sides(x);
        double fork = Rate * (near * far / l - Hyperbolic.SinhSinh(k * near, k * far, kl) / k);
        return fork
            + EndCurvature1 / (k * k) * (Hyperbolic.SinhRatio(k * (l - x), kl) - (l - x) / l)
            + EndCurvature2 / (k * k) * (Hyperbolic.SinhRatio(k * x, kl) - x / l);
    }

    /// <summary>Twist per length φ′(x), rad/mm.</summary>
    /// <exception cref="InputException">x outside the bar.</exception>
    public double TwistRate(double x)
    {
        double l = Inside(x), k = Bar.Decay, kl = k * l;
        (double near, double far, int sign) = Sides(x);
        double fork = sign * Rate * (far / l - Hyperbolic.CoshSinh(k * near, k * far, kl));
        return fork
            + EndCurvature1 / (k * k) * (1 / l - k * Hyperbolic.CoshRatio(k * (l - x), kl))
            - EndCurvature2 / (k * k) * (1 / l - k * Hyperbolic.CoshRatio(k * x, kl));
    }

    /// <summary>φ″(x), rad/mm²: E I_w φ″ is the bimoment with its sign turned.</summary>
    /// <exception cref="InputException">x outside the bar.</exception>
    public double TwistCurvature(double x)
    {
        double l = Inside(x), k = Bar.Decay, kl = k * l;
        (double near, double far, _) = Sides(x);
        return -Rate * k * Hyperbolic.SinhSinh(k * near, k * far, kl)
            + EndCurvature1 * Hyperbolic.SinhRatio(k * (l - x), kl)
            + EndCurvature2 * Hyperbolic.SinhRatio(k * x, kl);
    }

    /// <summary>Part of the torque carried by St Venant shear, G I_t φ′, N mm; at x = a the value to the left.</summary>
    /// <exception cref="InputException">x outside the bar.</exception>
    public double StVenantTorque(double x) => Bar.StVenant * TwistRate(x);

    /// <summary>Part of the torque carried by the flanges as a couple of shears, −E I_w φ‴, N mm; at x = a the value to the left.</summary>
    /// <exception cref="InputException">x outside the bar.</exception>
    public double WarpingTorque(double x) => (x <= Position ? SupportTorque1 : -SupportTorque2) - StVenantTorque(x);

    private (double, double) EndCurvatures()
    {
        bool fix1 = Bar.End1 == WarpingEnd.WarpingFixed, fix2 = Bar.End2 == WarpingEnd.WarpingFixed;
        double l = Bar.Length, k = Bar.Decay, kl = k * l, a = Position, b = l - a;
        // Slopes of the fork solution and of the unit shape ψ at its own and at the other end.
        double slope1 = Rate * (b / l - Hyperbolic.SinhRatio(k * b, kl));
        double slope2 = -Rate * (a / l - Hyperbolic.SinhRatio(k * a, kl));
        double own = (1 / l - k * Hyperbolic.CoshRatio(kl, kl)) / (k * k);
        double other = (1 / l - k * Hyperbolic.InverseSinh(kl)) / (k * k);
        double determinant = other * other - own * own;
        return (fix1, fix2) switch
        {
            (true, true) => ((slope1 * own - other * slope2) / determinant, (other * slope1 - own * slope2) / determinant),
            (true, false) => (-slope1 / own, 0),
            (false, true) => (0, slope2 / own),
            _ => (0, 0),
        };
    }

    /// <summary>Distances of x from the end on its side of the torque, and of the torque from the other end; sign of d/dx.</summary>
    private (double Near, double Far, int Sign) Sides(double x) =>
        x <= Position ? (x, Bar.Length - Position, 1) : (Bar.Length - x, Position, -1);

    private double Inside(double x)
    {
        Guard.Within(x, 0, Bar.Length, "position x", "mm", "Measure from end 1.");
        return Bar.Length;
    }
}
