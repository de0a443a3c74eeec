using BenchmarkDotNet.Attributes;
using StrutLessons.Plates;

namespace StrutLessons.Benchmarks;

/// <summary>
/// How the time of a flexibility grows with the number of unknowns: fineness 2, 4, 8 and 16 quadruples the unknowns each time.
/// A skyline of n unknowns and bandwidth √n costs n² multiplications, the elements cost n; measured together about n^1.3.
/// </summary>
[MemoryDiagnoser]
public class PlatesGrowth
{
    private static readonly GussetPlate Plate = new(10, 90, 90, 80, 70, 70, 40);

    [Params(2, 4, 8, 16)]
    public int Fineness { get; set; }

    [Benchmark]
    public double Gusset_flexibility() => PlateOnRigidSupport.Flexibility(Plate, fineness: Fineness).Limit.SlopePerMoment;

    /// <summary>Unknowns of the fine mesh.</summary>
    [GlobalSetup]
    public void State_the_unknowns() =>
        Console.WriteLine($"// {GussetPanel.Pair(Plate, null, Fineness).Fine.Unknowns} unknowns on the fine mesh");
}
