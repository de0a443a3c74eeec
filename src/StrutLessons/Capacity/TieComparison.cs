using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;

namespace StrutLessons.Capacity;

/// <summary>
/// Capacity of a strut without a tie, with a tie on its own side of the gusset, and with the same tie on the other side. The tie's force is
/// constant, or in proportion to the strut's load at every step of the search, as the tie says. Immutable.
/// </summary>
public sealed record TieComparison : IWorked
{
    private TieComparison(Strut strut, LoadPoint load, AdjacentTie tie, TieEnds ends)
    {
        Tie = tie;
        Ends = Guard.Named(ends, "ends with a tie");
        AdjacentTie same = tie.Side == TieSide.SameAsStrut ? tie : tie.Mirrored();
        Same = same.On(load);
        Opposite = same.Mirrored().On(load);
        WithoutTie = Solve(strut);
        SameSide = Solve(With(strut, Same));
        OppositeSide = Solve(With(strut, Opposite));
    }

    /// <summary>The tie as given.</summary>
    public AdjacentTie Tie { get; }

    /// <summary>Which joints carry it.</summary>
    public TieEnds Ends { get; }

    /// <summary>The tie on the strut's side.</summary>
    public TieMoment Same { get; }

    /// <summary>The tie on the other side.</summary>
    public TieMoment Opposite { get; }

    /// <summary>Capacity without a tie.</summary>
    public CapacityResult WithoutTie { get; }

    /// <summary>Capacity with the tie on the strut's side; 0 with the reason "yields without load" if the tie alone makes a corner yield.</summary>
    public CapacityResult SameSide { get; }

    /// <summary>Capacity with the tie on the other side; 0 as for <see cref="SameSide"/>.</summary>
    public CapacityResult OppositeSide { get; }

    /// <summary>The side with the lower capacity.</summary>
    public TieSide WorseSide => OppositeSide.Load <= SameSide.Load ? TieSide.OppositeToStrut : TieSide.SameAsStrut;

    /// <summary>The three capacities of a strut.</summary>
    /// <param name="strut">The strut without a tie.</param>
    /// <param name="load">Load point of the joint that carries the tie (of both, if both do).</param>
    /// <param name="tie">The tie; its side does not matter, both are compared.</param>
    /// <param name="ends">Which joints carry it.</param>
    /// <exception cref="InputException">No side can be told, because the centroid lies in the load plane; a name that is none.</exception>
    public static TieComparison Of(Strut strut, LoadPoint load, AdjacentTie tie, TieEnds ends = TieEnds.Both)
    {
        ArgumentNullException.ThrowIfNull(strut);
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(tie);
        return new(strut, load, tie, ends);
    }

    /// <summary>The three capacities and what the tie does to them.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string search = "first yield of a corner, second-order theory; smallest load below the critical load";
        List<WorkedStep> steps =
        [
            Tie.Force != 0
                ? new("Constant force of the tie", "T", "", "", Tie.Force * 1e-3, "kN", "given")
                : new("Force of the tie per compression of the strut", @"\tau", "T/N", "", Tie.Ratio, "", "given"),
            new("Line of the tie from the gusset's mid-plane", "e_t", "", "", Tie.Eccentricity, "mm", "given"),
            new("Capacity without a tie", "N_{R,0}", "", "", WithoutTie.Load / 1e3, "kN", search),
        ];
        Add("Tie on the strut's side", "N_{R,same}", SameSide);
        Add("Tie on the other side", "N_{R,opp}", OppositeSide);
        return steps;

        void Add(string title, string symbol, CapacityResult result)
        {
            steps.Add(new($"{title}: capacity", symbol, "", "", result.Load / 1e3, "kN", search));
            steps.Add(new($"{title}: over the capacity without a tie", $"{symbol}/N_{{R,0}}", $@"\frac{{{symbol}}}{{N_{{R,0}}}}",
                $@"\frac{{{Tex.Number(result.Load / 1e3)}}}{{{Tex.Number(WithoutTie.Load / 1e3)}}}", result.Load / WithoutTie.Load, "", "ratio"));
        }
    }

    private static CapacityResult Solve(Strut strut)
    {
        StrutCapacity.TryOf(strut, out CapacityResult result);
        return result;
    }

    private Strut With(Strut strut, TieMoment tie) => strut.WithEnds(
        Ends == TieEnds.End2 ? strut.End1 : strut.End1.With(tie), Ends == TieEnds.End1 ? strut.End2 : strut.End2.With(tie));
}
