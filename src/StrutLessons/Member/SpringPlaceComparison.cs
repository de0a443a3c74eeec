using StrutLessons.Joints;

namespace StrutLessons.Member;

/// <summary>
/// Critical load of the three-segment model beside that of a spring at the elastic centre, at the bolt line and at the weld, and of a spring at the
/// elastic centre that is softened once more by the compression. Immutable.
/// </summary>
public sealed record SpringPlaceComparison : IWorked
{
    private SpringPlaceComparison(ThreeSegmentStrut model)
    {
        Model = model;
        ThreeSegments = model.CriticalLoad;
        ElasticCentre = At(SpringPlace.ElasticCentre);
        BoltLine = At(SpringPlace.BoltLine);
        Weld = At(SpringPlace.Weld);
        GussetSegment one = model.Gusset1, two = model.Gusset2;
        CountedTwice = model.CriticalLoadOn(one.Softened, one.Length / 2, two.Softened, two.Length / 2);

        double At(SpringPlace place) => model.CriticalLoadWith(
            model.Gusset1.Hinge.PlacedAt(place, model.Gusset1.Length), model.Gusset2.Hinge.PlacedAt(place, model.Gusset2.Length));
    }

    /// <summary>The three segments.</summary>
    public ThreeSegmentStrut Model { get; }

    /// <summary>N_cr of gusset, angle, gusset, N: the measure.</summary>
    public double ThreeSegments { get; }

    /// <summary>N_cr with the springs at the elastic centres, rigid arms to the bolts, N.</summary>
    public double ElasticCentre { get; }

    /// <summary>N_cr with the same springs at the bolt lines, N: too high, unsafe.</summary>
    public double BoltLine { get; }

    /// <summary>N_cr with the same springs at the welds, N: too low.</summary>
    public double Weld { get; }

    /// <summary>N_cr with the springs at the elastic centres and reduced by the compression as well, N: the softening counted twice.</summary>
    public double CountedTwice { get; }

    /// <summary>The comparison for a check model.</summary>
    /// <param name="model">Gusset, angle, gusset.</param>
    public static SpringPlaceComparison Of(ThreeSegmentStrut model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new(model);
    }

    /// <summary>N_cr over that of the three segments: above 1 is unsafe.</summary>
    /// <param name="place">Where the spring sits.</param>
    /// <exception cref="InputException">Not a named place.</exception>
    public double RatioAt(SpringPlace place) => Guard.Named(place, "spring place") switch
    {
        SpringPlace.ElasticCentre => ElasticCentre,
        SpringPlace.BoltLine => BoltLine,
        _ => Weld,
    } / ThreeSegments;

    /// <summary>The five critical loads and their ratios.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string theory = "stability functions (Livesley and Chandler, 1956, from memory)";
        string exact = Tex.Number(ThreeSegments / 1e3);
        List<WorkedStep> steps = [new("Gusset, angle, gusset as three segments", "N_{cr,3}", @"\det K(N) = 0", "", ThreeSegments / 1e3, "kN", theory)];
        Add("Spring at the elastic centre, rigid arm to the bolts", "N_{cr,e}", ElasticCentre);
        Add("Same spring at the bolt line: unsafe above 1", "N_{cr,b}", BoltLine);
        Add("Same spring at the weld", "N_{cr,w}", Weld);
        Add("Elastic centre and a spring reduced by the compression: counted twice", "N_{cr,t}", CountedTwice);
        return steps;

        void Add(string title, string symbol, double load)
        {
            steps.Add(new(title, symbol, @"\det K(N) = 0", "", load / 1e3, "kN", theory));
            steps.Add(new($"{title}, over the three segments", $"{symbol}/N_{{cr,3}}", $@"\frac{{{symbol}}}{{N_{{cr,3}}}}",
                $@"\frac{{{Tex.Number(load / 1e3)}}}{{{exact}}}", load / ThreeSegments, "", "ratio of both models"));
        }
    }
}
