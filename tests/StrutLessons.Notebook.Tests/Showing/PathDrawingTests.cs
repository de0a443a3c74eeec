using System.Xml.Linq;
using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Tests.Shown;

public class PathDrawingTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    [Fact]
    public void Every_frame_of_the_path_is_readable_and_the_peak_is_among_them()
    {
        IReadOnlyList<Drawing> frames = Draw.Frames(CalibrationStruts.Path, 6);
        Assert.Equal(6, frames.Count);
        Assert.Single(frames, f => f.Title.EndsWith("the peak", StringComparison.Ordinal));
        Assert.All(frames, f => new SvgPage(f.Svg).AssertReadable());
        Assert.True(Draw.Frames(CalibrationStruts.Path, 200).Count == CalibrationStruts.Path.Points.Count);
    }

    [Fact]
    public void The_yielded_section_draws_every_fibre_and_fills_those_yielded_in_compression()
    {
        YieldMap map = CalibrationStruts.Path.Peak!.Yielding!;
        var page = new SvgPage(Draw.YieldedSection(CalibrationStruts.Path).Svg);
        page.AssertReadable();
        int middle = Enumerable.Range(0, map.Stations.Count).MinBy(i => Math.Abs(map.Stations[i] - CalibrationStruts.Path.Strut.Length / 2));
        XElement[] circles = [.. page.Root.Descendants(Ns + "circle")];
        // Three more stand in the legend.
        Assert.Equal(map.Fibres.Count + 3, circles.Length);
        Assert.Equal(map.PlasticStrains[middle].Count(s => s < 0) + 1, circles.Count(c => c.Attribute("class")!.Value == "sl-f-compression"));
        Assert.Equal(map.PlasticStrains[middle].Count(s => s > 0) + 1, circles.Count(c => c.Attribute("class")!.Value.Contains("sl-s-tension", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_rolled_section_is_moved_and_turned_to_the_scale_of_the_section()
    {
        LoadPath path = CalibrationStruts.Path;
        var page = new SvgPage(Draw.RollingSection(path).Svg);
        page.AssertReadable();
        XElement[] dots = [.. page.Root.Descendants(Ns + "circle")];
        (double X, double Y)[] at = [.. dots.Select(d => (Number(d, "cx"), Number(d, "cy")))];
        (double X, double Y)[] ring = [.. page.Root.Descendants(Ns + "polygon").Single(p => p.Attribute("stroke-dasharray") is not null).Attribute("points")!.Value.Split(' ')
            .Select(p => p.Split(',')).Select(p => (double.Parse(p[0], System.Globalization.CultureInfo.InvariantCulture), double.Parse(p[1], System.Globalization.CultureInfo.InvariantCulture)))];
        double scale = (ring.Max(p => p.X) - ring.Min(p => p.X)) / 80;
        Assert.Equal(path.Peak!.CentroidMid.Length, Math.Sqrt(Math.Pow(at[1].X - at[0].X, 2) + Math.Pow(at[1].Y - at[0].Y, 2)) / scale, 0.1);
    }

    [Fact]
    public void What_was_not_kept_or_does_not_exist_is_told()
    {
        LoadPath plain = ReferenceAnalysis.Follow(CalibrationStruts.Path.Strut, RodMesh.Fast);
        Assert.Contains("KeepYielding", Assert.Throws<InputException>(() => Draw.PathFrame(plain, 1)).Message, StringComparison.Ordinal);
        Assert.Throws<InputException>(() => Draw.RollingSection(plain, 1000));
        Assert.Throws<InputException>(() => Draw.YieldedSection(plain, -5));
        Assert.Throws<InputException>(() => Draw.Frames(CalibrationStruts.Path, 1));
        Assert.Throws<InputException>(() => Charts.Plot.YieldAlong(plain, 1));
    }

    private static double Number(XElement e, string name) => double.Parse(e.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);
}
