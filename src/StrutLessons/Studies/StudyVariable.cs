using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Studies;

/// <summary>Puts a value into a case.</summary>
/// <param name="strut">The case so far.</param>
/// <param name="value">The value.</param>
internal delegate StudyStrut Setter<T>(in StudyStrut strut, T value);

/// <summary>An input that a study may vary: its name, unit and meaning, and how a value enters a case. Immutable.</summary>
public sealed record StudyVariable
{
    private readonly Setter<double>? number;
    private readonly Func<string, object>? read;
    private readonly Setter<object>? word;

    private StudyVariable(string name, string unit, string description, Setter<double> number)
    {
        (Name, Unit, Description) = (name, unit, description);
        this.number = number;
    }

    private StudyVariable(string name, string description, Func<string, object> read, Setter<object> word)
    {
        (Name, Unit, Description) = (name, "", description);
        (this.read, this.word) = (read, word);
    }

    /// <summary>The angle by its designation.</summary>
    public static StudyVariable Section { get; } = new("section", "designation of the angle", AngleCatalogue.Find, (in s, v) => s with { Angle = (Angle)v });

    /// <summary>The bolted leg: long or short.</summary>
    public static StudyVariable Leg { get; } = Choice<ConnectedLeg>("connected leg", "which leg lies on the gusset", (in s, v) => s with { Leg = (ConnectedLeg)v });

    /// <summary>Steel grade: S235, S275, S355 or S450.</summary>
    public static StudyVariable Steel { get; } = new("steel", "steel grade; its yield strength follows the thickness", ReadGrade, (in s, v) => s with { Grade = (SteelGrade)v, YieldStrength = null });

    /// <summary>Yield strength in place of the grade's.</summary>
    public static StudyVariable YieldStrength { get; } = new("yield strength", "MPa", "yield strength f_y in place of the grade's", (in s, v) => s with { YieldStrength = v });

    /// <summary>System length.</summary>
    public static StudyVariable Length { get; } = new("system length", "mm", "length from hinge to hinge", (in s, v) => s with { Length = v, Slenderness = null });

    /// <summary>Relative slenderness in place of the length.</summary>
    public static StudyVariable Slenderness { get; } = new("slenderness", "-", "relative slenderness about v-v on the system length; gives the length", (in s, v) => s with { Slenderness = v });

    /// <summary>Gauge.</summary>
    public static StudyVariable Gauge { get; } = new("gauge", "mm", "distance of the bolt line from the heel", (in s, v) => s with { Gauge = v });

    /// <summary>Gauge over the connected leg.</summary>
    public static StudyVariable GaugeShare { get; } = new("gauge share", "-", "distance of the bolt line from the heel over the connected leg", (in s, v) => s with { GaugeShare = v, Gauge = null });

    /// <summary>Bolts at each end.</summary>
    public static StudyVariable BoltCount { get; } = new("bolts", "-", "bolts at each end, in one line", (in s, v) => s with { BoltCount = Whole(v, "bolts") });

    /// <summary>Bolt diameter.</summary>
    public static StudyVariable BoltDiameter { get; } = new("bolt diameter", "mm", "diameter of the shank", (in s, v) => s with { BoltDiameter = v });

    /// <summary>Pitch.</summary>
    public static StudyVariable Pitch { get; } = new("pitch", "mm", "distance between neighbouring bolts", (in s, v) => s with { Pitch = v });

    /// <summary>Gusset thickness.</summary>
    public static StudyVariable GussetThickness { get; } = new("gusset thickness", "mm", "thickness of the gusset plate", (in s, v) => s with { GussetThickness = v });

    /// <summary>Gusset width.</summary>
    public static StudyVariable GussetWidth { get; } = new("gusset width", "mm", "full width of the gusset at the first bolt", (in s, v) => s with { GussetWidth = v });

    /// <summary>Free length of the gusset.</summary>
    public static StudyVariable FreeLength { get; } = new("free length", "mm", "from the support to the first bolt, along the strut", (in s, v) => s with { FreeLength = v });

    /// <summary>Taper of the gusset.</summary>
    public static StudyVariable Taper { get; } = new("taper", "-", "opening of each side of the gusset towards the support, mm per mm", (in s, v) => s with { Taper = v });

    /// <summary>Inclination.</summary>
    public static StudyVariable Inclination { get; } = new("inclination", "degrees", "angle between strut and support line", (in s, v) => s with { InclinationDegrees = v });

    /// <summary>How both ends are held: hinged, rigid support, girder flange, girder web, rigid.</summary>
    public static StudyVariable End { get; } = Choice<StudyEnd>("end", "how both ends are held", (in s, v) => s with { End = (StudyEnd)v });

    /// <summary>Hand formula or plates.</summary>
    public static StudyVariable Method { get; } = Choice<JointMethod>("joint method", "how the stiffness of the joint is found", (in s, v) => s with { Method = (JointMethod)v });

    /// <summary>Rigid or released in the plane of the gusset.</summary>
    public static StudyVariable InPlane { get; } = Choice<InPlaneEnd>("in-plane end", "how two or more bolts hold the strut in the plane of the gusset", (in s, v) => s with { InPlane = (InPlaneEnd)v });

