using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using StrutLessons.Calibration;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Benchmarks;

/// <summary>A calibration grid of 504 struts: two reference paths and two elastic models for each, with one worker and with as many as there are cores.</summary>
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 1, iterationCount: 3)]
[MemoryDiagnoser]
public class CalibrationScaling
{
    private Strut[] struts = [];

    /// <summary>Struts at work at the same time.</summary>
    [ParamsSource(nameof(WorkerCounts))]
    public int Workers { get; set; }

    /// <summary>1, 2, 4, … up to the number of cores.</summary>
    public static IEnumerable<int> WorkerCounts => Enumerable.Range(0, 11).Select(i => 1 << i).Where(n => n <= Environment.ProcessorCount);

    [GlobalSetup]
    public void Prepare() => struts =
    [
        .. from name in new[] { "L 60x60x6", "L 80x80x8", "L 90x90x9", "L 100x100x8", "L 120x120x10", "L 150x150x10", "L 100x65x8" }
           from slenderness in new[] { 0.4, 0.8, 1.2, 1.6, 2, 3 }
           from inPlane in new[] { 0, 1, double.PositiveInfinity }
           from outOfPlane in new[] { 0, 0.5, 1, 3 }
           select Of(AngleCatalogue.Find(name).Connected(), slenderness, inPlane, outOfPlane),
    ];

    /// <summary>The whole grid; the time is that of the grid, not of one strut.</summary>
    [Benchmark]
    public double Grid() => RatioGrid.Run(struts, new RatioSettings { Workers = Workers }).Statistics(ElasticModel.WithRoll).Minimum;

    private static Strut Of(AngleSection section, double slenderness, double inPlane, double outOfPlane)
    {
        Steel steel = SteelGrade.S355.ForThickness(section.Thickness);
        double length = slenderness * Math.PI * section.RadiusV * Math.Sqrt(steel.ElasticModulus / steel.YieldStrength), unit = steel.ElasticModulus / length;
        double Spring(double share, double moment) => share == 0 ? 0 : share * unit * moment;
        var end = new StrutEnd(new Planar(0.55 * section.ConnectedLength - section.CentroidY, section.CentroidZ + 5),
            new(Spring(inPlane, section.SecondMomentZ), Spring(outOfPlane, section.SecondMomentY)));
        return new Strut(section, steel, length, end, end);
    }
}
