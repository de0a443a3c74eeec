using System.Xml.Linq;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Tests.Shown;

public class DrawingTests
{
    private const SectionParts Everything = (SectionParts)63;

    [Fact]
    public void Every_angle_of_the_catalogue_is_drawn_with_readable_labels()
    {
        foreach (Angle angle in AngleCatalogue.All)
        {
            new SvgPage(Draw.Section(angle.Connected()).Svg).AssertReadable();
            new SvgPage(Draw.Section(angle.Connected(ConnectedLeg.Short), Everything).Svg).AssertReadable();
        }
    }

    [Fact]
    public void Every_angle_that_takes_a_bolt_shows_its_eccentricity_with_readable_labels()
    {
        int drawn = 0;
        foreach (Angle angle in AngleCatalogue.All)
        {
            foreach (ConnectedLeg leg in Enum.GetValues<ConnectedLeg>())
            {
                AngleSection section = angle.Connected(leg);
                double gauge = 0.55 * section.ConnectedLength, bolt = Math.Floor(0.2 * section.ConnectedLength);
                if (bolt < 6 || bolt > 30 || gauge + 1.2 * (bolt + 3) > section.ConnectedLength || gauge < section.Thickness + angle.RootRadius + bolt / 2 + 2)
                {
                    continue;
                }

                var bolts = new BoltLine(gauge, 1, bolt, 0, 60);
                foreach (GussetFace face in Enum.GetValues<GussetFace>())
                {
                    new SvgPage(Draw.Eccentricity(LoadPoint.Of(section, bolts, 1.2 * section.Thickness, face)).Svg).AssertReadable();
                    drawn++;
                }
            }
        }

        Assert.InRange(drawn, 300, 700);
    }

    [Theory]
    [InlineData(90, 0)]
    [InlineData(60, 0.2)]
    [InlineData(45, 0)]
    [InlineData(75, 0.5)]
    public void Gussets_square_and_inclined_are_drawn_with_readable_labels(double inclination, double taper)
    {
        Gusset plate = Gusset.Symmetric(10, 160, 130, 40, taper, inclination);
        GussetFormula formula = GussetOnRigidSupport.HandFormula(plate, GalleryStrut.Section, GalleryStrut.Bolts);
        new SvgPage(Draw.Gusset(formula, GalleryStrut.Bolts).Svg).AssertReadable();
        new SvgPage(Draw.GussetBending(formula).Svg).AssertReadable();
        var panel = new Plates.GussetPlate(10, 80, 80, 80, 130, 60, 40, plate.Inclination, taper);
        new SvgPage(Draw.PlateDeflection(Plates.PlateOnRigidSupport.Flexibility(panel)).Svg).AssertReadable();
    }

    public static TheoryData<double, double, double> Springs => new()
    {
        { 0, 0, 0 }, { double.PositiveInfinity, 46e6, 30 }, { 0, 46e6, 30 }, { double.PositiveInfinity, double.PositiveInfinity, 0 },
    };

    [Theory]
    [MemberData(nameof(Springs))]
    public void Deflected_shapes_and_stresses_are_drawn_with_readable_labels(double inPlane, double outOfPlane, double arm)
    {
        Strut strut = GalleryStrut.Strut.WithEnds(
            new StrutEnd(new Planar(22, 28), new EndSpring(inPlane, outOfPlane), arm), new StrutEnd(new Planar(-10, 20), new EndSpring(outOfPlane, inPlane), arm));
        foreach (Bow bow in strut.Bows)
        {
            SecondOrderSolution solution = SecondOrderSolution.Of(strut, 0.6 * CriticalLoad.Of(strut), bow);
            new SvgPage(Draw.Shape(solution).Svg).AssertReadable();
            new SvgPage(Draw.ShapeInSpace(solution).Svg).AssertReadable();
            foreach (double part in (double[])[0, 0.3, 0.5, 1])
            {
                new SvgPage(Draw.StressOverSection(solution, part * strut.BarLength).Svg).AssertReadable();
            }
        }
    }

