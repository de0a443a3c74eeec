using StrutLessons.Capacity;
using StrutLessons.Member;

namespace StrutLessons.Tests.Capacity;

public class CapacityCaseTests
{
    public static TheoryData<string> Ids => [.. StrutCase.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Critical_load_agrees_with_the_reference_cases_to_nine_digits(string id)
    {
        StrutCase c = StrutCase.Find(id);
        Strut strut = c.ToStrut();
        Closeness.Relative(c.Out("N_cr"), CriticalLoadSolver.Solve(new StrutNumbers(strut, strut.Bows[0])), 1e-9, id);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Capacity_agrees_with_the_reference_cases_to_nine_digits(string id)
    {
        StrutCase c = StrutCase.Find(id);
        Strut strut = c.ToStrut();
        var numbers = new StrutNumbers(strut, strut.Bows[0]);
        double critical = CriticalLoadSolver.Solve(numbers);
        FirstYieldLoad found = FirstYield.Find(numbers, critical);
        Closeness.Relative(c.Out("N_R"), found.Load, 1e-9, id);
    }
}
