using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    /// <summary>Where the section has yielded at one place: every fibre to scale, filled in compression, a ring in tension, a dot if still elastic.</summary>
    /// <param name="path">A load path with a peak, or followed with <see cref="PathSettings.KeepYielding"/>.</param>
    /// <param name="x">Place along the bar, mm; mid-length if left out.</param>
    /// <param name="point">Index of the state on the path; the peak if left out.</param>
    /// <exception cref="InputException">x outside the bar, no such state, or its yielding was not kept.</exception>
    public static Drawing YieldedSection(LoadPath path, double? x = null, int? point = null)
    {
        PathPoint state = State(path, point);
        YieldMap map = Yielding(state);
        double length = path.Strut.Length, at = x ?? length / 2;
        int station = at >= 0 && at <= length
            ? Enumerable.Range(0, map.Stations.Count).MinBy(i => Math.Abs(map.Stations[i] - at))
            : throw new InputException("x", $"{at} mm", $"between 0 and {length} mm", "Give a place along the bar between the first bolts.");
        ReferenceSheet sheet = ReferenceSheet.Fit(path.Strut.Section, new Box(170, 40, 510, 380), [(Planar.Zero, 0)]);
        Picture picture = Picture.Empty(680, 470).With(sheet.Steel(Planar.Zero, 0, Ink.Sheet)).With(Fibres(sheet, map, station, Planar.Zero, 0, true));
        picture = picture.With(FibreLegend(new Paper(60, 430), true));
        (double pressed, double pulled) = map.Shares(station);
        picture = picture.With(new Words($"x = {Figures.Text(map.Stations[station])} mm of {Figures.Text(length)} mm, N = {Figures.Text(state.Load / 1e3)} kN", new Paper(60, 456), Anchor.Start, 13));
        return new Drawing(picture, $"Yielded fibres under {Figures.Text(state.Load / 1e3)} kN",
            $"The section at x = {Figures.Text(map.Stations[station])} mm, fibre by fibre. {Figures.Text(100 * pressed, 2)} % of its area has yielded in compression, " +
            $"{Figures.Text(100 * pulled, 2)} % in tension; the rest is elastic.");
    }

    /// <summary>The state asked for, or the peak.</summary>
    private static PathPoint State(LoadPath path, int? point)
    {
        ArgumentNullException.ThrowIfNull(path);
        int index = point ?? path.PeakIndex;
        return index >= 0 && index < path.Points.Count
            ? path.Points[index]
            : throw new InputException("state on the path", point is null ? "no peak" : $"{point}", $"0 to {path.Points.Count - 1}", "Count the states from 0; a path without a peak needs the index of a state.");
    }

    private static YieldMap Yielding(PathPoint state) => state.Yielding
        ?? throw new InputException("yielding", "not kept at this state", "kept", "Follow the path with PathSettings.Default with { KeepYielding = true }.");

    /// <summary>Fibres as circles of their own area.</summary>
    private static IEnumerable<Mark> Fibres(ReferenceSheet sheet, YieldMap map, int station, Planar shift, double roll, bool elastic)
    {
        for (int i = 0; i < map.Fibres.Count; i++)
        {
            double strain = map.PlasticStrains[station][i], radius = Math.Max(1.2, 0.92 * sheet.Scale * Math.Sqrt(map.FibreAreas[i] / Math.PI));
            if (strain != 0 || elastic)
            {
                yield return Fibre(sheet.At(map.Fibres[i], shift, roll), strain, radius);
            }
        }
    }

    private static Disc Fibre(Paper at, double strain, double radius) => strain switch
    {
        < 0 => new Disc(at, radius, Ink.None, 0, Ink.Compression),
        > 0 => new Disc(at, Math.Max(radius - 0.7, 0.8), Ink.Tension, 1.6, Ink.Sheet),
        _ => new Disc(at, Math.Min(1.1, radius), Ink.None, 0, Ink.Soft),
    };

    private static IEnumerable<Mark> FibreLegend(Paper at, bool elastic)
    {
        yield return Fibre(at, -1, 6);
        yield return new Words("yielded in compression", at + new Paper(14, 4), Anchor.Start, 13);
        yield return Fibre(at + new Paper(190, 0), 1, 6);
        yield return new Words("yielded in tension", at + new Paper(204, 4), Anchor.Start, 13);
        if (elastic)
        {
            yield return Fibre(at + new Paper(350, 0), 0, 6);
            yield return new Words("elastic", at + new Paper(360, 4), Anchor.Start, 13);
        }
    }
}
