using CsCheck;
using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Stress;

namespace StrutLessons.Tests.Member;

/// <summary>Facts that hold for every strut, tried on random ones.</summary>
public class StrutPropertyTests
{
    private const long Tries = 400;

    private static readonly Angle[] Angles =
    [
        new("L 50x50x5", 50, 50, 5, 7, 3.5), new("L 80x80x8", 80, 80, 8, 10, 5), new("L 100x65x8", 100, 65, 8, 10, 5),
        new("L 150x75x9", 150, 75, 9, 12, 6), new("L 200x200x20", 200, 200, 20, 18, 9),
    ];

    private static readonly Gen<double> Stiffness = Gen.Frequency(
        (1, Gen.Const(0.0)), (4, Gen.Double[4, 10].Select(p => Math.Pow(10, p))), (1, Gen.Const(double.PositiveInfinity)));

    private static readonly Gen<EndSpring> Springs = Gen.Select(Stiffness, Stiffness, (i, o) => new EndSpring(i, o));

    private static readonly Gen<StrutEnd> Ends = Gen.Select(
        Gen.Double[-40, 40], Gen.Double[-10, 50], Springs, Gen.OneOf(Gen.Const(0.0), Gen.Double[10, 150]),
        (y, z, spring, arm) => new StrutEnd(new Planar(y, z), spring, arm));

    private static readonly Gen<Strut> Struts = Gen.Select(
        OneOf(Angles), Gen.Enum<ConnectedLeg>(), Gen.Double[0.4, 3], Ends, Ends, Gen.Double[0, 360], Gen.Double[0.1, 8],
        (angle, leg, slenderness, end1, end2, direction, bow) =>
        {
            AngleSection section = angle.Connected(leg);
            double length = slenderness * Math.PI * section.RadiusV * Math.Sqrt(210000 / 355.0) + end1.ArmLength + end2.ArmLength;
            return new Strut(section, Steel.Custom("S355", 355), length, end1, end2, Bow.AtAngle(direction, bow));
        });

    [Fact]
    public void A_stiffer_spring_never_lowers_the_critical_load() =>
        Gen.Select(Struts, Gen.Double[1, 1000], Gen.Int[0, 3]).Sample((strut, factor, which) =>
        {
            double Raised(double k, int i) => which == i ? (k == 0 ? 1e6 * factor : k * factor) : k;
            EndSpring s1 = strut.End1.Spring, s2 = strut.End2.Spring;
            Strut stiffer = strut.WithEnds(
                strut.End1.With(new EndSpring(Raised(s1.InPlane, 0), Raised(s1.OutOfPlane, 1))),
                strut.End2.With(new EndSpring(Raised(s2.InPlane, 2), Raised(s2.OutOfPlane, 3))));
            return CriticalLoad.Of(stiffer) >= CriticalLoad.Of(strut) * (1 - 1e-11);
        }, iter: Tries);

    [Fact]
    public void Without_arms_the_critical_load_lies_between_one_and_four_euler_loads() =>
        Struts.Sample(strut =>
        {
            Strut bare = WithoutArms(strut);
            double ratio = CriticalLoad.RatioToEuler(bare);
            return ratio >= 1 - 1e-11 && ratio <= 4 + 1e-11;
        }, iter: Tries);

    [Fact]
    public void No_critical_load_lies_below_the_lowest_one_and_one_lies_at_it() =>
        Struts.Sample(strut =>
        {
            double critical = CriticalLoad.Of(strut);
            bool atClampedLimit = critical >= 4 * Math.PI * Math.PI * 210000 * strut.Section.SecondMomentV / Math.Pow(strut.BarLength, 2) * (1 - 1e-8);
            return CriticalLoad.CountBelow(strut, critical * (1 - 1e-10)) == 0
                && (atClampedLimit || CriticalLoad.CountBelow(strut, critical * (1 + 1e-9)) >= 1);
        }, iter: Tries);

    [Fact]
    public void Laying_the_other_leg_on_the_gusset_and_turning_springs_and_loads_with_it_changes_nothing() =>
        Struts.Sample(strut =>
        {
            // The mirror at the bisector of the legs maps y to −z and z to −y.
            ConnectedLeg other = strut.Section.Leg == ConnectedLeg.Long ? ConnectedLeg.Short : ConnectedLeg.Long;
            AngleSection section = strut.Section.Angle.Connected(other);
            Bow bow = strut.Bows[0];
            double direction = Math.Atan2(-bow.Direction.Y, -bow.Direction.Z) * 180 / Math.PI;
            var turned = new Strut(section, strut.Steel, strut.SystemLength, Turn(strut.End1), Turn(strut.End2), Bow.AtAngle(direction, bow.Amplitude));
            Closeness.Relative(CriticalLoad.Of(strut), CriticalLoad.Of(turned), 1e-10, "N_cr");
            Closeness.Relative(StrutCapacity.LoadOf(strut), StrutCapacity.LoadOf(turned), 1e-8, "N_R");
        }, iter: Tries);