    [Fact]
    public void Corner_stresses_in_the_drawing_are_those_of_the_solution()
    {
        Drawing drawing = Draw.StressOverSection(GalleryStrut.Solution, GalleryStrut.Strut.BarLength / 2);
        Assert.Contains(new SvgPage(drawing.Svg).Texts, t => t.Text == "−355 MPa");
        Assert.Contains("outstanding toe, inner −355 MPa", drawing.AltText, StringComparison.Ordinal);
    }

    [Fact]
    public void The_load_point_sits_to_scale()
    {
        // c_y and y_e are measured in the SVG against the connected leg, whose length is known.
        var page = new SvgPage(Draw.Eccentricity(GalleryStrut.LoadPoint).Svg);
        XNamespace ns = "http://www.w3.org/2000/svg";
        (double X, double Y)[] Points(XElement e) => [.. e.Attribute("points")!.Value.Split(' ').Select(p => (double.Parse(p.Split(',')[0]), double.Parse(p.Split(',')[1])))];
        var outline = Points(page.Root.Descendants(ns + "polygon").Single(e => e.Attribute("class")!.Value.Contains("sl-f-steel", StringComparison.Ordinal)));
        double left = outline.Min(p => p.X), top = outline.Min(p => p.Y), scale = (outline.Max(p => p.X) - left) / 80;
        XElement load = page.Root.Descendants(ns + "circle").Single(e => e.Attribute("class")!.Value.Contains("sl-s-force", StringComparison.Ordinal));
        Assert.Equal(45, (double.Parse(load.Attribute("cx")!.Value) - left) / scale, 2);
        Assert.Equal(-5, (double.Parse(load.Attribute("cy")!.Value) - top) / scale, 2);
    }

    [Fact]
    public void A_name_with_markup_is_escaped()
    {
        var angle = new Angle("L <50> & \"5\"", 50, 50, 5, 7, 3.5);
        string svg = Draw.Section(angle.Connected()).Svg;
        Assert.Contains("L &lt;50&gt; &amp;", svg, StringComparison.Ordinal);
        new SvgPage(svg).AssertReadable();
    }

    [Fact]
    public void The_page_style_knows_every_class_a_drawing_uses()
    {
        string svg = string.Concat(
            Draw.Section(GalleryStrut.Section, Everything).Svg, Draw.Eccentricity(GalleryStrut.LoadPoint).Svg, Draw.Gusset(GalleryStrut.Gusset, GalleryStrut.Bolts).Svg,
            Draw.GussetBending(GalleryStrut.Gusset).Svg, Draw.Shape(GalleryStrut.Solution).Svg, Draw.ShapeInSpace(GalleryStrut.Solution).Svg, Draw.StressOverSection(GalleryStrut.Solution, 0).Svg);
        IEnumerable<string> used = svg.Split("class=\"").Skip(1).SelectMany(s => s[..s.IndexOf('"', StringComparison.Ordinal)].Split(' ')).Distinct();
        Assert.All(used, name => Assert.Contains($".{name}{{", Palette.PageCss, StringComparison.Ordinal));
    }

    [Fact]
    public void Inks_keep_their_contrast_on_light_and_on_dark_paper()
    {
        // WCAG 2.2, 1.4.3: 4.5 to 1 for text; 1.4.11: 3 to 1 for lines that carry meaning.
        foreach (string name in (string[])["text", "soft", "force", "compression", "tension", "major", "minor", "fifth"])
        {
            string[] shades = [.. Palette.PageCss.Split($"--sl-{name}:").Skip(1).Take(2).Select(s => s[1..7])];
            Assert.True(Contrast(shades[0], "ffffff") >= 4.5, $"{name} on white");
            Assert.True(Contrast(shades[1], "15191c") >= 4.5, $"{name} on dark");
        }
    }

    private static double Contrast(string a, string b)
    {
        double la = Luminance(a), lb = Luminance(b);
        return (Math.Max(la, lb) + 0.05) / (Math.Min(la, lb) + 0.05);
    }

    private static double Luminance(string hex)
    {
        double Channel(int at)
        {
            double c = Convert.ToInt32(hex.Substring(at, 2), 16) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Channel(0) + 0.7152 * Channel(2) + 0.0722 * Channel(4);
    }
}
