using StrutLessons.Sections;

namespace StrutLessons.Member;

/// <summary>
/// A strut with one bow under one load, solved in closed form: shape, slopes, curvature, moments and stresses anywhere along
/// the bar, x from 0 at the first bolt of end 1 to <see cref="Strut.BarLength"/>. Immutable.
/// </summary>
public sealed partial record SecondOrderSolution
{
    private readonly StrutNumbers numbers;
    private readonly PlaneShape shapeU, shapeV;
    private readonly PlaneWave<Lane1> waveU, waveV;

    private SecondOrderSolution(Strut strut, Bow bow, double load, double criticalLoad)
    {
        Strut = strut;
        Bow = bow;
        Load = load;
        CriticalLoad = criticalLoad;
        numbers = new StrutNumbers(strut, bow);
        var stiffness = new EndStiffness<Lane1>(numbers, new Lane1(load));
        var ends = new EndRotations<Lane1>(numbers, stiffness);
        double length = numbers.Length;
        waveU = new(stiffness.U, ends.BowU, ends.U, length, numbers.BowU);
        waveV = new(stiffness.V, ends.BowV, ends.V, length, numbers.BowV);
        RotationEnd1 = new(ends.Slopes.Y1.Value, ends.Slopes.Z1.Value);
        RotationEnd2 = new(ends.Slopes.Y2.Value, ends.Slopes.Z2.Value);
        Planar start = strut.End1.ArmLength * RotationEnd1;
        shapeU = new(stiffness.U, ends.BowU, ends.U, length, numbers.BowU, start.Dot(numbers.AxisU));
        shapeV = new(stiffness.V, ends.BowV, ends.V, length, numbers.BowV, start.Dot(numbers.AxisV));
    }

    /// <summary>The strut.</summary>
    public Strut Strut { get; }

    /// <summary>The bow that this solution has.</summary>
    public Bow Bow { get; }

    /// <summary>Load N, compression positive, N.</summary>
    public double Load { get; }

    /// <summary>Critical load N_cr, N.</summary>
    public double CriticalLoad { get; }

    /// <summary>Additional slopes v', w' at end 1, rad.</summary>
    public Planar RotationEnd1 { get; }

    /// <summary>Additional slopes v', w' at end 2, rad.</summary>
    public Planar RotationEnd2 { get; }

    /// <summary>Solves the strut under a load.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="load">N, compression positive, below the critical load, N.</param>
    /// <param name="bow">Its bow; by default the first of the strut's bows.</param>
    /// <exception cref="InputException">The load is not between 0 and the critical load.</exception>
    public static SecondOrderSolution Of(Strut strut, double load, Bow? bow = null)
    {
        ArgumentNullException.ThrowIfNull(strut);
        double critical = Member.CriticalLoad.Of(strut);
        return load > 0 && load < critical
            ? new(strut, bow ?? strut.Bows[0], load, critical)
            : throw Guard.Fail(load, "load N", "N", $"more than 0 and less than the critical load {Guard.Text(critical)} N",
                "Beyond the critical load the formulas return finite numbers that mean nothing. Check that the load is in N.");
    }

    /// <summary>As <see cref="Of"/>, but returns false instead of throwing when the load is out of range.</summary>
    public static bool TryOf(Strut strut, double load, Bow? bow, out SecondOrderSolution? solution)
    {
        ArgumentNullException.ThrowIfNull(strut);
        double critical = Member.CriticalLoad.Of(strut);
        solution = load > 0 && load < critical ? new(strut, bow ?? strut.Bows[0], load, critical) : null;
        return solution is not null;
    }

    /// <summary>Additional displacement (v, w) of the centroid at x, mm.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public Planar Deflection(double x) => Combine(shapeU.Deflection(Eta(x)), shapeV.Deflection(Eta(x)));

    /// <summary>Stress-free bow d₀ at x, mm.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public Planar BowAt(double x) => Math.Cos(Math.PI / 2 * Eta(x)) * Bow.Amplitude * Bow.Direction;

    /// <summary>Additional slope (v', w') at x, rad.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public Planar Slope(double x) => Combine(shapeU.Slope(Eta(x)), shapeV.Slope(Eta(x)));

    /// <summary>Additional curvature (v'', w'') at x, 1/mm.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public Planar Curvature(double x) => Combine(PlaneCurvature.Value(waveU, Eta(x)), PlaneCurvature.Value(waveV, Eta(x)));

    /// <summary>First and second derivative of the curvature along x, 1/mm² and 1/mm³.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public (Planar First, Planar Second) CurvatureDerivatives(double x)
    {
        (double firstU, double secondU) = PlaneCurvature.Slopes(waveU, Eta(x));
        (double firstV, double secondV) = PlaneCurvature.Slopes(waveV, Eta(x));
        double scale = 2 / numbers.Length;
        return (scale * Combine(firstU, firstV), scale * scale * Combine(secondU, secondV));
    }

    /// <summary>First moment of the compressive stress M = ∫ s r dA = E J d'' at x, N mm.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public Planar Moment(double x)
    {
        (double alongU, double alongV) = PrincipalMoment(x);
        return Combine(alongU, alongV);
    }

    /// <summary>Principal components of the moment: along u (bending about v–v) and along v (bending about u–u), N mm.</summary>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public (double AlongU, double AlongV) PrincipalMoment(double x) =>
        (numbers.StiffnessU * PlaneCurvature.Value(waveU, Eta(x)), numbers.StiffnessV * PlaneCurvature.Value(waveV, Eta(x)));

    /// <summary>Stress at a corner, MPa, compression positive.</summary>
    /// <exception cref="InputException">x is outside the bar, or the corner has no name.</exception>
    public double StressAt(Corner corner, double x) => StressAt(Strut.Section.PositionOf(corner), x);

    /// <summary>Stress N/A + E d''·r at any point of the section, MPa, compression positive.</summary>
    /// <param name="position">y, z from the centroid, mm.</param>
    /// <param name="x">Place along the bar, mm.</param>
    /// <exception cref="InputException">x is outside the bar.</exception>
    public double StressAt(Planar position, double x) => Load / numbers.Area + numbers.E * Curvature(x).Dot(position);

    /// <summary>The plain numbers the solution was made from, for the stress search.</summary>
    internal ref readonly StrutNumbers Numbers => ref numbers;

    private Planar Combine(double alongU, double alongV) => alongU * numbers.AxisU + alongV * numbers.AxisV;

    private double Eta(double x)
    {
        // A place computed from other lengths may miss the end by rounding.
        double slack = 1e-9 * numbers.Length;
        Guard.Within(x, -slack, numbers.Length + slack, "place x", "mm",
            "x runs along the bar from the first bolt of end 1 to the first bolt of end 2.");
        return Math.Clamp(2 * x / numbers.Length - 1, -1, 1);
    }
}
