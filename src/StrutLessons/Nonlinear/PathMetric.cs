namespace StrutLessons.Nonlinear;

/// <summary>Length along the path: root of the squared load change and the squared mean displacement change, both without dimension.</summary>
internal sealed class PathMetric
{
    private readonly double[] weights;
    private readonly double loadWeight;

    internal PathMetric(RodModel model)
    {
        ReferenceStrut strut = model.Strut;
        ReferenceSection section = strut.Section;
        double euler = Math.PI * Math.PI * strut.Steel.ElasticModulus * section.Iv / (strut.Length * strut.Length);
        ReferenceLoad = Math.Min(strut.SquashLoad, 2 * euler);
        loadWeight = 1 / (ReferenceLoad * ReferenceLoad);
        double scale = strut.Length / 150;
        double perNode = 1 / (scale * scale * (model.Elements + 1));
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

    internal double Norm(double[] a, double load) => Math.Sqrt(Product(a, load, a, load));
}
