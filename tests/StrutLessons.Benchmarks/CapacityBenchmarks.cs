using BenchmarkDotNet.Attributes;
using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Benchmarks;

/// <summary>One capacity with one bow direction: critical load, scan against a missed first crossing, and the root.</summary>
[MemoryDiagnoser]
public class CapacityBenchmarks
{
    private StrutNumbers[] struts = [];

    [Params(1000, 4000)]
    public int Cases { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        AngleSection section = new Angle("L 80x80x8", 80, 80, 8, 10, 5).Connected();
        var random = new Random(1);
        struts = [.. Enumerable.Range(0, Cases).Select(_ =>
        {
            double length = 700 + 3500 * random.NextDouble();
            var end1 = new StrutEnd(new Planar(10 + 25 * random.NextDouble(), 28), new EndSpring(Spring(), Spring()));
            var end2 = new StrutEnd(new Planar(10 + 25 * random.NextDouble(), 28), new EndSpring(Spring(), Spring()));
            var strut = new Strut(section, Steel.Custom("S355", 355), length, end1, end2,
                [Bow.AlongU(section, (random.Next(2) == 0 ? -1 : 1) * length / 300)]);
            return new StrutNumbers(strut, strut.Bows[0]);
        })];

        double Spring() => random.Next(3) switch { 0 => 0, 1 => Math.Pow(10, 6 + 3 * random.NextDouble()), _ => double.PositiveInfinity };
    }

    [Benchmark]
    public double CriticalLoadAlone()
    {
        double sum = 0;
        foreach (ref readonly StrutNumbers strut in struts.AsSpan())
        {
            sum += CriticalLoadSolver.Solve(strut);
        }

        return sum;
    }

    [Benchmark]
    public double CapacityWithCriticalLoadAndGuard()
    {
        double sum = 0;
        foreach (ref readonly StrutNumbers strut in struts.AsSpan())
        {
            sum += FirstYield.Find(strut, CriticalLoadSolver.Solve(strut)).Load;
        }

        return sum;
    }
}
