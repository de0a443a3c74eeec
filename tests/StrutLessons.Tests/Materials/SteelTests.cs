using StrutLessons.Materials;

namespace StrutLessons.Tests.Materials;

public class SteelTests
{
    // EN 10025-2 minimum yield strengths and EN 1993-1-1:2005 Table 3.1, both from memory.
    [Theory]
    [InlineData("S235", 16, 235, 235)]
    [InlineData("S235", 17, 225, 235)]
    [InlineData("S235", 60, 215, 215)]
    [InlineData("S275", 16.1, 265, 275)]
    [InlineData("S275", 80, 245, 255)]
    [InlineData("S355", 8, 355, 355)]
    [InlineData("S355", 40, 345, 355)]
    [InlineData("S355", 41, 335, 335)]
    [InlineData("S450", 12, 450, 440)]
    [InlineData("S450", 63, 410, 410)]
    public void Yield_strength_falls_with_thickness_as_the_tables_say(string grade, double thickness, double product, double design)
    {
        SteelGrade g = SteelGrade.All.Single(x => x.Name == grade);
        Assert.Equal(product, g.ForThickness(thickness).YieldStrength);
        Assert.Equal(design, g.ForThickness(thickness, YieldRule.En1993Table3Point1).YieldStrength);
    }

    [Fact]
    public void The_product_standard_reaches_further_than_the_design_table()
    {
        Assert.Equal(275, SteelGrade.S355.ForThickness(250).YieldStrength);
        Assert.Throws<InputException>(() => SteelGrade.S355.ForThickness(81, YieldRule.En1993Table3Point1));
    }

    [Fact]
    public void The_design_table_is_never_below_the_product_standard_up_to_80_mm_except_for_S450()
    {
        foreach (SteelGrade grade in SteelGrade.All.Where(g => g != SteelGrade.S450))
        {
            for (double t = 1; t <= 80; t++)
            {
                Assert.True(grade.ForThickness(t, YieldRule.En1993Table3Point1).YieldStrength >= grade.ForThickness(t).YieldStrength);
            }
        }
    }

    [Fact]
    public void Elastic_constants_belong_together()
    {
        Steel steel = SteelGrade.S355.ForThickness(8);
        Assert.Equal(210_000, steel.ElasticModulus);
        Assert.Equal(80_769.230769, steel.ShearModulus, 5); // E/2.6
    }

    [Fact]
    public void A_custom_steel_keeps_its_own_numbers()
    {
        Steel steel = Steel.Custom("measured", 388, 205_000);
        Assert.Equal((388, 205_000, "custom"), (steel.YieldStrength, steel.ElasticModulus, steel.Source));
    }
}
