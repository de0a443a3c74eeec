using System.Runtime.CompilerServices;
using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Member;

/// <summary>One number for each of the five corners of the section.</summary>
[InlineArray(5)]
internal struct FiveNumbers
{
    private double first;
}

/// <summary>
/// A strut with one bow as the plain numbers that the equations need, in principal components: u bends about v–v with EI_v,
/// v bends about u–u with EI_u. A value type, so that a solution allocates nothing.
/// </summary>
internal readonly struct StrutNumbers
{
    internal StrutNumbers(Strut strut, Bow bow) : this(Straight(strut), strut.Section, bow)
    {
    }

    /// <summary>A strut whose numbers are known, with another bow.</summary>
    internal StrutNumbers(in StrutNumbers strut, AngleSection section, Bow bow)
        : this(strut, bow.Amplitude * section.AlongU(bow.Direction), bow.Amplitude * section.AlongV(bow.Direction))
    {
    }

    /// <summary>The same with the components of the bow.</summary>
    internal StrutNumbers(in StrutNumbers strut, double bowU, double bowV)
    {
        this = strut;
        BowU = bowU;
        BowV = bowV;
    }

    /// <summary>A straight strut of parts that were checked before.</summary>
    internal StrutNumbers(AngleSection section, Steel steel, double systemLength, StrutEnd end1, StrutEnd end2)
    {
        E = steel.ElasticModulus;
        YieldStrength = steel.YieldStrength;
        Area = section.Area;
        Length = systemLength - end1.ArmLength - end2.ArmLength;
        StiffnessU = E * section.SecondMomentV;
        StiffnessV = E * section.SecondMomentU;
        double pi2 = Math.PI * Math.PI / (Length * Length);
        EulerU = pi2 * StiffnessU;
        EulerV = pi2 * StiffnessV;
        UnitU = StiffnessU / Length;
        UnitV = StiffnessV / Length;
        PerEulerU = 1 / EulerU;
        PerEulerV = 1 / EulerV;
        AxisU = section.AxisU;
        Load1 = end1.Eccentricity;
        Load2 = end2.Eccentricity;
        Moment1 = end1.ConstantMoment;
        Moment2 = end2.ConstantMoment;
        Arm1 = end1.ArmLength / Length;
        Arm2 = end2.ArmLength / Length;
        Arms = new ArmFactors(Arm1, Arm2, Length);
        Spring1Y = new ScaledSpring(end1.Spring.InPlane, StiffnessU / Length);
        Spring1Z = new ScaledSpring(end1.Spring.OutOfPlane, StiffnessU / Length);
        Spring2Y = new ScaledSpring(end2.Spring.InPlane, StiffnessU / Length);
        Spring2Z = new ScaledSpring(end2.Spring.OutOfPlane, StiffnessU / Length);
        for (int i = 0; i < 5; i++)
        {
            CornersU[i] = section.AlongU(section.Corners[i].Position);
            CornersV[i] = section.AlongV(section.Corners[i].Position);
            FarU = Math.Max(FarU, Math.Abs(CornersU[i]));
            FarV = Math.Max(FarV, Math.Abs(CornersV[i]));
        }
    }

    /// <summary>The strut without any bow: all that the critical load depends on.</summary>
    internal static StrutNumbers Straight(Strut strut) => new(strut.Section, strut.Steel, strut.SystemLength, strut.End1, strut.End2);

    internal readonly double E, YieldStrength, Area, Length;

    /// <summary>EI_v for displacements along u, EI_u for displacements along v, N mm².</summary>
    internal readonly double StiffnessU, StiffnessV;

    /// <summary>Euler loads of the bar between the bolts for displacements along u and v, N.</summary>
    internal readonly double EulerU, EulerV;

    /// <summary>EI/L in both directions, N mm.</summary>
    internal readonly double UnitU, UnitV;

    /// <summary>1/N_E in both directions, 1/N.</summary>
    internal readonly double PerEulerU, PerEulerV;

    /// <summary>Unit vector ê_u; ê_v is the normal, see <see cref="AxisV"/>.</summary>
    internal readonly Planar AxisU;

    internal readonly double BowU, BowV;

    internal readonly Planar Load1, Load2, Moment1, Moment2;

    /// <summary>Arms as parts of the bar's length.</summary>
    internal readonly double Arm1, Arm2;

    internal readonly ArmFactors Arms;

    internal readonly ScaledSpring Spring1Y, Spring1Z, Spring2Y, Spring2Z;

    internal readonly FiveNumbers CornersU, CornersV;

    /// <summary>Largest distance of a corner along u and along v, mm.</summary>
    internal readonly double FarU, FarV;

    /// <summary>ê_v with ê_v·y > 0, as the section defines it.</summary>
    internal Planar AxisV => AxisU.Z > 0 ? new(AxisU.Z, -AxisU.Y) : new(-AxisU.Z, AxisU.Y);

    /// <summary>Loads stay below both the squash load and the buckling load of the bar with clamped ends.</summary>
    internal double ClampedLoad => 4 * EulerU;

    /// <summary>True if a joint carries a moment that does not grow with the load.</summary>
    internal bool HasConstantMoment => Moment1 != default || Moment2 != default;

    internal double SquashLoad => Area * YieldStrength;

    /// <summary>True if nothing bends the strut: no bow, no eccentricity that a spring leaves, no moment.</summary>
    internal bool IsConcentric =>
        BowU == 0 && BowV == 0
        && (Spring1Y.Scale == 0 || (Load1.Y == 0 && Moment1.Y == 0)) && (Spring1Z.Scale == 0 || (Load1.Z == 0 && Moment1.Z == 0))
        && (Spring2Y.Scale == 0 || (Load2.Y == 0 && Moment2.Y == 0)) && (Spring2Z.Scale == 0 || (Load2.Z == 0 && Moment2.Z == 0));
}

/// <summary>
/// A spring k whose row and column are scaled by D = 1/√(1 + kL/EI): the same code serves k = 0 … ∞, and the unknown of a
/// rigid spring becomes zero without a special case.
/// </summary>
internal readonly struct ScaledSpring
{
    internal ScaledSpring(double stiffness, double unit)
    {
        double relative = stiffness / unit;
        Scale = 1 / Math.Sqrt(1 + relative);
        Stiffness = double.IsInfinity(relative) ? unit : unit * (relative / (1 + relative));
    }

    /// <summary>D; 0 for a rigid spring.</summary>
    internal double Scale { get; }

    /// <summary>k D², N mm/rad; finite for a rigid spring.</summary>
    internal double Stiffness { get; }
}

/// <summary>
/// How rigid arms a₁, a₂ (as parts of the bar's length) mix the bar's near and far stiffness, and what the load does on them.
/// </summary>
internal readonly struct ArmFactors(double a1, double a2, double length)
{
    internal readonly double Near11 = (1 + a1) * (1 + a1) + a1 * a1, Far11 = 2 * (1 + a1) * a1, Load11 = length * (a1 * a1 + a1);

    internal readonly double Near22 = (1 + a2) * (1 + a2) + a2 * a2, Far22 = 2 * (1 + a2) * a2, Load22 = length * (a2 * a2 + a2);

    internal readonly double Near21 = (1 + a1) * a2 + a1 * (1 + a2), Far21 = (1 + a1) * (1 + a2) + a1 * a2, Load21 = length * a1 * a2;
}
