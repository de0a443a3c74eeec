namespace StrutLessons.Plates;

/// <summary>
/// A gusset cut into columns along the strut and rows across it, in support axes: x along the support line, y away from it.
/// The rows bend so that the inclined support is the first of them.
/// </summary>
internal sealed class GussetMesh
{
    private readonly GussetPlate _plate;
    private readonly double _sin, _cos, _cot;
    private readonly Division _across, _along;
    private readonly int _firstNode;

    internal GussetMesh(GussetPlate plate, PlateMaterial material, MeshDensity density, PlateMesh mesh)
    {
        _plate = plate = plate.WithoutSlivers();
        _cot = plate.Cotangent;
        _sin = Math.Sin(plate.Angle);
        _cos = _cot * _sin;
        _across = Division.Across(plate, density);
        _along = Division.Along(plate, density);
        Mesh = mesh;
        _firstNode = mesh.Nodes.Count;
        Section = PlateSection.Of(material, plate.Thickness);
        AddNodes();
        AddQuads();
    }

    /// <summary>The mesh that received the gusset's nodes and flexible elements; it may hold other plates as well.</summary>
    internal PlateMesh Mesh { get; }

    /// <summary>Plate section of the gusset.</summary>
    internal PlateSection Section { get; }

    /// <summary>Quadrilaterals of the rigid patch, four nodes each; drawn but not analysed.</summary>
    internal List<int> PatchQuads { get; } = [];

    /// <summary>Nodes on the support line, in the order of x.</summary>
    internal IEnumerable<int> Foot => Enumerable.Range(0, _across.Count + 1).Select(column => Node(column, 0));

    /// <summary>Nodes of the rigid patch.</summary>
    internal IEnumerable<int> Patch =>
        from column in Enumerable.Range(_across.PatchFrom, _across.PatchTo - _across.PatchFrom + 1)
        from row in Enumerable.Range(_along.PatchFrom, _along.PatchTo - _along.PatchFrom + 1)
        select Node(column, row);

    /// <summary>Direction of the strut, away from the support.</summary>
    internal (double X, double Y) Along => (_cos, _sin);

    /// <summary>Direction across the strut, towards the right edge.</summary>
    internal (double X, double Y) Across => (_sin, -_cos);

    /// <summary>Strut coordinates (across n, along s) of a node; s is measured from the first bolt.</summary>
    internal (double N, double S) FromFirstBolt(int node)
    {
        var (x, y) = Mesh.Nodes[node];
        return (x * _sin - y * _cos, x * _cos + y * _sin - _plate.FreeLength);
    }

    private int Node(int column, int row) => _firstNode + column * (_along.Count + 1) + row;

    private void AddNodes()
    {
        for (int column = 0; column <= _across.Count; column++)
        {
            double n = _across[column];
            double foot = FootOf(n);
            double low = foot * _cot;
            var (first, last) = PatchRows(n, low);
            for (int row = 0; row <= _along.Count; row++)
            {
                var (from, to, part) = _along.Locate(row, low, first, last, _plate.End);
                double s = from + (to - from) * part;
                double across = row < _along.PatchFrom ? foot + (n - foot) * part : n;
                Mesh.AddNode(across * _sin + s * _cos, s * _sin - across * _cos);
            }
        }
    }

    /// <summary>
    /// Where a column meets the support, measured across the strut: the columns of the patch run straight down, those beside it
    /// fan out to the foot. Without plate beside the patch its own columns fan out.
    /// </summary>
    private double FootOf(double n)
    {
        double half = _plate.PatchWidth / 2;
        double left = _plate.Left > half ? -half : -_plate.LeftFoot, right = _plate.Right > half ? half : _plate.RightFoot;
        return _plate.Left > half && n < -half ? Between(n, -_plate.Left, -half, -_plate.LeftFoot, left)
            : _plate.Right > half && n > half ? Between(n, half, _plate.Right, right, _plate.RightFoot)
            : Between(n, -half, half, left, right);
    }

    private static double Between(double n, double from, double to, double atFrom, double atTo) =>
        atFrom + (n - from) / (to - from) * (atTo - atFrom);

    /// <summary>
    /// Height of the two rows that bound the patch. Beside the patch they move up where the inclined support would
    /// leave too little room below them.
    /// </summary>
    private (double First, double Last) PatchRows(double n, double low)
    {
        double first = _plate.FreeLength, last = first + _plate.GroupLength, half = _plate.PatchWidth / 2;
        double edgeFoot = _plate.RightFoot * _cot;
        bool kinked = _plate.Taper > 0 && edgeFoot < first;
        if (n <= half || _plate.Right <= half || kinked)
        {
            return (first, last);
        }

        double edgeFirst = Math.Max(first, edgeFoot + 0.25 * (_plate.End - edgeFoot));
        double share = _plate.GroupLength / (_plate.GroupLength + _plate.EndDistance);
        double edgeLast = Math.Max(last, edgeFirst + share * (_plate.End - edgeFirst));
        double part = (n - half) / (_plate.Right - half);
        return (first + part * (edgeFirst - first), last + part * (edgeLast - last));
    }

    private void AddQuads()
    {
        for (int column = 0; column < _across.Count; column++)
        {
            for (int row = 0; row < _along.Count; row++)
            {
                var (a, b, c, d) = (Node(column, row), Node(column + 1, row), Node(column + 1, row + 1), Node(column, row + 1));
                if (_across.InPatch(column) && _along.InPatch(row))
                {
                    PatchQuads.AddRange([a, b, c, d]);
                }
                else
                {
                    Mesh.AddQuad(a, b, c, d, Section);
                }
            }
        }
    }
}
