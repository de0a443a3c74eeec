namespace StrutLessons.Plates;

/// <summary>A deflected plate, ready to be drawn as contours or as a surface.</summary>
/// <param name="X">Node coordinates along the support line or along the girder, mm.</param>
/// <param name="Y">Node coordinates away from the support line or up the girder, mm.</param>
/// <param name="Deflection">Deflection of the nodes out of the plate's plane, in the unit that the owner of the field states.</param>
/// <param name="Quads">The elements, the rigid patch included.</param>
public sealed record PlateField(
    IReadOnlyList<double> X, IReadOnlyList<double> Y, IReadOnlyList<double> Deflection, IReadOnlyList<PlateQuad> Quads)
{
    /// <summary>The deflections of a range of nodes of a mesh.</summary>
    /// <param name="nodes">All nodes.</param>
    /// <param name="range">Which of them belong to this plate.</param>
    /// <param name="quads">Node numbers, four per element.</param>
    /// <param name="displacements">Three displacements per node.</param>
    internal static PlateField Of(
        List<(double X, double Y)> nodes, Range range, IReadOnlyList<int> quads, ReadOnlySpan<double> displacements)
    {
        var (first, count) = range.GetOffsetAndLength(nodes.Count);
        var (x, y, w) = (new double[count], new double[count], new double[count]);
        for (int k = 0; k < count; k++)
        {
            (x[k], y[k]) = nodes[first + k];
            w[k] = displacements[3 * (first + k) + PlateModel.Deflection];
        }

        var elements = new PlateQuad[quads.Count / 4];
        for (int e = 0; e < elements.Length; e++)
        {
            elements[e] = new(quads[4 * e] - first, quads[4 * e + 1] - first, quads[4 * e + 2] - first, quads[4 * e + 3] - first);
        }

        return new(x, y, w, elements);
    }
}