    /// <summary>The girder by its designation.</summary>
    public static StudyVariable Girder { get; } = new("girder", "designation of the girder under the joint", GirderCatalogue.Find, (in s, v) => s with { Girder = (Girder)v });

    /// <summary>Span of the girder.</summary>
    public static StudyVariable GirderSpan { get; } = new("girder span", "mm", "span of the girder between points without twist", (in s, v) => s with { GirderSpan = v });

    /// <summary>Place of the joint over the span.</summary>
    public static StudyVariable Position { get; } = new("position", "-", "place of the joint over the girder's span", (in s, v) => s with { PositionShare = v });

    /// <summary>Height on the web.</summary>
    public static StudyVariable Height { get; } = new("height on web", "-", "height of the gusset over the distance of the flange mid-planes", (in s, v) => s with { HeightShare = v });

    /// <summary>Web stiffeners at the joint: yes or no.</summary>
    public static StudyVariable Stiffened { get; } = YesNo("web stiffeners", "stiffeners keep the girder's shape at the joint", (in s, v) => s with { Stiffened = (bool)v });

    /// <summary>Girder held against twist at the joint: yes or no.</summary>
    public static StudyVariable HeldAgainstTwist { get; } = YesNo("girder held", "the girder cannot twist at the joint", (in s, v) => s with { HeldAgainstTwist = (bool)v });

    /// <summary>Force of an adjacent tie over the strut's compression.</summary>
    public static StudyVariable TieRatio { get; } = new("tie ratio", "-", "force of an adjacent tie over the strut's compression", (in s, v) => s with { TieRatio = v });

    /// <summary>Constant force of an adjacent tie.</summary>
    public static StudyVariable TieForce { get; } = new("tie force", "N", "constant force of an adjacent tie", (in s, v) => s with { TieForce = v });

    /// <summary>Line of the tie.</summary>
    public static StudyVariable TieEccentricity { get; } = new("tie eccentricity", "mm", "from the gusset's mid-plane to the line of an adjacent tie", (in s, v) => s with { TieEccentricity = v });

    /// <summary>Side of the tie.</summary>
    public static StudyVariable TieSide { get; } = Choice<TieSide>("tie side", "side of the gusset on which the tie lies", (in s, v) => s with { TieSide = (TieSide)v });

    /// <summary>Bow: the length over this number.</summary>
    public static StudyVariable BowDivisor { get; } = new("bow divisor", "-", "the bow is the system length over this number", (in s, v) => s with { BowDivisor = v });

    /// <summary>Which bows are tried: both signs or four principal.</summary>
    public static StudyVariable Bows { get; } = Choice<BowSearch>("bows", "which bows are tried; the lowest capacity counts", (in s, v) => s with { Bows = (BowSearch)v });

    /// <summary>All variables.</summary>
    public static IReadOnlyList<StudyVariable> All { get; } =
    [
        Section, Leg, Steel, YieldStrength, Length, Slenderness, Gauge, GaugeShare, BoltCount, BoltDiameter, Pitch, GussetThickness, GussetWidth, FreeLength, Taper,
        Inclination, End, Method, InPlane, Girder, GirderSpan, Position, Height, Stiffened, HeldAgainstTwist, TieRatio, TieForce, TieEccentricity, TieSide, BowDivisor, Bows,
    ];

    /// <summary>Name, for example <c>gusset thickness</c>.</summary>
    public string Name { get; }

    /// <summary>Unit; "-" for a pure number, empty for words.</summary>
    public string Unit { get; }

    /// <summary>What it is.</summary>
    public string Description { get; }

    /// <summary>True if its values are numbers, false if they are words.</summary>
    public bool IsNumber => number is not null;

    /// <summary>The variable of this name.</summary>
    /// <exception cref="InputException">No variable has that name.</exception>
    public static StudyVariable Find(string name) => All.FirstOrDefault(v => v.Name == name)
        ?? throw new InputException("variable", $"'{name}'", "one of " + string.Join(", ", All.Select(v => v.Name)), "Choose one of these names.");

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    internal object Read(string text) => read is null
        ? throw new InputException(Name, $"'{text}'", $"a number in {Unit}", "Give numbers without quotes.")
        : read(text);

    internal StudyStrut Put(in StudyStrut strut, double value) => number!(strut, value);

    internal StudyStrut Put(in StudyStrut strut, object value) => word!(strut, value);

    private static StudyVariable Choice<T>(string name, string description, Setter<object> set) where T : struct, Enum =>
        new(name, description, text => ChoiceWords.Read<T>(text, name), set);

    private static StudyVariable YesNo(string name, string description, Setter<object> set) => new(name, description, text => text switch
    {
        "yes" => true,
        "no" => false,
        _ => throw new InputException(name, $"'{text}'", "yes or no", "Choose one of these words."),
    }, set);

    private static SteelGrade ReadGrade(string text) => SteelGrade.All.FirstOrDefault(g => g.Name == text)
        ?? throw new InputException("steel", $"'{text}'", "one of " + string.Join(", ", SteelGrade.All.Select(g => g.Name)), "For another strength vary the yield strength.");

    private static int Whole(double value, string name) => value == Math.Floor(value) && Math.Abs(value) < 1e6
        ? (int)value
        : throw Guard.Fail(value, name, "", "a whole number", "Give 1, 2, 3 and so on.");
}
