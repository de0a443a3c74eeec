using System.Xml.Linq;
using StrutLessons.Notebook.Tables;
using StrutLessons.Standards;

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
        Assert.Contains(" & <hinges>", table.Elements("div").Single().Value, StringComparison.Ordinal);
        Assert.Equal(["10", "46.03", "a < b", "12", "79.54", "a < b"], table.Descendants("td").Select(c => c.Value));
    }

    [Fact]
    public void Numbers_with_a_percent_sign_names_of_angles_and_of_axes_stay_in_one_line()
    {
        XElement table = XElement.Parse(Table.Of("t", "a", "b", "c").Row("97.9 %", "L 100x100x10", "about v–v here").Shown()[0].Content);
        Assert.Equal(["97.9\u00a0%", "L\u00a0100x100x10", "about v\u2060–\u2060v here"], table.Descendants("td").Select(c => c.Value));
    }

    [Fact]
    public void A_terminal_sees_aligned_columns() =>
        Assert.Equal("Springs c & <hinges>\nthickness (mm)  c (kNm/rad)  remark\n            10        46.03   a < b\n            12        79.54   a < b", Springs.ToString());

    [Fact]
    public void The_numbers_of_a_column_agree_in_their_decimals_within_four_significant_digits()
    {
        Table table = Table.Of("t", "a", "b", "c", "d").For<double[]>(
            [[355, 0.5, 8, 0], [354.71, 1.084, 10, 12.5], [1234.5, 12.3456, 12, 2e-5], [double.NaN, 0.98, 16, 1e9]],
            r => [r[0], r[1], r[2], r[3]]);
        string[] cells = [.. XElement.Parse(table.Shown()[0].Content).Descendants("td").Select(c => c.Value)];
        Assert.Equal(
            ["355.0", "0.500", "8", "0", "354.7", "1.084", "10", "12.5", "1234", "12.35", "12", "2·10⁻⁵", "–", "0.980", "16", "1·10⁹"],
            cells);
    }

    [Fact]
    public void Refused_rules_stand_in_the_table_without_a_number()
    {
        Table table = StandardTables.Resistances(StandardComparison.Of(GalleryStrut.Strut, boltsPerEnd: 1, RuleChoice.Pick("AISC a", "IS hinged")));
        Assert.Equal(["AISC 360-22, E5(a)", "refused"], [table.Rows[0][0], table.Rows[0][5]]);
        Assert.Contains("–", table.ToString().Split('\n')[2], StringComparison.Ordinal);
        Assert.True((double)table.Rows[1][4] > (double)table.Rows[1][6]);
    }

    [Fact]
    public void The_scope_of_a_rule_tells_met_unmet_and_assumed_conditions_apart()
    {
        StandardResult result = Aisc360.SingleAngle(new StandardStrut(GalleryStrut.Section, GalleryStrut.Strut.Steel, 2150, 1));
        string[] words = [.. StandardTables.Scope(result).Rows.Select(r => (string)r[3])];
        Assert.Equal(["no", "yes", "yes", "yes", "you must know", "you must know"], words);
    }

    [Fact]
    public void A_row_that_does_not_fit_is_refused() => Assert.Throws<InputException>(() => Springs.Row(1, 2));
}
