namespace StrutLessons.Plates;

/// <summary>A quarter of the unit disc from three blocks of quadrilaterals; both axes are lines of symmetry.</summary>
internal static class QuarterDisc
{
    // Corner and side of the inner block: round enough for well-shaped elements outside it.
    private const double Side = 0.5, Corner = 0.4;

    /// <summary>The mesh and its centre node.</summary>
    internal static (PlateMesh Mesh, int Centre) Build(int parts, PlateSection section)
    {
        var mesh = new PlateMesh();
        var known = new Dictionary<(long, long), int>();
        for (int block = 0; block < 3; block++)
        {
            for (int i = 0; i < parts; i++)
            {
                for (int j = 0; j < parts; j++)
                {
                    mesh.AddQuad(Node(block, i, j), Node(block, i + 1, j), Node(block, i + 1, j + 1), Node(block, i, j + 1), section);
                }
            }
        }

        return (mesh, Node(0, 0, 0));

        int Node(int block, int i, int j)
        {
            var (x, y) = Place(block, i / (double)parts, j / (double)parts);
            var key = ((long)Math.Round(x * 1e9), (long)Math.Round(y * 1e9));
            if (!known.TryGetValue(key, out int node))
            {
                known[key] = node = mesh.AddNode(x, y);
            }

            return node;
        }
    }

    /// <summary>Clamps the circle and sets the conditions of symmetry.</summary>
    internal static void HoldClamped(PlateMesh mesh, Constraints constraints)
    {
        for (int node = 0; node < mesh.Nodes.Count; node++)
        {
            var (x, y) = mesh.Nodes[node];
            if (x * x + y * y > 1 - 1e-9)
            {
                constraints.HoldNode(node);
                continue;
            }

            if (x < 1e-9)
            {
                constraints.Hold(constraints.Dof(node, PlateModel.SlopeX));
            }

            if (y < 1e-9)
            {
                constraints.Hold(constraints.Dof(node, PlateModel.SlopeY));
            }
        }
    }

    private static (double X, double Y) Place(int block, double u, double v)
    {
        if (block == 0)
        {
            double x = u * (Side + v * (Corner - Side)), y = v * (Side + u * (Corner - Side));
            return (x, y);
        }

        // Outside: straight lines from the inner block to the circle; the second block mirrors the first.
        double along = block == 1 ? v : u, outwards = block == 1 ? u : v;
        double angle = along * Math.PI / 4;
        double innerX = Side + along * (Corner - Side), innerY = along * Corner;
        double px = innerX + outwards * (Math.Cos(angle) - innerX), py = innerY + outwards * (Math.Sin(angle) - innerY);
        return block == 1 ? (px, py) : (py, px);
    }
}
