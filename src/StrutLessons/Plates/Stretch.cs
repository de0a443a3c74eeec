namespace StrutLessons.Plates;

/// <summary>
/// A length cut into parts of size (reach/density)·(1 + x/reach), x measured from its finer end. Equal parts of ln(1 + x/reach)
/// give that; the fine mesh of a pair cuts every part of the coarse mesh in two.
/// </summary>
internal readonly record struct Stretch
{
    private readonly double _growth;
    private readonly Finer _finer;

    internal Stretch(double length, double reach, MeshDensity density, Finer finer)
    {
        Length = length;
        _finer = finer;
        double graded = finer == Finer.Both ? length / 2 : length;
        _growth = 1 + graded / reach;

        double wanted = density.Fineness / 2.0 * Math.Log(_growth) * (finer == Finer.Both ? 2 : 1);
        int coarse = length <= 0 ? 0 : Math.Max(1, (int)Math.Round(wanted));
        Parts = density.IsFine ? 2 * coarse : coarse;
    }

    /// <summary>Length, mm.</summary>
    internal double Length { get; }

    /// <summary>Number of parts.</summary>
    internal int Parts { get; }

    /// <summary>Position of a line, from 0 at the start to 1 at the end.</summary>
    internal double this[int line]
    {
        get
        {
            if (Parts == 0)
            {
                return 1;
            }

            double t = line / (double)Parts;
            return _finer switch
            {
                Finer.AtStart => Grow(t),
                Finer.AtEnd => 1 - Grow(1 - t),
                _ => t <= 0.5 ? 0.5 * Grow(2 * t) : 1 - 0.5 * Grow(2 - 2 * t),
            };
        }
    }

    /// <summary>Positions of all lines, from <paramref name="start"/> on.</summary>
    internal IEnumerable<double> Lines(double start)
    {
        for (int line = 0; line <= Parts; line++)
        {
            yield return start + Length * this[line];
        }
    }

    private double Grow(double t) => (Math.Pow(_growth, t) - 1) / (_growth - 1);
}
