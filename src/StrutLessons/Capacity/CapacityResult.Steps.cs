using StrutLessons.Sections;

namespace StrutLessons.Capacity;

public sealed partial record CapacityResult : IWorked
{
    private const string Search = "first yield of a corner, second-order theory; smallest load below the critical load";

    /// <summary>From the squash load and the critical load to the capacity of each bow.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        double squash = Strut.SquashLoad, euler = Strut.EulerLoadV;
        string fy = Tex.Number(Strut.Steel.YieldStrength), area = Tex.Number(Strut.Section.Area);
        var steps = new List<WorkedStep>
        {
            new("Squash load", "N_{pl}", "A f_y", $@"{area} \cdot {fy} / 1000", squash / 1e3, "kN", "definition"),
            new("Euler load of the hinged strut about v–v", "N_{Ev}", @"\frac{\pi^2 E I_v}{L^2}",
                $@"\frac{{\pi^2 \cdot {Tex.Number(Strut.Steel.ElasticModulus)} \cdot {Tex.Number(Strut.Section.SecondMomentV)}}}{{{Tex.Number(Strut.SystemLength)}^2}} / 1000",
                euler / 1e3, "kN", "Euler, 1744 (any textbook)"),
            new("Relative slenderness", @"\bar\lambda_v", @"\sqrt{\frac{N_{pl}}{N_{Ev}}}",
                $@"\sqrt{{\frac{{{Tex.Number(squash / 1e3)}}}{{{Tex.Number(euler / 1e3)}}}}}", Strut.RelativeSlendernessV, "", "EN 1993-1-1:2005, 6.3.1.2"),
            new("Critical load with the springs", "N_{cr}", @"\det K(N) = 0", "", CriticalLoad / 1e3, "kN", "lowest root, counted after Wittrick and Williams, 1971"),
        };
        foreach (BowCapacity bow in Bows)
        {
            steps.Add(new($"Capacity with the bow {bow.Bow.Name}: {Words(bow)}", $@"N_R^{{{bow.Bow.Name.Replace("−", "-", StringComparison.Ordinal)}}}",
                @"\max_{x,\,\text{corner}} |\sigma(N)| = f_y", "", bow.Load / 1e3, "kN", Search));
        }

        steps.Add(new("Capacity", "N_R", @"\min\ \text{of the bows}", "", Load / 1e3, "kN", Search));
        steps.Add(new("Reduction factor", @"\chi", @"\frac{N_R}{N_{pl}}", $@"\frac{{{Tex.Number(Load / 1e3)}}}{{{Tex.Number(squash / 1e3)}}}", ReductionFactor, "", "definition"));
        return steps;
    }

    private static string Words(BowCapacity bow) => bow.Reason switch
    {
        CapacityReason.Compression => $"{CornerWords.Of(bow.Place!.Value.Corner)} yields in compression",
        CapacityReason.Tension => $"{CornerWords.Of(bow.Place!.Value.Corner)} yields in tension",
        CapacityReason.Bifurcation => "nothing yields before the critical load",
        _ => "yields without load",
    };
}
