namespace StrutLessons.Tests.House;

/// <summary>Every wrong input is refused with a message that names the field, the value, the allowed range and what to do.</summary>
public class BadInputTests
{
    private static readonly Dictionary<string, BadInput> Rows = BadInputTable.All.ToDictionary(r => r.Name);

    public static TheoryData<string> Names => [.. Rows.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_wrong_input_is_refused_with_field_value_range_and_advice(string name)
    {
        BadInput row = Rows[name];
        InputException e = Assert.Throws<InputException>(row.Act);
        Assert.Equal(row.Field, e.Field);
        foreach (string part in new[] { e.Field, e.Value, e.Allowed, e.Advice })
        {
            Assert.False(string.IsNullOrWhiteSpace(part));
            Assert.Contains(part, e.Message, StringComparison.Ordinal);
        }

        Assert.All(row.Fragments, f => Assert.Contains(f, e.Message, StringComparison.Ordinal));
    }
}
