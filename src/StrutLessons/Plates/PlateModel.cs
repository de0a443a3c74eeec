namespace StrutLessons.Plates;

/// <summary>
/// Bending of thin plates with edge beams: stiffness matrix, loads and solution. Three dofs per node: w, ∂w/∂x, ∂w/∂y.
/// </summary>
internal sealed class PlateModel
{
    /// <summary>Direction numbers of the dofs at a node.</summary>
    internal const int Deflection = 0, SlopeX = 1, SlopeY = 2;

    private const int DofsPerNode = 3;
    private readonly PlateMesh _mesh;
    private readonly Constraints _constraints;
    private TiledFactor? _factor;

    internal PlateModel(PlateMesh mesh, Constraints constraints)
    {
        _mesh = mesh;
        _constraints = constraints;
        Map = new EquationMap(constraints, mesh.Corners, 4);
        Stiffness = Assemble();
    }

    /// <summary>A fresh set of constraints for a mesh.</summary>
    internal static Constraints NewConstraints(PlateMesh mesh, int bodies) => new(DofsPerNode, mesh.Nodes.Count, bodies);

    /// <summary>Numbers of the equations.</summary>
    internal EquationMap Map { get; }

    /// <summary>The stiffness matrix.</summary>
    internal TiledSkyline Stiffness { get; }

    /// <summary>Factors of the stiffness matrix, made once.</summary>
    internal TiledFactor Factor => _factor ??= TiledFactor.Of(Stiffness.Copy());

    /// <summary>An empty right-hand side.</summary>
    internal double[] NewLoad() => new double[Map.Size];

    /// <summary>Displacements of all dofs under a load on the equations; movements of rigid bodies with a number in <paramref name="held"/> stay zero.</summary>
    internal double[] Solve(double[] load, params ReadOnlySpan<int> held)
    {
        var vector = (double[])load.Clone();
        Factor.Solve(vector, KeptSystem.Of(Factor, _constraints.Bodies, held));
        return Map.Spread(vector);
    }

    /// <summary>Geometric stiffness of membrane forces: 12 numbers per element, n_x, n_y, n_xy at the Gauss points.</summary>
    internal TiledSkyline GeometricStiffness(ReadOnlySpan<double> membraneForces)
    {
        var matrix = new TiledSkyline(Stiffness.First);
        Span<double> element = stackalloc double[PlateElement.Dofs * PlateElement.Dofs];
        Span<int> dofs = stackalloc int[PlateElement.Dofs];
        for (int e = 0; e < _mesh.Elements; e++)
        {
            new PlateElement(_mesh.CornersOf(e)).GeometricStiffness(membraneForces.Slice(12 * e, 12), element);
            DofsOf(_mesh.Quad(e), dofs);
            Map.AddElement(matrix, dofs, element);
        }

        return matrix;
    }

    /// <summary>The forces that the elements ask for at every dof; at a held one this is the reaction.</summary>
    internal double[] InnerForces(double[] displacements)
    {
        var forces = new double[_constraints.Count];
        Span<double> element = stackalloc double[PlateElement.Dofs * PlateElement.Dofs];
        Span<int> dofs = stackalloc int[PlateElement.Dofs];
        for (int e = 0; e < _mesh.Elements; e++)
        {
            ElementStiffness(e, element, dofs);
            for (int row = 0; row < dofs.Length; row++)
            {
                for (int column = 0; column < dofs.Length; column++)
                {
                    forces[dofs[row]] += element[row * dofs.Length + column] * displacements[dofs[column]];
                }
            }
        }

        return forces;
    }

    private TiledSkyline Assemble()
    {
        var matrix = Map.NewMatrix();
        Span<double> element = stackalloc double[PlateElement.Dofs * PlateElement.Dofs];
        Span<int> dofs = stackalloc int[PlateElement.Dofs];
        for (int e = 0; e < _mesh.Elements; e++)
        {
            ElementStiffness(e, element, dofs);
            Map.AddElement(matrix, dofs, element);
        }

        foreach (var beam in _mesh.Beams)
        {
            var (from, to) = (_mesh.Nodes[beam.From], _mesh.Nodes[beam.To]);
            var square = element[..(EdgeBeam.Dofs * EdgeBeam.Dofs)];
            beam.Stiffness(to.X - from.X, to.Y - from.Y, square);
            DofsOf([beam.From, beam.To], dofs);
            Map.AddElement(matrix, dofs[..EdgeBeam.Dofs], square);
        }

        return matrix;
    }

    private void ElementStiffness(int e, Span<double> element, Span<int> dofs)
    {
        new PlateElement(_mesh.CornersOf(e)).Stiffness(_mesh.Sections[e].Rigidity, _mesh.Sections[e].Poisson, element);
        DofsOf(_mesh.Quad(e), dofs);
    }

    private static void DofsOf(ReadOnlySpan<int> nodes, Span<int> dofs)
    {
        for (int k = 0; k < nodes.Length; k++)
        {
            for (int direction = 0; direction < DofsPerNode; direction++)
            {
                dofs[DofsPerNode * k + direction] = DofsPerNode * nodes[k] + direction;
            }
        }
    }
}