    [Fact]
    public void Other_units_of_length_and_force_change_nothing() =>
        Gen.Select(Struts, Gen.Double[0.2, 5], Gen.Double[0.5, 2]).Sample((strut, length, perArea) =>
        {
            double force = perArea * length * length;
            Angle a = strut.Section.Angle;
            var angle = new Angle(a.Name, length * a.LongLeg, length * a.ShortLeg, length * a.Thickness, length * a.RootRadius, length * a.ToeRadius);
            AngleSection section = angle.Connected(strut.Section.Leg);
            double moment = force * length;
            StrutEnd Scaled(StrutEnd e) => new(length * e.Eccentricity,
                new EndSpring(moment * e.Spring.InPlane, moment * e.Spring.OutOfPlane), length * e.ArmLength);
            Bow b = strut.Bows[0];
            double degrees = Math.Atan2(b.Direction.Z, b.Direction.Y) * 180 / Math.PI;
            var scaled = new Strut(section, Steel.Custom("scaled", 355 * perArea, 210000 * perArea), length * strut.SystemLength,
                Scaled(strut.End1), Scaled(strut.End2), Bow.AtAngle(degrees, length * b.Amplitude));
            Closeness.Relative(force * CriticalLoad.Of(strut), CriticalLoad.Of(scaled), 1e-10, "N_cr");
            Closeness.Relative(force * StrutCapacity.LoadOf(strut), StrutCapacity.LoadOf(scaled), 1e-8, "N_R");
        }, iter: Tries);

    [Fact]
    public void Mirrored_ends_mirror_the_shape() =>
        Gen.Select(Struts, Gen.Double[0.01, 0.95], Gen.Double[0, 1]).Sample((strut, share, place) =>
        {
            double load = share * CriticalLoad.Of(strut), x = Math.Min(place, 1 - 1e-12) * strut.BarLength;
            Planar here = SecondOrderSolution.Of(strut, load).Deflection(x);
            Planar there = SecondOrderSolution.Of(strut.WithEnds(strut.End2, strut.End1), load).Deflection(strut.BarLength - x);
            return (here - there).Length <= 1e-9 * Math.Max(Largest(strut, load), 1e-3);
        }, iter: Tries);

    [Fact]
    public void The_closed_form_satisfies_the_differential_equation_and_every_end_condition() =>
        Gen.Select(Struts, Loads, Gen.Double[0, 1]).Sample((strut, share, place) =>
        {
            double load = share(strut);
            SecondOrderSolution s = SecondOrderSolution.Of(strut, load);
            double length = strut.BarLength, x = place * length;
            AngleSection section = strut.Section;
            double size = 1e-9 * Math.Max(Largest(strut, load), 1e-3);

            // Field: E J d'''' + N d'' = −N d₀'', in principal components; as moments, with the length squared.
            Planar d4 = s.CurvatureDerivatives(x).Second, d2 = s.Curvature(x), bow = -Math.Pow(Math.PI / length, 2) * s.BowAt(x);
            double fieldU = 210000 * section.SecondMomentV * section.AlongU(d4) + load * section.AlongU(d2 + bow);
            double fieldV = 210000 * section.SecondMomentU * section.AlongV(d4) + load * section.AlongV(d2 + bow);
            double bend = Enumerable.Range(0, 9).Max(i => s.Curvature(i * length / 8).Length) + bow.Length + 1e-3 / (length * length);
            double fieldSize = 1e-9 * load * bend;
            Assert.True(Math.Abs(fieldU) <= fieldSize && Math.Abs(fieldV) <= fieldSize, $"field {fieldU:G3} {fieldV:G3} of {fieldSize:G3}");

            // Ends: the arms' tips do not move.
            Assert.True((s.Deflection(0) - strut.End1.ArmLength * s.RotationEnd1).Length <= size, "displacement 1");
            Assert.True((s.Deflection(length) + strut.End2.ArmLength * s.RotationEnd2).Length <= size, "displacement 2");
            double slopes = 1e-9 * Math.Max(Enumerable.Range(0, 9).Max(i => s.Slope(i * length / 8).Length), 1e-6);
            Assert.True((s.Slope(0) - s.RotationEnd1).Length <= slopes, "slope 1");
            Assert.True((s.Slope(length) - s.RotationEnd2).Length <= slopes, "slope 2");

            // What rounding can leave at an end is measured by the largest moment of the strut: at a hinge the true value may be zero.
            double moments = Enumerable.Range(0, 9).Max(i => s.Moment(i * length / 8).Length)
                + load * (strut.End1.Eccentricity.Length + strut.End2.Eccentricity.Length + 1e-3);

            // Moments at the hinges: M + arm · shear + N d = N e ± K θ, with the shear V = M' + N(d' + d₀').
            CheckMoment(strut.End1, s.RotationEnd1, 1, 0);
            CheckMoment(strut.End2, s.RotationEnd2, -1, length);

            void CheckMoment(StrutEnd end, Planar rotation, double sense, double at)
            {
                Planar slopeBow = sense * Math.PI / length * s.Bow.Amplitude * s.Bow.Direction;
                Planar third = s.CurvatureDerivatives(at).First;
                Planar shear = section.FromPrincipal(
                    210000 * section.SecondMomentV * section.AlongU(third), 210000 * section.SecondMomentU * section.AlongV(third))
                    + load * (s.Slope(at) + slopeBow);
                Planar hinge = s.Moment(at) - (sense * end.ArmLength) * shear + load * s.Deflection(at);
                double scale = 1e-9 * moments;
                CheckPlane(hinge.Y, load * end.Eccentricity.Y, end.Spring.InPlane, rotation.Y);
                CheckPlane(hinge.Z, load * end.Eccentricity.Z, end.Spring.OutOfPlane, rotation.Z);

                void CheckPlane(double moment, double primary, double spring, double angle)
                {
                    bool holds = double.IsInfinity(spring)
                        ? angle == 0
                        : Math.Abs(moment - primary - sense * spring * angle) <= scale + 1e-9 * spring * Math.Abs(angle);
                    Assert.True(holds, $"end moment {moment:G6}, N e {primary:G6}, k {spring:G3}, rotation {angle:G6}");
                }
            }
        }, iter: Tries);

