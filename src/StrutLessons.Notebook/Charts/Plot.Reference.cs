using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Charts;

public static partial class Plot
{
    private const string LoadAxis = "Load $N$ (kN)";

    /// <summary>Load against the displacement of the centroid at mid-length, along both principal directions.</summary>
    /// <param name="path">A load path.</param>
    public static Chart LoadDisplacement(LoadPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        Planar weak = path.Strut.Section.MinorDirection, strong = new(-weak.Z, weak.Y);
        Chart chart = Chart.Of("Load against displacement at mid-length", "Displacement of the centroid (mm)", LoadAxis)
            .LineAndPoints("along u–u (bends about the weak axis)", path.Points.Select(p => p.CentroidMid.Dot(weak)), Loads(path))
            .LineAndPoints("along v–v (bends about the strong axis)", path.Points.Select(p => p.CentroidMid.Dot(strong)), Loads(path));
        return Peaked(chart, path, p => p.CentroidMid.Dot(weak));
    }

    /// <summary>Load against the shortening between the load points.</summary>
    /// <param name="path">A load path.</param>
    public static Chart LoadShortening(LoadPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        Chart chart = Chart.Of("Load against shortening", "Shortening between the load points (mm)", LoadAxis)
            .LineAndPoints("path", path.Points.Select(p => p.Shortening), Loads(path));
        return Peaked(chart, path, p => p.Shortening);
    }

    /// <summary>Load against the roll at mid-length.</summary>
    /// <param name="path">A load path.</param>
    public static Chart LoadTwist(LoadPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        Chart chart = Chart.Of("Load against roll at mid-length", @"Roll $\varphi$ (°)", LoadAxis)
            .LineAndPoints("path", path.Points.Select(Degrees), Loads(path));
        return Peaked(chart, path, Degrees);
    }

    /// <summary>Several paths in one chart, over the whole displacement of the centroid at mid-length. A circle marks each peak.</summary>
    /// <param name="paths">Paths with their names; five or fewer stay readable.</param>
    /// <exception cref="InputException">No path.</exception>
    public static Chart Paths(params IReadOnlyList<(string Name, LoadPath Path)> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        if (paths.Count == 0)
        {
            throw new InputException("paths", "none", "at least one", "Give a name and a path.");
        }

        Chart chart = Chart.Of("Load paths", "Displacement of the centroid at mid-length (mm)", LoadAxis);
        foreach ((string name, LoadPath path) in paths)
        {
            chart = chart.Line(name, path.Points.Select(p => p.CentroidMid.Length), Loads(path));
            chart = path.Peak is { } peak ? chart.Mark(peak.CentroidMid.Length, peak.Load / 1e3, $"{Figures.Text(peak.Load / 1e3)} kN") : chart;
        }

        return chart.XFrom(0, null).YFrom(0, null);
    }

    /// <summary>Yielded share of the section along the strut, in compression and in tension.</summary>
    /// <param name="path">A load path.</param>
    /// <param name="point">Index of the state; the peak if left out.</param>
    /// <exception cref="InputException">No such state, or its yielding was not kept.</exception>
    public static Chart YieldAlong(LoadPath path, int? point = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        int index = point ?? path.PeakIndex;
        if (index < 0 || index >= path.Points.Count || path.Points[index].Yielding is not { } map)
        {
            throw new InputException("state on the path", $"{index}", "one whose yielding was kept", "Ask for the peak, or follow the path with PathSettings.Default with { KeepYielding = true }.");
        }

        (double Pressed, double Pulled)[] shares = [.. Enumerable.Range(0, map.Stations.Count).Select(map.Shares)];
        return Chart.Of($"Yielding along the strut under {Figures.Text(path.Points[index].Load / 1e3)} kN", Position, "Yielded share of the section (%)")
            .Line("in compression", map.Stations, shares.Select(s => 100 * s.Pressed)).Line("in tension", map.Stations, shares.Select(s => 100 * s.Pulled))
            .XFrom(0, path.Strut.Length).YFrom(0, null);
    }

    private static IEnumerable<double> Loads(LoadPath path) => path.Points.Select(p => p.Load / 1e3);

    private static double Degrees(PathPoint point) => point.TwistMid * 180 / Math.PI;

    private static Chart Peaked(Chart chart, LoadPath path, Func<PathPoint, double> x) =>
        path.Peak is { } peak
            // Room above the peak keeps its name clear of the path and of levels below it.
            ? chart.Mark(x(peak), peak.Load / 1e3, $"$N_u$ = {Figures.Text(peak.Load / 1e3)} kN").YFrom(0, 1.3 * peak.Load / 1e3)
            : chart.YFrom(0, null);
}
