using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Stress;

namespace StrutLessons.Tests.Capacity;

/// <summary>
/// Where bow and eccentricity oppose each other, the stress may pass the yield strength, fall below it again, and pass it once
/// more. Random struts of this kind, each looked at with three hundred loads by a plain loop.
/// </summary>
public class FirstCrossingTests
{
    private const int Looks = 300;

    private static readonly AngleSection[] Sections =
        [.. new[] { "L 50x50x5", "L 80x80x8", "L 100x50x8", "L 70x70x7", "L 150x100x10", "L 40x40x4" }.Select(name => AngleCatalogue.Find(name).Connected())];

    [Fact]
    public void The_capacity_is_the_first_of_several_crossings()
    {
        var random = new Random(13);
        int several = 0;
        for (int i = 0; i < 12_000; i++)
        {
            Strut strut = Make(random);
            double found = StrutCapacity.LoadOf(strut), critical = CriticalLoad.Of(strut);
            (double first, int crossings) = Plain(strut, critical);
            several += crossings > 1 ? 1 : 0;
            Assert.True(found <= first * (1 + 1e-9), $"Strut {i}: {found} N, but it yields at {first} N already (critical load {critical} N).");
        }

        Assert.True(several > 10, $"Only {several} struts yield more than once: the test has lost its subject.");
    }

    /// <summary>
    /// Tension alone is the small difference of bending and mean stress: its peaks hide best between the places that the scan looks at.
    /// </summary>
    [Theory]
    [InlineData(YieldCriterion.Any)]
    [InlineData(YieldCriterion.Compression)]
    [InlineData(YieldCriterion.Tension)]
    internal void At_the_load_found_the_largest_stress_is_the_yield_strength_and_below_it_never_more(YieldCriterion criterion)
    {
        var random = new Random(29);
        for (int i = 0; i < 20_000; i++)
        {
            Strut strut = MakeAny(random);
            var numbers = new StrutNumbers(strut, strut.Bows[0]);
            FirstYieldLoad found = FirstYield.Find(numbers, CriticalLoad.Of(strut), criterion);
            if (found.Reason == CapacityReason.Bifurcation)
            {
                continue;
            }

            double over = Over(numbers, found.Load), slope = (Over(numbers, found.Load * (1 + 1e-6)) - over) / 1e-6;
            Assert.True(Math.Abs(over) <= 1e-9 * slope, $"Strut {i}: at {found.Load} N the stress is {over:e2} off; a relative slope of {slope:e2}.");
            for (int k = 1; k < 20; k++)
            {
                Assert.True(Over(numbers, found.Load * k / 20) <= 1e-9, $"Strut {i} yields at {k}/20 of {found.Load} N already.");
            }
        }

        double Over(in StrutNumbers numbers, double load) => new StressWave(in numbers, load)
            .Largest(criterion != YieldCriterion.Tension, criterion != YieldCriterion.Compression).Stress / numbers.YieldStrength - 1;
    }

    /// <summary>The first of the loads at which the strut yields, and how often it begins or ceases to yield.</summary>
    private static (double First, int Crossings) Plain(Strut strut, double critical)
    {
        double first = double.PositiveInfinity, end = Math.Min(strut.SquashLoad, critical * (1 - 1e-6));
        int crossings = 0;
        bool before = false;
        var numbers = new StrutNumbers(strut, strut.Bows[0]);
        for (int i = 1; i <= Looks; i++)
        {
            // Steps that shrink with the distance to the critical load, where the stress changes fastest.
            double load = critical * (1 - Math.Pow(1 - end / critical, (double)i / Looks));
            bool yields = new StressWave(in numbers, load).Largest(compression: true, tension: true).Stress > strut.Steel.YieldStrength;
            crossings += yields != before ? 1 : 0;
            first = yields ? Math.Min(first, load) : first;
            before = yields;
        }

        return (first, crossings);
    }

    private static Strut Make(Random random)
    {
        AngleSection section = Sections[random.Next(Sections.Length)];
        double length = section.RadiusV * (90 + 120 * random.NextDouble());
        double unit = 210_000 * section.SecondMomentV / length;
        double z = section.CentroidZ + 3 + 4 * random.NextDouble();
        double y = 3.3 * section.RadiusY * (0.5 + 0.12 * random.NextDouble()) - section.CentroidY;
        var end = new StrutEnd(new Planar(y, z), new EndSpring(Spring(), Spring()));
        double bow = (random.Next(2) == 0 ? -1 : 1) * length / (150 + 850 * random.NextDouble());
        return new Strut(section, Steel.Custom("S355", 355), length, end, end, [Bow.AlongU(section, bow)]);

        double Spring() => unit * Math.Pow(10, -1.5 + 2 * random.NextDouble());
    }

    private static Strut MakeAny(Random random)
    {
        AngleSection section = Sections[random.Next(Sections.Length)];
        double length = section.RadiusV * (20 + 280 * random.NextDouble());
        double bow = (random.Next(2) == 0 ? -1 : 1) * length / (100 + 900 * random.NextDouble());
        return new Strut(section, Steel.Custom("S355", 355), length, End(), End(), [Bow.AlongU(section, bow)]);

        StrutEnd End() => new(new Planar(-30 + 70 * random.NextDouble(), -20 + 60 * random.NextDouble()), new EndSpring(Spring(), Spring()));

        double Spring() => random.Next(3) switch { 0 => 0, 1 => Math.Pow(10, 5 + 5 * random.NextDouble()), _ => double.PositiveInfinity };
    }
}
