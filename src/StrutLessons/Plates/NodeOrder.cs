namespace StrutLessons.Plates;

/// <summary>
/// Order of elimination that keeps the skyline short: reverse Cuthill–McKee, started at a node far from all others.
/// (E. Cuthill, J. McKee, 24th ACM National Conference, 1969; the reversal is due to A. George, 1971.)
/// </summary>
internal static class NodeOrder
{
    /// <summary>The nodes in order of elimination.</summary>
    /// <param name="neighbours">For every node the nodes it shares an element with.</param>
    internal static int[] ReverseCuthillMcKee(List<int>[] neighbours)
    {
        var order = new int[neighbours.Length];
        var seen = new bool[neighbours.Length];
        int count = 0;
        for (int node = 0; node < neighbours.Length; node++)
        {
            if (!seen[node])
            {
                int start = Far(Far(node, neighbours, order, count), neighbours, order, count);
                count = Sweep(start, neighbours, order, count, seen);
            }
        }

        Array.Reverse(order);
        return order;
    }

    /// <summary>The node that a breadth-first sweep reaches last; <paramref name="scratch"/> is free from <paramref name="from"/> on.</summary>
    private static int Far(int start, List<int>[] neighbours, int[] scratch, int from)
    {
        int end = Sweep(start, neighbours, scratch, from, null);
        return scratch[end - 1];
    }

    private static int Sweep(int start, List<int>[] neighbours, int[] order, int from, bool[]? seen)
    {
        seen ??= new bool[neighbours.Length];
        int end = from;
        order[end++] = start;
        seen[start] = true;
        for (int next = from; next < end; next++)
        {
            int first = end;
            foreach (int node in neighbours[order[next]])
            {
                if (!seen[node])
                {
                    seen[node] = true;
                    order[end++] = node;
                }
            }

            order.AsSpan(first, end - first).Sort((a, b) => neighbours[a].Count.CompareTo(neighbours[b].Count));
        }

        return end;
    }
}
