using StrutLessons.Capacity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Plates;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Tests.Shown;

public class GirderDrawingTests
{
    private static readonly Girder Ipe360 = GirderCatalogue.Find("IPE 360");
    private static readonly GirderSupport Support = new(Ipe360, 5600, 2800);

    [Fact]
    public void Girders_with_a_gusset_on_flange_or_web_are_drawn_with_readable_labels()
    {
        JointByPlates flange = GussetOnGirderFlange.HandFormula(GalleryStrut.Gusset, Support).PlateAnalysis();
        JointByPlates web = GussetOnGirderWeb.HandFormula(GalleryStrut.Gusset, Support, new WebSeat(80)).PlateAnalysis();
        foreach (JointByPlates joint in new[] { flange, web })
        {
            new SvgPage(Draw.GirderDeflection(joint.FlangesHeld!).Svg).AssertReadable();
            new SvgPage(Draw.GirderDeflection(joint.WholeGirder!).Svg).AssertReadable();
            new SvgPage(Draw.GirderProfile(joint).Svg).AssertReadable();
            Assert.NotNull(Notebook.Showing.Show(joint));
        }

        var shape = new GirderShape(360, 170, 8, 12.7);
        new SvgPage(Draw.GirderProfile([.. new[] { 60.0, 120, 173.65 }.Select(y => WebFoot.HeldFlanges(shape, 160, y))]).Svg).AssertReadable();
        Assert.Throws<InputException>(() => Draw.GirderProfile(GalleryStrut.Gusset.PlateAnalysis()));
    }

    [Theory]
    [InlineData(25)]
    [InlineData(60)]
    [InlineData(8)]
    public void Both_sides_of_a_tie_are_drawn_with_readable_labels(double lever) =>
        new SvgPage(Draw.TieSides(AdjacentTie.Constant(50_000, lever, TieSide.SameAsStrut).On(GalleryStrut.LoadPoint)).Svg).AssertReadable();

    [Fact]
    public void Bars_carry_the_numbers_of_the_results()
    {
        JointComparison both = GalleryStrut.Gusset.Compare();
        Assert.Equal(1e9 * both.Plate.Hinge.Compliance, Plot.HandAndPlates(both).Bars[1].Value, 12);
        TieComparison ties = TieComparison.Of(GalleryStrut.Strut, GalleryStrut.LoadPoint, AdjacentTie.Proportional(0.3, 25, TieSide.SameAsStrut));
        Assert.Equal(ties.OppositeSide.Load / 1e3, Plot.Ties(ties).Bars[2].Value, 12);
        GussetSegment strip = GussetSegment.Of(GalleryStrut.Gusset);
        SpringPlaceComparison places = SpringPlaceComparison.Of(ThreeSegmentStrut.Of(GalleryStrut.Strut, strip, strip));
        Assert.Equal(places.BoltLine / 1e3, Plot.SpringPlaces(places).Bars[2].Value, 12);
        foreach (BarChart chart in new[] { Plot.HandAndPlates(both), Plot.Ties(ties), Plot.SpringPlaces(places) })
        {
            new SvgPage(chart.ToDrawing().Svg).AssertReadable();
        }
    }
}
