namespace StrutLessons.Plates;

/// <summary>One mesh of a gusset on a rigid support, with its matrices; the membrane field is found when first asked for.</summary>
internal sealed class GussetPanel
{
    private readonly GussetMesh _gusset;
    private readonly PlateModel _model;
    private readonly PlateMesh _mesh = new();
    private TiledSkyline? _geometric;

    private GussetPanel(GussetPlate plate, PlateMaterial material, MeshDensity density)
    {
        _gusset = new GussetMesh(plate, material, density, _mesh);
        var constraints = PlateModel.NewConstraints(_mesh, RigidPatch.Movements);
        RigidPatch.TieOutOfPlane(_gusset, constraints);
        foreach (int node in _gusset.Foot)
        {
            constraints.HoldNode(node);
        }

        _model = new PlateModel(_mesh, constraints);
    }

    /// <summary>Number of unknowns at the nodes.</summary>
    internal int Unknowns => _model.Map.Unknowns;

    /// <summary>Flexibility at the first bolt.</summary>
    internal BoltFlexibility Flexibility => BoltFlexibility.From(KeptSystem.Of(_model.Factor, RigidPatch.Movements));

    // Softening of the plate by a unit compression along the strut.
    private TiledSkyline Geometric => _geometric ??= _model.GeometricStiffness(UnitCompression());

    /// <summary>The coarse and the fine mesh of a checked gusset.</summary>
    internal static (GussetPanel Coarse, GussetPanel Fine) Pair(GussetPlate plate, PlateMaterial? material, int fineness)
    {
        plate.Checked();
        var checkedMaterial = (material ?? PlateMaterial.Steel).Checked();
        CheckFineness(fineness);
        return (new(plate, checkedMaterial, new(fineness, false)), new(plate, checkedMaterial, new(fineness, true)));
    }

    /// <summary>Refuses a mesh too coarse to mean anything or too fine to wait for.</summary>
    internal static void CheckFineness(int fineness) =>
        Guard.Within(fineness, 2, 16, "fineness", "4 keeps errors near 1 %; double it to see the error fall.");

    /// <summary>Lowest buckling load, N, with the given movements of the patch held.</summary>
    internal BucklingMode Buckle(params ReadOnlySpan<int> held) =>
        LowestLoad.Find(_model.Stiffness, _model.Factor, Geometric, RigidPatch.Movements, held);

    /// <summary>Flexibility at the first bolt under a compression.</summary>
    internal BoltFlexibility FlexibilityUnder(double compression) =>
        BoltFlexibility.From(KeptSystem.Of(Softened(compression), RigidPatch.Movements));

    /// <summary>Deflections under a unit moment at the first bolt.</summary>
    internal PlateField UnitMomentField(double compression = 0)
    {
        var factor = compression == 0 ? _model.Factor : Softened(compression);
        var load = _model.NewLoad();
        load[_model.Map.Kept + RigidPatch.Slope] = 1;
        factor.Solve(load, KeptSystem.Of(factor, RigidPatch.Movements));
        return Field(_model.Map.Spread(load));
    }

    /// <summary>A mode with the largest deflection 1.</summary>
    internal PlateField ModeField(BucklingMode mode)
    {
        var all = _model.Map.Spread(mode.Mode);
        double largest = 0;
        for (int dof = PlateModel.Deflection; dof < 3 * _mesh.Nodes.Count; dof += 3)
        {
            largest = Math.Abs(all[dof]) > Math.Abs(largest) ? all[dof] : largest;
        }

        for (int dof = 0; dof < all.Length; dof++)
        {
            all[dof] /= largest;
        }

        return Field(all);
    }

    private PlateField Field(double[] displacements) =>
        PlateField.Of(_mesh.Nodes, .., [.. _mesh.Corners, .. _gusset.PatchQuads], displacements);

    private TiledFactor Softened(double compression)
    {
        var factor = TiledFactor.Of(_model.Stiffness.Minus(compression, Geometric));
        if (factor.NegativePivots + KeptSystem.Of(factor, RigidPatch.Movements).NegativePivots > 0)
        {
            throw Guard.Fail(compression, "compression", "N", "below the buckling load of the gusset", "Use a smaller force or a thicker plate.");
        }

        return factor;
    }

    /// <summary>Membrane forces of a unit compression, compression positive: the sign with which they soften the plate.</summary>
    private double[] UnitCompression()
    {
        var constraints = MembraneModel.NewConstraints(_mesh, RigidPatch.Movements);
        RigidPatch.TieInPlane(_gusset, constraints);
        foreach (int node in _gusset.Foot)
        {
            constraints.HoldNode(node);
        }

        var membrane = new MembraneModel(_mesh, constraints);
        var forces = membrane.Forces(membrane.Solve((constraints.Body(RigidPatch.Lengthways), -1)));
        for (int k = 0; k < forces.Length; k++)
        {
            forces[k] = -forces[k];
        }

        return forces;
    }
}
