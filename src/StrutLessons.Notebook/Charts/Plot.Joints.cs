using StrutLessons.Capacity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

public static partial class Plot
{
    /// <summary>A joint by hand and by plate analysis, part by part.</summary>
    /// <param name="comparison">Both ways.</param>
    public static BarChart HandAndPlates(JointComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        List<Bar> bars = [.. comparison.Parts.SelectMany(p => Pair(p.Name, p.Hand.Compliance, p.Plate.Compliance, p.StiffnessRatio))];
        if (comparison.Parts.Count > 1)
        {
            bars.AddRange(Pair("joint, sum", comparison.Hand.Compliance, comparison.Plate.Hinge.Compliance, comparison.StiffnessRatio));
        }

        return new BarChart("Compliance by hand formula and by plate analysis", "Compliance $f$ (mrad/kNm)", bars);

        static IEnumerable<Bar> Pair(string name, double hand, double plate, double ratio) =>
            [new(name + ", hand", 1e9 * hand, $"{Figures.Text(ratio, 3)} of the stiffness by plates"), new(name + ", plates", 1e9 * plate)];
    }

    /// <summary>Critical loads for the places of the spring, beside gusset, angle and gusset as three segments.</summary>
    /// <param name="comparison">The places.</param>
    public static BarChart SpringPlaces(SpringPlaceComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        Bar Of(string name, double load) => new(name, load / 1e3, $"{Figures.Text(load / comparison.ThreeSegments, 3)} of the three segments");
        return new BarChart("Critical load: a spring in the place of each gusset", "Critical load $N_{cr}$ (kN)",
            new Bar("three segments", comparison.ThreeSegments / 1e3), Of("spring at the elastic centre", comparison.ElasticCentre),
            Of("spring at the first bolt", comparison.BoltLine), Of("spring at the weld", comparison.Weld), Of("elastic centre, spring reduced by $N$", comparison.CountedTwice));
    }

    /// <summary>Capacities without a tie, and with a tie on either side.</summary>
    /// <param name="comparison">The three capacities.</param>
    public static BarChart Ties(TieComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        Bar Of(string name, CapacityResult result) =>
            new(name, result.Load / 1e3, result.Load > 0 ? $"{Figures.Text(result.Load / comparison.WithoutTie.Load, 3)} of the one without" : "yields without load");
        return new BarChart("Capacity with an adjacent tie on the same joint", "Capacity $N_R$ (kN)",
            Of("tie on the strut's side", comparison.SameSide), new Bar("no tie", comparison.WithoutTie.Load / 1e3), Of("tie on the other side", comparison.OppositeSide));
    }
}
