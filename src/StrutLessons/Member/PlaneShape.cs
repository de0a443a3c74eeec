namespace StrutLessons.Member;

/// <summary>
/// Additional displacement and slope in one principal plane at one load: chord, rotation of the ends against it, and the
/// clamped, bowed bar. Written with sinc functions, so that neither N → 0 nor the Euler load costs a digit.
/// </summary>
internal readonly struct PlaneShape
{
    private readonly AxisFunctions<Lane1> axis;
    private readonly BowFunctions<Lane1> bowed;
    private readonly PlaneRotations<Lane1> ends;
    private readonly double length, bow, start;

    /// <param name="axis">Functions of the load.</param>
    /// <param name="bowed">What the bow adds to them.</param>
    /// <param name="ends">End rotations against the chord.</param>
    /// <param name="length">Length of the bar, mm.</param>
    /// <param name="bow">Amplitude of the bow in this plane, mm.</param>
    /// <param name="start">Displacement at x = 0 (end of the rigid arm), mm.</param>
    internal PlaneShape(in AxisFunctions<Lane1> axis, in BowFunctions<Lane1> bowed, in PlaneRotations<Lane1> ends, double length, double bow, double start)
    {
        this.axis = axis;
        this.bowed = bowed;
        this.ends = ends;
        this.length = length;
        this.bow = bow;
        this.start = start;
    }

    /// <summary>d(η), mm.</summary>
    internal double Deflection(double eta)
    {
        double h = axis.H.Value, r = axis.Root.Value, ratio = axis.HOverSin.Value;
        double sides = 0.5 * (1 - eta * eta) * Sinc(0.5 * h * (1 + eta)) * Sinc(0.5 * h * (1 - eta)) * ratio;
        double symmetric = 0.5 * length * ends.Symmetric.Value * sides;
        double antisymmetric = -0.5 * length * ends.Antisymmetric.Value * eta * (Cubic(h) - eta * eta * Cubic(eta * h)) * ratio / axis.G.Value;
        double w = PlaneCurvature.Shape(h, (1 - r) * (1 + r), eta, Math.Cos(h * eta), Math.Cos(Math.PI / 2 * eta));
        double fromBow = bow * (bowed.Moment.Value / ratio - axis.Rho.Value * w - Tilt * h * sides);
        return start + ends.Chord.Value * 0.5 * length * (1 + eta) + symmetric + antisymmetric + fromBow;
    }

    /// <summary>d'(η), rad.</summary>
    internal double Slope(double eta)
    {
        double h = axis.H.Value, r = axis.Root.Value, ratio = axis.HOverSin.Value;
        double sine = eta * Sinc(h * eta) * ratio;
        double half = Sinc(0.5 * eta * h);
        double antisymmetric = ends.Antisymmetric.Value * (0.5 * eta * eta * half * half - Cubic(h)) * ratio / axis.G.Value;
        double slopeW = PlaneCurvature.ShapeSlope(h, (1 - r) * (1 + r), eta, Math.Sin(h * eta), Math.Sin(Math.PI / 2 * eta));
        double fromBow = bow * 2 / length * (Tilt * h * sine - axis.Rho.Value * slopeW);
        return ends.Chord.Value - ends.Symmetric.Value * sine + antisymmetric + fromBow;
    }

    /// <summary>ρ (ω − q sin h)/(q (1 − ρ)) = r (1 + r (1 − sin h)/(1 − r))/(1 + r): end slope of the bowed bar on hinges.</summary>
    private double Tilt => axis.Root.Value * (1 + axis.Root.Value * bowed.Versine.Value) / (1 + axis.Root.Value);

    private static double Sinc(double t) => Math.Abs(t) < 1e-4 ? 1 - t * t / 6 : Math.Sin(t) / t;

    /// <summary>(t − sin t)/t³.</summary>
    private static double Cubic(double t)
    {
        double t2 = t * t;
        return t2 < 0.25
            ? 1.0 / 6 - t2 * (1.0 / 120 - t2 * (1.0 / 5040 - t2 * (1.0 / 362880 - t2 * (1.0 / 39916800 - t2 / 6227020800.0))))
            : (t - Math.Sin(t)) / (t2 * t);
    }
}
