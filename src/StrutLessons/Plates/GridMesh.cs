namespace StrutLessons.Plates;

/// <summary>A rectangle of nodes, columns in x and rows in y, with one plate section.</summary>
internal sealed class GridMesh
{
    private readonly int _firstNode, _rows;

    /// <summary>Adds the rectangle to a mesh.</summary>
    internal GridMesh(PlateMesh mesh, IReadOnlyList<double> x, IReadOnlyList<double> y, PlateSection section)
        : this(mesh, x.Count - 1, y.Count - 1, section, (column, row) => (x[column], y[row]))
    {
    }

    /// <summary>Adds a bent rectangle to a mesh: <paramref name="place"/> gives every node its position.</summary>
    internal GridMesh(PlateMesh mesh, int columns, int rows, PlateSection section, Func<int, int, (double X, double Y)> place)
    {
        _firstNode = mesh.Nodes.Count;
        _rows = rows;
        Columns = columns;
        for (int column = 0; column <= columns; column++)
        {
            for (int row = 0; row <= rows; row++)
            {
                var (x, y) = place(column, row);
                mesh.AddNode(x, y);
            }
        }

        for (int column = 0; column < columns; column++)
        {
            for (int row = 0; row < rows; row++)
            {
                mesh.AddQuad(this[column, row], this[column + 1, row], this[column + 1, row + 1], this[column, row + 1], section);
            }
        }
    }

    /// <summary>Number of element columns.</summary>
    internal int Columns { get; }

    /// <summary>Number of element rows.</summary>
    internal int Rows => _rows;

    /// <summary>The node where a column line and a row line cross.</summary>
    internal int this[int column, int row] => _firstNode + column * (_rows + 1) + row;

    /// <summary>The nodes of a column line, upwards.</summary>
    internal IEnumerable<int> Column(int column) => Enumerable.Range(0, _rows + 1).Select(row => this[column, row]);

    /// <summary>The nodes of a row line, to the right.</summary>
    internal IEnumerable<int> Row(int row) => Enumerable.Range(0, Columns + 1).Select(column => this[column, row]);
}