    [Fact]
    public void The_first_crossing_is_not_missed() =>
        Struts.Sample(strut =>
        {
            var numbers = new StrutNumbers(strut, strut.Bows[0]);
            double critical = CriticalLoadSolver.Solve(numbers);
            FirstYieldLoad found = FirstYield.Find(numbers, critical);
            // A dense, graded ladder of exact evaluations up to the load found: none of them may yield.
            for (int i = 1; i <= 400; i++)
            {
                double load = (1 - Math.Pow(1e-6, i / 400.0)) * critical;
                if (load >= found.Load * (1 - 1e-8))
                {
                    break;
                }

                double stress = new StressWave(in numbers, load).Largest(true, true).Stress;
                Assert.True(stress < 355 * (1 + 1e-9), $"{stress} MPa at {load} N, below the capacity {found.Load} N");
            }

            if (found.Reason != CapacityReason.Bifurcation)
            {
                Closeness.Relative(355, new StressWave(in numbers, found.Load).Largest(true, true).Stress, 1e-7, "stress at the capacity");
            }
        }, iter: 1500);

    [Fact]
    public void The_largest_stress_is_the_largest_anywhere() =>
        Gen.Select(Struts, Gen.Double[0.01, 0.99]).Sample((strut, share) =>
        {
            SecondOrderSolution s = SecondOrderSolution.Of(strut, share * CriticalLoad.Of(strut));
            StressExtremes extremes = s.Extremes();
            double most = double.MinValue, least = double.MaxValue;
            for (int i = 0; i <= 400; i++)
            {
                foreach (StressPoint corner in strut.Section.Corners)
                {
                    double stress = s.StressAt(corner.Corner, Math.Min(i * strut.BarLength / 400, strut.BarLength));
                    most = Math.Max(most, stress);
                    least = Math.Min(least, stress);
                }
            }

            double size = Math.Max(Math.Abs(most), Math.Abs(least));
            return most <= extremes.LargestCompression + 1e-10 * size && most >= extremes.LargestCompression - 1e-3 * size
                && -least <= extremes.LargestTension + 1e-10 * size && -least >= extremes.LargestTension - 1e-3 * size;
        }, iter: Tries);

    /// <summary>Loads over twelve decades, and the Euler loads themselves and their close neighbours.</summary>
    private static readonly Gen<Func<Strut, double>> Loads = Gen.OneOf(
        Gen.Double[-10, -0.02].Select(p => new Func<Strut, double>(s => Math.Pow(10, p) * CriticalLoad.Of(s))),
        OneOf(0, 1e-15, 1e-11, 1e-8, 1e-4, 9e-4, 1.1e-3).Select(off => new Func<Strut, double>(s =>
        {
            double euler = Math.PI * Math.PI * 210000 * s.Section.SecondMomentV / Math.Pow(s.BarLength, 2), critical = CriticalLoad.Of(s);
            return euler < 0.95 * critical ? euler * (1 + off) : 0.5 * critical;
        })));

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static double Largest(Strut strut, double load)
    {
        SecondOrderSolution s = SecondOrderSolution.Of(strut, load);
        return Enumerable.Range(0, 9).Max(i => s.Deflection(i * strut.BarLength / 8).Length);
    }

    private static StrutEnd Turn(StrutEnd end) => new(
        new Planar(-end.Eccentricity.Z, -end.Eccentricity.Y), new EndSpring(end.Spring.OutOfPlane, end.Spring.InPlane), end.ArmLength);

    private static Strut WithoutArms(Strut strut) => strut.WithEnds(
        new StrutEnd(strut.End1.Eccentricity, strut.End1.Spring), new StrutEnd(strut.End2.Eccentricity, strut.End2.Spring));
}
