namespace StrutLessons.Plates;

/// <summary>
/// The web of a girder with its flanges as edge beams; x along the girder from the joint, y upwards from the mid-plane of the
/// bottom flange. The columns stand on the lines of the foot and grow away from it.
/// </summary>
internal sealed class GirderMesh
{
    // Beyond eight web heights from the joint nothing of its local bending is left.
    private const double LocalReach = 8;
    private readonly PlateMesh _mesh;
    private readonly GridMesh _grid;
    private readonly bool _flangesHeld;

    /// <summary>Adds the girder to a mesh.</summary>
    /// <param name="mesh">Receives nodes, elements and beams.</param>
    /// <param name="girder">Girder and its support.</param>
    /// <param name="foot">Column lines under the foot, ascending, measured from the joint.</param>
    /// <param name="height">Height of the row line that carries the foot.</param>
    /// <param name="density">How fine.</param>
    internal GirderMesh(PlateMesh mesh, in GirderCase girder, IReadOnlyList<double> foot, double height, MeshDensity density)
    {
        _mesh = mesh;
        _flangesHeld = girder.Span is null;
        var shape = girder.Shape;
        double web = shape.WebHeight;
        var (left, right) = girder.Span is { } span
            ? (-span.Position, span.Length - span.Position)
            : (foot[0] - LocalReach * web, foot[^1] + LocalReach * web);
        double reach = 0.5 * Math.Min(foot[^1] - foot[0], web);
        var before = new Stretch(foot[0] - left, reach, density, Finer.AtEnd);
        var after = new Stretch(right - foot[^1], reach, density, Finer.AtStart);
        double[] x = [.. before.Lines(left).SkipLast(1), .. foot, .. after.Lines(foot[^1]).Skip(1)];
        var below = new Stretch(height, reach, density, Finer.AtEnd);
        var above = new Stretch(web - height, reach, density, Finer.AtStart);
        double[] y = [.. below.Lines(0), .. above.Lines(height).Skip(1)];
        FirstNode = mesh.Nodes.Count;
        FirstElement = mesh.Elements;
        _grid = new GridMesh(mesh, x, y, PlateSection.Of(girder.Material, shape.WebThickness));
        FootNodes = [.. _grid.Row(below.Parts).Skip(before.Parts).Take(foot.Count)];
        AddFlange(girder, 0);
        AddFlange(girder, _grid.Rows);
    }

    /// <summary>First node of the girder in the mesh.</summary>
    internal int FirstNode { get; }

    /// <summary>First element of the girder in the mesh.</summary>
    internal int FirstElement { get; }

    /// <summary>Nodes under the foot, in the order of x.</summary>
    internal IReadOnlyList<int> FootNodes { get; }

    /// <summary>The node of the other flange that lies above or below a node of the foot.</summary>
    internal int BottomUnder(int footNode) => footNode - _grid.Rows;

    /// <summary>Holds the flanges along their length, or the ends in forks.</summary>
    internal void Support(Constraints constraints)
    {
        if (_flangesHeld)
        {
            foreach (int node in _grid.Row(0).Concat(_grid.Row(_grid.Rows)))
            {
                constraints.Hold(constraints.Dof(node, PlateModel.Deflection));
                constraints.Hold(constraints.Dof(node, PlateModel.SlopeX));
            }

            foreach (int column in new[] { 0, _grid.Columns })
            {
                constraints.Hold(constraints.Dof(_grid[column, 0], PlateModel.SlopeY));
                constraints.Hold(constraints.Dof(_grid[column, _grid.Rows], PlateModel.SlopeY));
            }

            return;
        }

        foreach (int node in _grid.Column(0).Concat(_grid.Column(_grid.Columns)))
        {
            constraints.Hold(constraints.Dof(node, PlateModel.Deflection));
            constraints.Hold(constraints.Dof(node, PlateModel.SlopeY));
        }
    }

    /// <summary>The deflected web.</summary>
    internal PlateField Field(double[] displacements) =>
        PlateField.Of(_mesh.Nodes, FirstNode.., [.. _mesh.Corners[(4 * FirstElement)..]], displacements);

    private void AddFlange(in GirderCase girder, int row)
    {
        var (shape, material) = (girder.Shape, girder.Material);
        double bending = material.YoungsModulus * shape.FlangeSecondMoment, torsion = material.ShearModulus * shape.FlangeTorsion;
        for (int column = 0; column < _grid.Columns; column++)
        {
            _mesh.Beams.Add(new(_grid[column, row], _grid[column + 1, row], bending, torsion));
        }
    }
}
