namespace StrutLessons.Plates;

/// <summary>Nodes and quadrilaterals of one or more plates; coordinates in mm.</summary>
internal sealed class PlateMesh
{
    private readonly List<int> _corners = [];

    /// <summary>Node coordinates.</summary>
    internal List<(double X, double Y)> Nodes { get; } = [];

    /// <summary>Plate rigidity of every element.</summary>
    internal List<PlateSection> Sections { get; } = [];

    /// <summary>Edge beams.</summary>
    internal List<EdgeBeam> Beams { get; } = [];

    /// <summary>Four node numbers per element, counter-clockwise.</summary>
    internal ReadOnlySpan<int> Corners => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_corners);

    /// <summary>Number of elements.</summary>
    internal int Elements => Sections.Count;

    /// <summary>Adds a node and returns its number.</summary>
    internal int AddNode(double x, double y)
    {
        Nodes.Add((x, y));
        return Nodes.Count - 1;
    }

    /// <summary>Adds an element.</summary>
    internal void AddQuad(int a, int b, int c, int d, in PlateSection section)
    {
        _corners.AddRange([a, b, c, d]);
        Sections.Add(section);
    }

    /// <summary>Node numbers of an element.</summary>
    internal ReadOnlySpan<int> Quad(int element) => Corners.Slice(4 * element, 4);

    /// <summary>Corner coordinates of an element.</summary>
    internal QuadCorners CornersOf(int element)
    {
        var quad = Quad(element);
        var (a, b, c, d) = (Nodes[quad[0]], Nodes[quad[1]], Nodes[quad[2]], Nodes[quad[3]]);
        return new(a.X, a.Y, b.X, b.Y, c.X, c.Y, d.X, d.Y);
    }
}
