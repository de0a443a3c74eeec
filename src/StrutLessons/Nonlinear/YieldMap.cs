namespace StrutLessons.Nonlinear;

/// <summary>Plastic strain of all fibres of a strut: which fibres have yielded, and where along the length.</summary>
/// <param name="Stations">Distances of the Gauss sections from end 1, mm.</param>
/// <param name="Fibres">Positions of the fibres from the section's origin, mm.</param>
/// <param name="FibreAreas">Areas of the fibres, mm².</param>
/// <param name="PlasticStrains">Plastic strain by station, then by fibre; tension positive.</param>
public sealed record YieldMap(
    IReadOnlyList<double> Stations, IReadOnlyList<Planar> Fibres, IReadOnlyList<double> FibreAreas, IReadOnlyList<IReadOnlyList<double>> PlasticStrains)
{
    /// <summary>Share of the section that has yielded at one station.</summary>
    /// <param name="station">Index into <see cref="Stations"/>.</param>
    /// <exception cref="InputException">No such station.</exception>
    public double YieldedShare(int station)
    {
        IReadOnlyList<double> strains = PlasticStrains[Guard.Within(station, 0, Stations.Count - 1, "station", "Count from 0.")];
        double yielded = 0, all = 0;
        for (int i = 0; i < strains.Count; i++)
        {
            all += FibreAreas[i];
            yielded += strains[i] != 0 ? FibreAreas[i] : 0;
        }
        return yielded / all;
    }

    /// <summary>Shares of the section that have yielded in compression and in tension at one station.</summary>
    /// <param name="station">Index into <see cref="Stations"/>.</param>
    /// <exception cref="InputException">No such station.</exception>
    public (double Compression, double Tension) Shares(int station)
    {
        IReadOnlyList<double> strains = PlasticStrains[Guard.Within(station, 0, Stations.Count - 1, "station", "Count from 0.")];
        double all = FibreAreas.Sum(), compression = 0, tension = 0;
        for (int i = 0; i < strains.Count; i++)
        {
            (compression, tension) = strains[i] < 0 ? (compression + FibreAreas[i], tension) : strains[i] > 0 ? (compression, tension + FibreAreas[i]) : (compression, tension);
        }

        return (compression / all, tension / all);
    }
}
