using BenchmarkDotNet.Attributes;
using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Benchmarks;

/// <summary>
/// Capacities of random struts with one bow direction each: lengths 0.7 to 4.2 m, hinges, springs and rigid ends in any mix.
/// The closed form includes the critical load and the scan against a missed first crossing, as the general route does.
/// All times are per strut.
/// </summary>
[MemoryDiagnoser]
public class CapacityBenchmarks
{
    private const int Batch = 256;

    private readonly Strut[] struts = Make(Batch);
    private readonly StrutNumbers[] numbers = [.. Make(Batch).Select(s => new StrutNumbers(s, s.Bows[0]))];

    /// <summary>Both routes must solve the same problem before they are timed.</summary>
    [GlobalSetup]
    public void Compare()
    {
        for (int i = 0; i < 8; i++)
        {
            double closed = StrutCapacity.LoadOf(struts[i]), general = new FiniteElementRoute(struts[i]).Capacity();
            if (Math.Abs(general / closed - 1) > 0.01)
            {
                throw new InvalidOperationException($"Strut {i}: closed form {closed} N, finite elements {general} N.");
            }
        }
    }

    /// <summary>Critical load alone.</summary>
    [Benchmark(OperationsPerInvoke = Batch)]
    public double CriticalLoadClosedForm()
    {
        double sum = 0;
        foreach (ref readonly StrutNumbers strut in numbers.AsSpan())
        {
            sum += CriticalLoadSolver.Solve(strut);
        }

        return sum;
    }

    /// <summary>Capacity with critical load and guard.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Batch)]
    public double CapacityClosedForm()
    {
        double sum = 0;
        foreach (ref readonly StrutNumbers strut in numbers.AsSpan())
        {
            sum += FirstYield.Find(strut, CriticalLoadSolver.Solve(strut)).Load;
        }

        return sum;
    }

    /// <summary>The same by 16 beam elements, a dense eigenvalue solver, a scan and a general root finder.</summary>
    [Benchmark(OperationsPerInvoke = 4)]
    public double CapacityFiniteElements()
    {
        double sum = 0;
        for (int i = 0; i < 4; i++)
        {
            sum += new FiniteElementRoute(struts[i]).Capacity();
        }

        return sum;
    }

    internal static Strut[] Make(int count)
    {
        AngleSection section = AngleCatalogue.Find("L 80x80x8").Connected();
        var random = new Random(1);
        return [.. Enumerable.Range(0, count).Select(_ =>
        {
            double length = 700 + 3500 * random.NextDouble();
            return new Strut(section, SteelGrade.S355.ForThickness(8), length, End(), End(),
                [Bow.AlongU(section, (random.Next(2) == 0 ? -1 : 1) * length / 300)]);
        })];

        StrutEnd End() => new(new Planar(10 + 25 * random.NextDouble(), 28), new EndSpring(Spring(), Spring()));

        double Spring() => random.Next(3) switch { 0 => 0, 1 => Math.Pow(10, 6 + 3 * random.NextDouble()), _ => double.PositiveInfinity };
    }
}

/// <summary>Time grows in proportion to the number of struts.</summary>
public class CapacityGrowthBenchmarks
{
    private StrutNumbers[] numbers = [];

    /// <summary>Number of struts.</summary>
    [Params(250, 1000, 4000)]
    public int Cases { get; set; }

    /// <summary>Makes the struts.</summary>
    [GlobalSetup]
    public void Prepare() => numbers = [.. CapacityBenchmarks.Make(Cases).Select(s => new StrutNumbers(s, s.Bows[0]))];

    /// <summary>All capacities one after another on one core.</summary>
    [Benchmark]
    public double Capacities()
    {
        double sum = 0;
        foreach (ref readonly StrutNumbers strut in numbers.AsSpan())
        {
            sum += FirstYield.Find(strut, CriticalLoadSolver.Solve(strut)).Load;
        }

        return sum;
    }
}
