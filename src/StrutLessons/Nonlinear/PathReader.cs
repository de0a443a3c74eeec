namespace StrutLessons.Nonlinear;

/// <summary>Reads what people want to know out of an accepted state of the rod.</summary>
internal static class PathReader
{
    internal static PathPoint Read(RodModel model, PathState state, bool keepYielding)
    {
        double[] d = state.D;
        RodPlace middle = model.Place(model.Elements / 2, 0, d);
        (double yielded, double largest) = Yielded(model);
        var shape = new RodStation[model.Elements + 1];
        double spacing = model.Strut.Length / model.Elements;
        for (int i = 0; i <= model.Elements; i++)
        {
            int node = i * RodModel.PerNode;
            shape[i] = new RodStation(i * spacing, new Planar(d[node + 2], d[node + 4]), d[node + 6]);
        }
        int end = model.Size - RodModel.PerNode;
        return new PathPoint(
            state.Load, model.Shortening(d), middle.ShearCentre, middle.Centroid, middle.Roll,
            new Planar(d[3], d[5]), new Planar(d[end + 3], d[end + 5]),
            state.NegativePivots, yielded, largest, shape, keepYielding ? Map(model) : null);
    }

    private static (double Fraction, double Largest) Yielded(RodModel model)
    {
        FibreSection section = model.Section;
        double volume = 0, largest = 0;
        for (int station = 0; station < model.StationCount; station++)
        {
            ReadOnlySpan<double> strains = model.Committed.AsSpan(station * section.Padded, section.Count);
            for (int i = 0; i < strains.Length; i++)
            {
                if (strains[i] != 0)
                {
                    volume += section.Area(i) * model.StationWeight(station);
                    largest = Math.Max(largest, Math.Abs(strains[i]));
                }
            }
        }
        return (volume / (section.TotalArea * model.Strut.Length), largest);
    }

    private static YieldMap Map(RodModel model)
    {
        FibreSection section = model.Section;
        Planar origin = model.Strut.Section.ShearCentre;
        int[] fibres = [.. Enumerable.Range(0, section.Count)], stations = [.. Enumerable.Range(0, model.StationCount)];
        return new YieldMap(
            [.. stations.Select(model.StationPlace)],
            [.. fibres.Select(i => origin + section.Position(i))],
            [.. fibres.Select(section.Area)],
            [.. stations.Select(s => (IReadOnlyList<double>)model.Committed.AsSpan(s * section.Padded, section.Count).ToArray())]);
    }
}
