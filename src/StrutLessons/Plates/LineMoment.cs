namespace StrutLessons.Plates;

/// <summary>An even line moment along a row of nodes.</summary>
internal static class LineMoment
{
    /// <summary>The part of the total that each node takes; the slope across the line varies linearly between nodes.</summary>
    internal static double[] Shares(IReadOnlyList<int> nodes, PlateMesh mesh)
    {
        double total = mesh.Nodes[nodes[^1]].X - mesh.Nodes[nodes[0]].X;
        var shares = new double[nodes.Count];
        for (int k = 0; k + 1 < nodes.Count; k++)
        {
            double half = (mesh.Nodes[nodes[k + 1]].X - mesh.Nodes[nodes[k]].X) / (2 * total);
            shares[k] += half;
            shares[k + 1] += half;
        }

        return shares;
    }
}
