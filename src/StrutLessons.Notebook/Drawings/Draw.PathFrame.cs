using System.Collections.Immutable;
using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    private static readonly Box CurveBox = new(460, 50, 690, 290), AlongBox = new(70, 372, 690, 430);

    /// <summary>
    /// States of the path as pictures of one size, for a slider or one after the other: <c>var frames = Draw.Frames(path);</c>. The peak is among them.
    /// </summary>
    /// <param name="path">A load path followed with <see cref="PathSettings.KeepYielding"/>.</param>
    /// <param name="most">Most pictures, 2 to 200.</param>
    /// <exception cref="InputException">The yielding was not kept, or a number of pictures outside its range.</exception>
    public static IReadOnlyList<Drawing> Frames(LoadPath path, int most = 24)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (most is < 2 or > 200)
        {
            throw new InputException("most frames", $"{most}", "between 2 and 200", "24 are enough for a slider.");
        }

        int states = path.Points.Count, count = Math.Min(most, states);
        SortedSet<int> chosen = [.. Enumerable.Range(0, count).Select(i => (int)Math.Round((states - 1.0) * i / Math.Max(count - 1, 1)))];
        if (path.PeakIndex >= 0 && !chosen.Contains(path.PeakIndex))
        {
            chosen.Remove(chosen.MinBy(i => Math.Abs(i - path.PeakIndex)));
            chosen.Add(path.PeakIndex);
        }

        return [.. chosen.Select(i => PathFrame(path, i))];
    }

    /// <summary>One state of the path: the section at mid-length moved, rolled and yielded; its place on the load path; yielding along the strut.</summary>
    /// <param name="path">A load path followed with <see cref="PathSettings.KeepYielding"/>.</param>
    /// <param name="point">Index of the state.</param>
    /// <exception cref="InputException">No such state, or its yielding was not kept.</exception>
    public static Drawing PathFrame(LoadPath path, int point)
    {
        PathPoint state = State(path, point);
        YieldMap map = Yielding(state);
        ReferenceSheet sheet = ReferenceSheet.Fit(path.Strut.Section, new Box(40, 50, 380, 300), path.Points.Select(p => (p.ShearCentreMid, p.TwistMid)));
        int middle = Enumerable.Range(0, map.Stations.Count).MinBy(i => Math.Abs(map.Stations[i] - path.Strut.Length / 2));
        Picture picture = Picture.Empty(720, 490)
            .With(new Words($"N = {Figures.Text(state.Load / 1e3, 3)} kN, {RollWords(state)}{(point == path.PeakIndex ? ": the peak" : point > path.PeakIndex && path.PeakIndex >= 0 ? ": behind the peak" : "")}",
                new Paper(40, 24), Anchor.Start, 15, Bold: true))
            .With(sheet.Ring(Planar.Zero, 0, Ink.Soft, "5 4")).With(sheet.Steel(state.ShearCentreMid, state.TwistMid))
            .With(Fibres(sheet, map, middle, state.ShearCentreMid, state.TwistMid, false))
            .With(new Words("mid-length, not enlarged", new Paper(40, 322), Anchor.Start, 12, Ink.Soft))
            .With(SmallCurve(path, point)).With(YieldStrip(path, map)).With(FibreLegend(new Paper(76, 478), false));
        return new Drawing(picture, $"State {point} of the path, {Figures.Text(state.Load / 1e3)} kN{(point == path.PeakIndex ? ", the peak" : "")}",
            $"The section at mid-length has {RollWords(state)} and its centroid has moved by {Figures.Text(state.CentroidMid.Length, 3)} mm. " +
            $"{Figures.Text(100 * state.YieldedFraction, 2)} % of the strut's volume has yielded. A small chart shows the place on the load path, a strip the yielding along the strut.");
    }

    private static IEnumerable<Mark> SmallCurve(LoadPath path, int point)
    {
        double far = path.Points.Max(p => p.CentroidMid.Length), high = path.Points.Max(p => p.Load);
        Paper At(PathPoint p) => new(CurveBox.Left + CurveBox.Width * p.CentroidMid.Length / Math.Max(far, 1e-9), CurveBox.Bottom - CurveBox.Height * p.Load / Math.Max(high, 1e-9));
        yield return Stroke.Line(new(CurveBox.Left, CurveBox.Bottom), new(CurveBox.Right, CurveBox.Bottom), Ink.Soft, 1.2);
        yield return Stroke.Line(new(CurveBox.Left, CurveBox.Bottom), new(CurveBox.Left, CurveBox.Top), Ink.Soft, 1.2);
        yield return new Stroke([.. path.Points.Select(At)], Ink.Soft, 1.4, "4 4");
        if (point > 0)
        {
            yield return new Stroke([.. path.Points.Take(point + 1).Select(At)], Ink.Compression, 2.4);
        }

        yield return new Disc(At(path.Points[point]), 5, Ink.Text, 2, Ink.Sheet);
        yield return new Words("Displacement of the centroid (mm)", new Paper(CurveBox.Centre.X, CurveBox.Bottom + 36), Anchor.Middle, 12);
        yield return new Words("Load $N$ (kN)", new Paper(CurveBox.Left - 38, CurveBox.Centre.Y), Anchor.Middle, 12, Turned: true);
        yield return new Words("0", new Paper(CurveBox.Left, CurveBox.Bottom + 17), Anchor.Middle, 12);
        yield return new Words(Figures.Text(far, 3), new Paper(CurveBox.Right, CurveBox.Bottom + 17), Anchor.Middle, 12);
        yield return new Words(Figures.Text(high / 1e3, 3), new Paper(CurveBox.Left - 6, CurveBox.Top + 5), Anchor.End, 12);
    }

    /// <summary>Yielded share of the section along the strut: compression upwards, tension hatched on top of it.</summary>
    private static IEnumerable<Mark> YieldStrip(LoadPath path, YieldMap map)
    {
        double length = path.Strut.Length;
        double X(double at) => AlongBox.Left + AlongBox.Width * at / length;
        double Y(double share) => AlongBox.Bottom - AlongBox.Height * share;
        (double Pressed, double Pulled)[] shares = [.. Enumerable.Range(0, map.Stations.Count).Select(map.Shares)];
        if (shares.Any(s => s.Pressed > 0))
        {
            yield return Stroke.Area(Band(_ => 0, s => s.Pressed), Ink.Compression, opacity: 0.75);
        }

        if (shares.Any(s => s.Pulled > 0))
        {
            ImmutableArray<Paper> pulled = [.. Band(s => s.Pressed, s => s.Pressed + s.Pulled)];
            yield return Stroke.Area(pulled, Ink.Tension, opacity: 0.35);
            foreach (Mark line in Lines.Hatch(pulled, 5, 45, Ink.Tension, 0.8))
            {
                yield return line;
            }
        }

        yield return Stroke.Area([new(AlongBox.Left, AlongBox.Top), new(AlongBox.Right, AlongBox.Top), new(AlongBox.Right, AlongBox.Bottom), new(AlongBox.Left, AlongBox.Bottom)], Ink.None, Ink.Soft, 1.2);
        yield return new Words("Yielded share of the section along the strut", new Paper(AlongBox.Left, AlongBox.Top - 8), Anchor.Start, 12);
        yield return new Words("100 %", new Paper(AlongBox.Left - 6, AlongBox.Top + 8), Anchor.End, 12);
        yield return new Words("0", new Paper(AlongBox.Left - 6, AlongBox.Bottom + 4), Anchor.End, 12);
        yield return new Words("end 1", new Paper(AlongBox.Left, AlongBox.Bottom + 17), Anchor.Start, 12);
        yield return new Words($"end 2, {Figures.Text(length)} mm", new Paper(AlongBox.Right, AlongBox.Bottom + 17), Anchor.End, 12);

        IEnumerable<Paper> Band(Func<(double Pressed, double Pulled), double> from, Func<(double Pressed, double Pulled), double> to) =>
            Edge(to).Concat(Edge(from).Reverse());
        Paper[] Edge(Func<(double Pressed, double Pulled), double> share) =>
            [new(AlongBox.Left, Y(share(shares[0]))), .. shares.Select((s, i) => new Paper(X(map.Stations[i]), Y(share(s)))), new(AlongBox.Right, Y(share(shares[^1])))];
    }
}
