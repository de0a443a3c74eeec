namespace StrutLessons.Plates;

/// <summary>Plane stress in a plate: two displacements per node, along x and y.</summary>
internal sealed class MembraneModel
{
    private const int DofsPerNode = 2;
    private readonly PlateMesh _mesh;
    private readonly Constraints _constraints;
    private readonly EquationMap _map;
    private readonly TiledFactor _factor;

    internal MembraneModel(PlateMesh mesh, Constraints constraints)
    {
        _mesh = mesh;
        _constraints = constraints;
        _map = new EquationMap(constraints, mesh.Corners, 4);
        var matrix = _map.NewMatrix();
        Span<double> element = stackalloc double[MembraneElement.Dofs * MembraneElement.Dofs];
        Span<int> dofs = stackalloc int[MembraneElement.Dofs];
        for (int e = 0; e < mesh.Elements; e++)
        {
            Element(e).Stiffness(element);
            DofsOf(mesh.Quad(e), dofs);
            _map.AddElement(matrix, dofs, element);
        }

        _factor = TiledFactor.Of(matrix);
    }

    /// <summary>A fresh set of constraints for a mesh.</summary>
    internal static Constraints NewConstraints(PlateMesh mesh, int bodies) => new(DofsPerNode, mesh.Nodes.Count, bodies);

    /// <summary>Displacements of all dofs under forces (N) on the given dofs.</summary>
    internal double[] Solve(params ReadOnlySpan<(int Dof, double Force)> forces)
    {
        var load = new double[_map.Size];
        foreach (var (dof, force) in forces)
        {
            _map.AddLoad(load, dof, force);
        }

        _factor.Solve(load, KeptSystem.Of(_factor, _constraints.Bodies));
        return _map.Spread(load);
    }

    /// <summary>Membrane forces n_x, n_y, n_xy (N/mm, tension positive) at the four Gauss points of every element.</summary>
    internal double[] Forces(double[] displacements)
    {
        var forces = new double[_mesh.Elements * 3 * GaussRule.Points];
        Span<int> dofs = stackalloc int[MembraneElement.Dofs];
        Span<double> corners = stackalloc double[MembraneElement.Dofs];
        for (int e = 0; e < _mesh.Elements; e++)
        {
            DofsOf(_mesh.Quad(e), dofs);
            for (int k = 0; k < dofs.Length; k++)
            {
                corners[k] = displacements[dofs[k]];
            }

            Element(e).Forces(corners, forces.AsSpan(12 * e, 12));
        }

        return forces;
    }

    private MembraneElement Element(int e) => new(_mesh.CornersOf(e), _mesh.Sections[e].Stretch, _mesh.Sections[e].Poisson);

    private static void DofsOf(ReadOnlySpan<int> nodes, Span<int> dofs)
    {
        for (int k = 0; k < nodes.Length; k++)
        {
            dofs[2 * k] = 2 * nodes[k];
            dofs[2 * k + 1] = 2 * nodes[k] + 1;
        }
    }
}
