using System.Globalization;

namespace StrutLessons.Calibration;

public sealed partial record BowChoice : IWorked
{
    /// <summary>For every amplitude the safe share and the scatter about 1; then the choice, if there is one.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps() =>
    [
        new("Number of ratios: every strut hinged and rigid", "n", "", "", Grid.Cases.Count, "", "given"),
        new("Share of the ratios that must be 1 or more", "p", "", "", RequiredShare, "", "chosen"),
        .. Candidates.SelectMany(c => new WorkedStep[]
        {
            new($"Bow L/{Divisor(c)}: lowest ratio", $"r_{{min,{Divisor(c)}}}", "", "", c.Ratios.Minimum, "", "the grid"),
            new($"Bow L/{Divisor(c)}: share on the safe side{(c.IsSafe ? "" : " (too small)")}", $"p_{{{Divisor(c)}}}", "", "", c.Ratios.SafeShare, "", "the grid"),
            new($"Bow L/{Divisor(c)}: scatter about 1", $"s_{{{Divisor(c)}}}", @"\sqrt{\frac{1}{n} \sum (r_i - 1)^2}", Sum(c), c.Scatter, "", "root mean square"),
        }),
        .. Chosen is { } chosen
            ? [new WorkedStep("Length over the chosen bow: safe, with the least scatter", "L/e_0", @"\text{safe and least } s", "", chosen.Divisor, "", "this comparison")]
            : Array.Empty<WorkedStep>(),
    ];

    private static string Divisor(BowCandidate c) => c.Divisor.ToString("0.##", CultureInfo.InvariantCulture);

    // Mean and deviation of the ratios give the same sum: (1/n) Σ (r − 1)² = (m − 1)² + s² (n − 1)/n.
    private static string Sum(BowCandidate c) =>
        $@"\sqrt{{({Tex.Number(c.Ratios.Mean - 1)})^2 + ({Tex.Number(c.Ratios.StandardDeviation)})^2 \cdot \frac{{{c.Ratios.Count} - 1}}{{{c.Ratios.Count}}}}}";
}
