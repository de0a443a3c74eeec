using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Studies;

/// <summary>
/// Solves one case after another for one worker. Ends are remembered, and the search for the capacity runs on plain numbers, so that a case whose
/// end was seen before allocates next to nothing.
/// </summary>
internal sealed class StudySolver(StudyAnalyses needs, IReadOnlyList<RuleChoice> rules)
{
    /// <summary>More ends than this are forgotten and worked out again.</summary>
    private const int MostEnds = 4096;

    private static readonly string[] Reasons = [.. Enum.GetNames<CapacityReason>().Select(ChoiceWords.Of)];
    private static readonly string[] Corners = [.. Enum.GetNames<Corner>().Select(ChoiceWords.Of)];

    private readonly Dictionary<StudyStrut, (StudyEndParts? Parts, string? Problem)> ends = [];
    private readonly Dictionary<(Angle, ConnectedLeg), AngleSection> sections = [];
    private StudyStrut lastKey;
    private (StudyEndParts? Parts, string? Problem) last = (null, "not yet");
    private (SteelGrade? Grade, double Thickness, double? Yield, Steel? Steel) steel;

    /// <summary>The result of the last case.</summary>
    internal StudyResult Result { get; } = new();

    internal void Solve(in StudyStrut strut)
    {
        Result.Problem = null;
        (StudyEndParts? parts, string? problem) = EndOf(strut);
        if (parts is null)
        {
            Result.Problem = problem;
            return;
        }

        try
        {
            Solve(strut, parts);
        }
        catch (InputException wrong)
        {
            Result.Problem = wrong.Message;
        }
    }

    private void Solve(in StudyStrut s, StudyEndParts parts)
    {
        (AngleSection section, StrutEnd end) = parts;
        Steel material = SteelOf(s);
        double squash = section.Area * material.YieldStrength, stiffness = Math.PI * Math.PI * material.ElasticModulus * section.SecondMomentV;
        double length = s.Slenderness is { } slenderness
            ? Guard.Within(slenderness, 0.01, 20, "slenderness", "", "Give the relative slenderness about v-v, for example 1.2.") * Math.Sqrt(stiffness / squash)
            : s.Length;
        double divisor = Guard.Within(s.BowDivisor, 10, 1e9, "bow divisor", "", "300 is a bow of L/300.");
        if (!(length > 2 * end.ArmLength && double.IsFinite(length)))
        {
            // Refuses with its own words.
            _ = new Strut(section, material, length, end, end);
        }

        StudyResult r = Result;
        (r.Length, r.SquashLoad, r.Slenderness) = (length, squash, length * Math.Sqrt(squash / stiffness));
        (r.Spring, r.Arm) = (end.Spring.OutOfPlane, end.ArmLength);
        (r.EccentricityU, r.EccentricityV) = (section.AlongU(end.Eccentricity), section.AlongV(end.Eccentricity));
        double bow = length / divisor;
        if (needs.HasFlag(StudyAnalyses.Capacity))
        {
            Capacities(new StrutNumbers(section, material, length, end, end), bow, s.Bows);
        }

        if (needs > StudyAnalyses.Capacity || rules.Count > 0)
        {
            Extras(new Strut(section, material, length, end, end, BowsOf(section, bow, s.Bows)), s.BoltCount);
        }
    }

    /// <summary>Critical load once, then first yield for each bow.</summary>
    private void Capacities(in StrutNumbers straight, double bow, BowSearch search)
    {
        StudyResult r = Result;
        r.CriticalLoad = CriticalLoadSolver.Solve(straight);
        (r.Capacity, r.CapacityPlus, r.CapacityMinus) = (double.PositiveInfinity, double.NaN, double.NaN);
        r.CapacityPlus = Try(straight, bow, 0, "u+");
        r.CapacityMinus = Try(straight, -bow, 0, "u-");
        if (Guard.Named(search, "bow search") == BowSearch.FourPrincipal)
        {
            Try(straight, 0, bow, "v+");
            Try(straight, 0, -bow, "v-");
        }
    }

