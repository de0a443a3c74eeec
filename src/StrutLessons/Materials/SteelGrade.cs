using System.Collections.Immutable;

namespace StrutLessons.Materials;

/// <summary>A structural steel grade whose yield strength depends on the thickness of the part. Immutable.</summary>
/// <remarks>Both tables are from memory; national annexes decide which one applies.</remarks>
public sealed record SteelGrade
{
    private SteelGrade(string name, ImmutableArray<YieldStep> product, ImmutableArray<YieldStep> design)
    {
        Name = name;
        Product = product;
        Design = design;
    }

    /// <summary>S235.</summary>
    public static SteelGrade S235 { get; } = new("S235",
        Steps((16, 235), (40, 225), (63, 215), (80, 215), (100, 215), (150, 195), (200, 185), (250, 175)), Steps((40, 235), (80, 215)));

    /// <summary>S275.</summary>
    public static SteelGrade S275 { get; } = new("S275",
        Steps((16, 275), (40, 265), (63, 255), (80, 245), (100, 235), (150, 225), (200, 215), (250, 205)), Steps((40, 275), (80, 255)));

    /// <summary>S355.</summary>
    public static SteelGrade S355 { get; } = new("S355",
        Steps((16, 355), (40, 345), (63, 335), (80, 325), (100, 315), (150, 295), (200, 285), (250, 275)), Steps((40, 355), (80, 335)));

    /// <summary>S450.</summary>
    public static SteelGrade S450 { get; } = new("S450",
        Steps((16, 450), (40, 430), (63, 410), (80, 390), (100, 380), (150, 380)), Steps((40, 440), (80, 410)));

    /// <summary>The four grades from the weakest to the strongest.</summary>
    public static IReadOnlyList<SteelGrade> All { get; } = [S235, S275, S355, S450];

    /// <summary>Designation.</summary>
    public string Name { get; }

    private ImmutableArray<YieldStep> Product { get; }

    private ImmutableArray<YieldStep> Design { get; }

    /// <summary>The steel of a part of this thickness.</summary>
    /// <param name="thickness">Nominal thickness of the part, mm; for an angle the thickness of its legs.</param>
    /// <param name="rule">Which table: EN 10025-2 unless chosen otherwise.</param>
    /// <exception cref="InputException">The thickness is not positive or beyond the last row of the table.</exception>
    public Steel ForThickness(double thickness, YieldRule rule = YieldRule.En10025Part2)
    {
        bool byProduct = Guard.Named(rule, "yield rule") == YieldRule.En10025Part2;
        ImmutableArray<YieldStep> table = byProduct ? Product : Design;
        string source = (byProduct ? "EN 10025-2, R_eH by thickness" : "EN 1993-1-1:2005 Table 3.1") + " (from memory)";
        double largest = table[^1].UpTo;
        if (!(thickness > 0 && thickness <= largest))
        {
            throw Guard.Fail(thickness, "thickness t", "mm", $"greater than 0 and at most {Guard.Text(largest)} mm for {Name} ({source})",
                "Give the thickness in mm, or use Steel.Custom with a known yield strength.");
        }

        return new Steel(Name, table.First(s => thickness <= s.UpTo).Yield, Steel.StandardElasticModulus, source);
    }

    private static ImmutableArray<YieldStep> Steps(params (double UpTo, double Yield)[] rows) =>
        [.. rows.Select(r => new YieldStep(r.UpTo, r.Yield))];

    private readonly record struct YieldStep(double UpTo, double Yield);
}
