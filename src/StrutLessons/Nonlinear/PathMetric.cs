namespace StrutLessons.Nonlinear;

/// <summary>Length along the path: root of the squared load change and the squared mean displacement change, both without dimension.</summary>
internal sealed class PathMetric
{
    private readonly double[] weights;
    private readonly double loadWeight, perNode, spacing;

    internal PathMetric(RodModel model)
    {
        ReferenceStrut strut = model.Strut;
        ReferenceSection section = strut.Section;
        double euler = Math.PI * Math.PI * strut.Steel.ElasticModulus * section.Iv / (strut.Length * strut.Length);
        ReferenceLoad = Math.Min(strut.SquashLoad, 2 * euler);
        loadWeight = 1 / (ReferenceLoad * ReferenceLoad);
        double scale = strut.Length / 150;
        spacing = strut.Length / model.Elements;
        perNode = 1 / (scale * scale * (model.Elements + 1));
        Planar offset = section.Centroid - section.ShearCentre;
        double polar = (section.Iy + section.Iz) / section.Area + offset.Dot(offset);
        weights = new double[model.Size];
        for (int i = 0; i < model.Size; i += RodModel.PerNode)
        {
            // u stays out: it is measured from end 1, and the path should not know its ends apart.
            (weights[i + 2], weights[i + 4], weights[i + 6]) = (perNode, perNode, perNode * polar);
        }
    }

    /// <summary>The load that counts as 1, N.</summary>
    internal double ReferenceLoad { get; }

    internal double Product(double[] a, double loadA, double[] b, double loadB)
    {
        double sum = loadWeight * loadA * loadB;
        for (int i = 0; i < weights.Length; i += 2)
        {
            sum += weights[i] * a[i] * b[i];
        }
        return sum;
    }

    /// <summary>Products with the unknowns' weights, in place.</summary>
    internal void Weigh(double[] a)
    {
        for (int i = 0; i < weights.Length; i++)
        {
            a[i] *= weights[i];
        }
    }

    /// <summary>
    /// Smooth, uneven displacements with shares of v, w and φ: no mode of one or two half waves along a principal axis of an angle, or in roll, is
    /// orthogonal to them.
    /// </summary>
    internal double[] SmoothShape()
    {
        double[] shape = new double[weights.Length];
        int nodes = weights.Length / RodModel.PerNode;
        for (int i = 0; i < weights.Length; i++)
        {
            double angle = Math.PI * (i / RodModel.PerNode) / (nodes - 1);
            double share = (i % RodModel.PerNode) switch { 2 => 1, 4 => -0.2, _ => 0.5 };
            shape[i] = weights[i] == 0 ? 0 : share * (Math.Sin(angle) + Math.Sin(2 * angle)) / Math.Sqrt(weights[i]);
        }
        return shape;
    }

    /// <summary>
    /// Side loads for N = 1 like those that a bow of two half waves needs, N·a·(2π/L)² per length, in the shape of a mode. The amplitude a belongs to
    /// the largest displacement of the mode; a roll counts with the polar radius of gyration.
    /// </summary>
    internal double[] SideLoads(double[] mode, double amplitude)
    {
        double wave = 2 * Math.PI / (spacing * (mode.Length / RodModel.PerNode - 1)), largest = 0;
        for (int i = 0; i < mode.Length; i++)
        {
            largest = Math.Max(largest, Math.Abs(mode[i]) * Math.Sqrt(weights[i] / perNode));
        }
        double factor = amplitude * wave * wave * spacing / (largest * perNode);
        return [.. mode.Select((m, i) => factor * weights[i] * m)];
    }

    internal double Norm(double[] a, double load) => Math.Sqrt(Product(a, load, a, load));
}