    private double Try(in StrutNumbers straight, double bowU, double bowV, string name)
    {
        StudyResult r = Result;
        FirstYieldLoad found = FirstYield.Find(new StrutNumbers(straight, bowU, bowV), r.CriticalLoad);
        if (found.Reason == CapacityReason.YieldsWithoutLoad)
        {
            throw StrutCapacity.YieldsWithoutLoad();
        }

        if (found.Load < r.Capacity)
        {
            (r.Capacity, r.Bow, r.Reason) = (found.Load, name, Reasons[(int)found.Reason]);
            r.Corner = found.Reason == CapacityReason.Bifurcation ? "" : Corners[found.Corner];
        }

        return found.Load;
    }

    private void Extras(Strut strut, int bolts)
    {
        StudyResult r = Result;
        if (needs.HasFlag(StudyAnalyses.Limits))
        {
            r.Hinged = StrutCapacity.LoadOf(strut.WithSprings(EndSpring.Hinged));
            r.Rigid = StrutCapacity.LoadOf(strut.WithSprings(EndSpring.Rigid));
        }

        if (needs.HasFlag(StudyAnalyses.Roll))
        {
            r.WithRoll = strut.Bows.Min(b => RollAnalysis.Capacity(ReferenceStrut.Of(strut, b, 0)).WithRoll.Load);
        }

        if (needs.HasFlag(StudyAnalyses.Reference))
        {
            double e0 = ReferenceStrut.UsualBowRatio * strut.SystemLength;
            r.Reference = Math.Min(Peak(strut, e0), Peak(strut, -e0));
        }

        var standard = rules.Count > 0 ? new StandardStrut(strut.Section, strut.Steel, strut.SystemLength, bolts) : null;
        foreach (RuleChoice rule in rules)
        {
            r.SetNominal(rule, rule.Apply(standard!).NominalResistance ?? double.NaN);
        }
    }

    /// <summary>Peak load of the reference, after a branch if that lowers it; no value if it has none.</summary>
    private static double Peak(Strut strut, double bow)
    {
        LoadPath path = ReferenceAnalysis.Follow(ReferenceStrut.Of(strut, Bow.AlongU(strut.Section, bow)), RodMesh.Fast, PathSettings.PeakOnly);
        return path.Peak is null ? double.NaN : path.LowestPeakLoad;
    }

    private static Bow[] BowsOf(AngleSection section, double bow, BowSearch search) => search == BowSearch.BothSigns
        ? [Bow.AlongU(section, bow), Bow.AlongU(section, -bow)]
        : [Bow.AlongU(section, bow), Bow.AlongU(section, -bow), Bow.AlongV(section, bow), Bow.AlongV(section, -bow)];

    private Steel SteelOf(in StudyStrut s)
    {
        if (steel.Steel is null || !ReferenceEquals(steel.Grade, s.Grade) || steel.Thickness != s.Angle.Thickness || steel.Yield != s.YieldStrength)
        {
            Steel found = s.YieldStrength is { } yield ? Steel.Custom("given", yield) : s.Grade.ForThickness(s.Angle.Thickness);
            steel = (s.Grade, s.Angle.Thickness, s.YieldStrength, found);
        }

        return steel.Steel!;
    }

    private (StudyEndParts? Parts, string? Problem) EndOf(in StudyStrut strut)
    {
        StudyStrut key = strut.EndPart();
        if (last.Problem == "not yet" || key != lastKey)
        {
            if (!ends.TryGetValue(key, out last))
            {
                last = Build(key);
                if (ends.Count >= MostEnds)
                {
                    ends.Clear();
                }

                ends.Add(key, last);
            }

            lastKey = key;
        }

        return last;
    }

    private AngleSection SectionOf(in StudyStrut key)
    {
        if (key.Angle is null || key.Grade is null || key.Girder is null)
        {
            throw new InputException("study strut", "default", "made with new StudyStrut { … }", "Start from the gallery's diagonal and change what differs.");
        }

        if (!sections.TryGetValue((key.Angle, key.Leg), out AngleSection? section))
        {
            section = key.Angle.Connected(key.Leg);
            sections.Add((key.Angle, key.Leg), section);
        }

        return section;
    }

    private (StudyEndParts? Parts, string? Problem) Build(in StudyStrut key)
    {
        try
        {
            return (StudyEndParts.Of(key, SectionOf(key)), null);
        }
        catch (InputException wrong)
        {
            return (null, wrong.Message);
        }
    }
}
