using BenchmarkDotNet.Attributes;
using StrutLessons.Plates;

namespace StrutLessons.Benchmarks;

/// <summary>
/// One joint by plate analysis at the default meshes, coarse and fine together. The bar: 20 ms on one core for a gusset or a web
/// at an error of 1 % or better.
/// </summary>
[MemoryDiagnoser]
public class PlatesJoint
{
    private readonly GussetPlate _square = new(10, 90, 90, 80, 70, 70, 40);
    private readonly GussetPlate _inclined = new(10, 90, 90, 80, 90, 70, 40, Math.PI / 3);
    private readonly GirderShape _ipe300 = new(300, 150, 7.1, 10.7);
    private readonly GirderSpan _span = new(6000, 2400);

    [Benchmark]
    public double Gusset_flexibility() => PlateOnRigidSupport.Flexibility(_square).Limit.SlopePerMoment;

    [Benchmark]
    public double Inclined_gusset_flexibility() => PlateOnRigidSupport.Flexibility(_inclined).Limit.SlopePerMoment;

    [Benchmark]
    public double Gusset_three_buckling_loads() => PlateOnRigidSupport.Buckling(_square).Free.Value;

    [Benchmark]
    public double Gusset_flexibility_under_compression() => PlateOnRigidSupport.FlexibilityUnder(_square, 50_000).Limit.SlopePerMoment;

    [Benchmark]
    public double Web_with_held_flanges() => WebFoot.HeldFlanges(_ipe300, 180, 140).Limit.SlopePerMoment;

    [Benchmark]
    public double Web_of_full_girder() => WebFoot.FullGirder(_ipe300, 180, 140, _span).Limit.SlopePerMoment;

    [Benchmark]
    public double Flange_of_full_girder() => FlangeFoot.FullGirder(_ipe300, 180, _span).UniformMoment.Value;

    [Benchmark]
    public double Gusset_on_full_girder_flange() => PlateOnGirder.OnFlange(_inclined, _ipe300, _span).Limit.SlopePerMoment;

    [Benchmark]
    public double Gusset_on_full_girder_web() => PlateOnGirder.OnWeb(_inclined, _ipe300, 140, _span).Limit.SlopePerMoment;
}
