using StrutLessons.Standards;

namespace StrutLessons.Studies;

/// <summary>Which analyses a study needs.</summary>
[Flags]
internal enum StudyAnalyses
{
    Strut = 0,
    Capacity = 1,
    Limits = 2,
    Roll = 4,
    Reference = 8,
}

/// <summary>The numbers of one case, filled again and again by a worker: N, mm, MPa, rad.</summary>
internal sealed class StudyResult
{
    private readonly Dictionary<RuleChoice, double> nominal = [];

    internal string? Problem { get; set; }

    internal double Length { get; set; }

    internal double Slenderness { get; set; }

    internal double SquashLoad { get; set; }

    internal double Spring { get; set; }

    internal double Arm { get; set; }

    internal double EccentricityU { get; set; }

    internal double EccentricityV { get; set; }

    internal double CriticalLoad { get; set; }

    internal double Capacity { get; set; }

    internal double CapacityPlus { get; set; }

    internal double CapacityMinus { get; set; }

    internal string Bow { get; set; } = "";

    internal string Reason { get; set; } = "";

    internal string Corner { get; set; } = "";

    internal double Hinged { get; set; }

    internal double Rigid { get; set; }

    internal double WithRoll { get; set; }

    internal double Reference { get; set; }

    internal double Nominal(RuleChoice rule) => nominal[rule];

    internal void SetNominal(RuleChoice rule, double resistance) => nominal[rule] = resistance;
}
