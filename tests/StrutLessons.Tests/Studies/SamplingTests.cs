using StrutLessons.Studies;

namespace StrutLessons.Tests.Studies;

/// <summary>Sampling and what is concluded from samples.</summary>
public class SamplingTests
{
    private static readonly Study Three = Study.Of(new StudyStrut())
        .Between(StudyVariable.Slenderness, 0, 1).Between(StudyVariable.GussetThickness, 0, 1).Between(StudyVariable.FreeLength, 0, 1);

    // Halton, 1960: the first bᵏ points of the base b lie one in each interval of length b⁻ᵏ, and a permutation of digits keeps that.
    [Theory]
    [InlineData(0, 64)]
    [InlineData(1, 81)]
    [InlineData(2, 125)]
    public void Low_discrepancy_puts_one_point_into_each_interval(int variable, int count)
    {
        double[] shares = Draw(count, variable, StudySampling.LowDiscrepancy);
        Assert.Equal(Enumerable.Range(0, count), shares.Select(s => (int)(s * count)).Order());
    }

    [Fact]
    public void Low_discrepancy_integrates_better_than_chance()
    {
        // ∫∫∫ 8xyz = 1 over the unit cube.
        double Error(StudySampling sampling) => Math.Sqrt(Enumerable.Range(1, 20).Average(key => Math.Pow(Enumerable.Range(0, 1000).Average(i =>
        {
            StudyStrut s = Three.Sample(1000, (ulong)key, sampling).Case(i + 1);
            return 8 * s.Slenderness!.Value * s.GussetThickness * s.FreeLength;
        }) - 1, 2)));
        double random = Error(StudySampling.Random);
        // The variance of 8xyz is (4/3)³ − 1, so 1000 random points miss by √(1.370/1000) = 0.037.
        Assert.InRange(random, 0.02, 0.055);
        Assert.True(Error(StudySampling.LowDiscrepancy) < 0.25 * random);
    }

    [Fact]
    public void Random_shares_are_even_and_uncorrelated()
    {
        double[] a = Draw(4000, 0, StudySampling.Random), b = Draw(4000, 1, StudySampling.Random);
        // χ² with 15 degrees of freedom stays below 37.7 in 999 of 1000 cases (any table of χ²).
        double chi = a.GroupBy(v => (int)(16 * v)).Sum(g => Math.Pow(g.Count() - 250, 2) / 250);
        Assert.InRange(chi, 0, 37.7);
        Assert.InRange(a.Zip(b, (x, y) => (x - 0.5) * (y - 0.5)).Average() * 12, -0.06, 0.06);
        Assert.InRange(a.Skip(1).Zip(a, (x, y) => (x - 0.5) * (y - 0.5)).Average() * 12, -0.06, 0.06);
    }

    [Fact]
    public void The_same_key_draws_the_same_cases() =>
        Assert.Equal(Draw(50, 0, StudySampling.Random), Draw(50, 0, StudySampling.Random));

    // Ishigami and Homma, 1990: a = 7, b = 0.1 give the first-order shares 0.3139, 0.4424, 0 and 0.2437 for the pair of the first and third.
    [Fact]
    public void Shares_of_the_variance_are_those_of_the_Ishigami_function()
    {
        StudyTable table = TableOf("y", Enumerable.Range(1, 60_000).Select(i =>
        {
            StudyStrut s = Three.Sample(60_000, 5).Case(i);
            double X(double share) => Math.PI * (2 * share - 1);
            (double a, double b, double c) = (X(s.Slenderness!.Value), X(s.GussetThickness), X(s.FreeLength));
            return (a, b, c, Math.Sin(a) + 7 * Math.Pow(Math.Sin(b), 2) + 0.1 * Math.Pow(c, 4) * Math.Sin(a));
        }));
        IReadOnlyList<VarianceShare> shares = Sensitivity.Shares(table, "y", "a", "b", "c");
        double Of(string one, string? two) => shares.Single(s => s.First == one && s.Second == two).Share;
        // Classes of 1/16 of the range see the functions in steps: 2 % of the variance at most here.
        Assert.InRange(Of("a", null), 0.294, 0.334);
        Assert.InRange(Of("b", null), 0.415, 0.455);
        Assert.InRange(Of("c", null), -0.01, 0.01);
        Assert.InRange(Of("a", "c"), 0.22, 0.26);
        Assert.InRange(Of("a", "b"), -0.02, 0.02);
    }

    [Fact]
    public void One_at_a_time_sees_no_interaction_and_the_shares_do()
    {
        Study study = Study.Of(new StudyStrut()).Vary(StudyVariable.GussetThickness, 6, 8, 10, 12, 16, 20).Range(StudyVariable.Length, 1000, 4000, 7);
        OneAtATime swings = Sensitivity.OneAtATime(study, StudyQuantity.Capacity);
        Assert.Equal(["system length", "gusset thickness"], swings.Swings.Select(s => s.Variable.Name));
        StudyTable table = study.Run();
        double first = table.Numbers("capacity")[0];
        Closeness.Relative(study.Find(StudyQuantity.Capacity).Run().Numbers("capacity")[0], first, 1e-12, "base");
        IReadOnlyList<VarianceShare> shares = Sensitivity.Shares(table, "capacity", "gusset thickness", "system length");
        // Three shares of a full grid of two factors are the whole variance.
        Closeness.Relative(1, shares.Sum(s => s.Share), 1e-12, "sum");
        Assert.True(shares.Single(s => s.Second is not null).Share > 0.005);
    }

    private static double[] Draw(int count, int variable, StudySampling sampling) => [.. Enumerable.Range(1, count).Select(i =>
    {
        StudyStrut s = Three.Sample(count, 7, sampling).Case(i);
        return variable switch { 0 => s.Slenderness!.Value, 1 => s.GussetThickness, _ => s.FreeLength };
    })];

    private static StudyTable TableOf(string name, IEnumerable<(double A, double B, double C, double Y)> rows)
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory().FullName, "table.csv");
        File.WriteAllLines(path, rows.Select(r => FormattableString.Invariant($"{r.A},{r.B},{r.C},{r.Y}")).Prepend($"a (-),b (-),c (-),{name} (-)"));
        return StudyTable.Read(path);
    }
}
