using System.Xml.Linq;
using StrutLessons.Notebook.Tables;

namespace StrutLessons.Notebook.Tests.Shown;

public class TableTests
{
    private static readonly Table Springs = Table.Of("Springs $c$ & <hinges>", "thickness (mm)", "$c$ (kNm/rad)", "remark")
        .For([(10, 46.031), (12, 79.54)], r => [r.Item1, r.Item2, "a < b"]);

    [Fact]
    public void A_table_is_well_formed_with_head_caption_and_mathematics()
    {
        XElement table = XElement.Parse(Springs.Shown()[0].Content);
        Assert.Equal(3, table.Descendants("th").Count());
        Assert.Equal(2, table.Descendants("math").Count());
        Assert.Contains(" & <hinges>", table.Descendants("caption").Single().Value, StringComparison.Ordinal);
        Assert.Equal(["10", "46.03", "a < b", "12", "79.54", "a < b"], table.Descendants("td").Select(c => c.Value));
    }

    [Fact]
    public void A_terminal_sees_aligned_columns() =>
        Assert.Equal("Springs c & <hinges>\nthickness (mm)  c (kNm/rad)  remark\n            10        46.03   a < b\n            12        79.54   a < b", Springs.ToString());

    [Fact]
    public void A_row_that_does_not_fit_is_refused() => Assert.Throws<InputException>(() => Springs.Row(1, 2));
}
