namespace StrutLessons.Plates;

/// <summary>One mesh of a gusset together with the girder that carries it.</summary>
internal sealed class GirderJointPanel
{
    private readonly PlateMesh _mesh = new();
    private readonly GussetMesh _gusset;
    private readonly GirderMesh _girder;
    private readonly PlateModel _model;

    /// <summary>Builds and couples both plates.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="girder">Girder and support.</param>
    /// <param name="height">Height of the foot on the web; none if the gusset stands on the top flange.</param>
    /// <param name="density">How fine.</param>
    internal GirderJointPanel(GussetPlate plate, in GirderCase girder, double? height, MeshDensity density)
    {
        _gusset = new GussetMesh(plate, girder.Material, density, _mesh);
        int[] roots = [.. _gusset.Foot];
        double[] lines = [.. roots.Select(node => _mesh.Nodes[node].X)];
        GussetNodes = _mesh.Nodes.Count;
        GussetElements = _mesh.Elements;
        _girder = new GirderMesh(_mesh, girder, lines, height ?? girder.Shape.WebHeight, density);
        var constraints = PlateModel.NewConstraints(_mesh, RigidPatch.Movements);
        _girder.Support(constraints);
        RigidPatch.TieOutOfPlane(_gusset, constraints);
        if (height is not null)
        {
            KeepStraight(constraints, _girder.FootNodes);
        }

        for (int k = 0; k < roots.Length; k++)
        {
            if (height is null)
            {
                StandOnFlange(constraints, roots[k], _girder.FootNodes[k], girder.Shape.FlangeThickness / 2);
            }
            else
            {
                StandOnWeb(constraints, roots[k], _girder.FootNodes[k]);
            }
        }

        _model = new PlateModel(_mesh, constraints);
    }

    /// <summary>Number of unknowns at the nodes.</summary>
    internal int Unknowns => _model.Map.Unknowns;

    /// <summary>Flexibility at the first bolt.</summary>
    internal BoltFlexibility Flexibility => BoltFlexibility.From(KeptSystem.Of(_model.Factor, RigidPatch.Movements));

    private int GussetNodes { get; }

    private int GussetElements { get; }

    /// <summary>Gusset and web under a unit moment at the first bolt.</summary>
    internal (PlateField Gusset, PlateField Girder) UnitMomentFields()
    {
        var load = _model.NewLoad();
        load[_model.Map.Kept + RigidPatch.Slope] = 1;
        var movement = _model.Solve(load);
        var gusset = PlateField.Of(
            _mesh.Nodes, ..GussetNodes, [.. _mesh.Corners[..(4 * GussetElements)], .. _gusset.PatchQuads], movement);
        return (gusset, _girder.Field(movement));
    }

    /// <summary>In the web's plane: the root follows the top face of the flange, its slope along the flange is left free.</summary>
    private static void StandOnFlange(Constraints constraints, int root, int flange, double lever)
    {
        int deflection = constraints.Dof(flange, PlateModel.Deflection), twist = constraints.Dof(flange, PlateModel.SlopeY);
        constraints.Tie(constraints.Dof(root, PlateModel.Deflection), new(deflection, 1), new(twist, lever));
        constraints.Tie(constraints.Dof(root, PlateModel.SlopeY), new TieTerm(twist, 1));
    }

    /// <summary>
    /// The gusset is stiff in its own plane, so the web under it moves sideways as a straight line between the ends of the foot.
    /// </summary>
    private void KeepStraight(Constraints constraints, IReadOnlyList<int> foot)
    {
        int start = constraints.Dof(foot[0], PlateModel.Deflection), end = constraints.Dof(foot[^1], PlateModel.Deflection);
        double from = _mesh.Nodes[foot[0]].X, length = _mesh.Nodes[foot[^1]].X - from;
        foreach (int node in foot)
        {
            double part = (_mesh.Nodes[node].X - from) / length;
            if (node != foot[0] && node != foot[^1])
            {
                constraints.Tie(constraints.Dof(node, PlateModel.Deflection), new(start, 1 - part), new(end, part));
            }

            constraints.Tie(constraints.Dof(node, PlateModel.SlopeX), new(start, -1 / length), new(end, 1 / length));
        }
    }

    /// <summary>Across the web: the web is stiff in its plane, so the root does not deflect; it turns with the web, point by point.</summary>
    private static void StandOnWeb(Constraints constraints, int root, int web)
    {
        constraints.Hold(constraints.Dof(root, PlateModel.Deflection));
        constraints.Hold(constraints.Dof(root, PlateModel.SlopeX));
        constraints.Tie(constraints.Dof(root, PlateModel.SlopeY), new TieTerm(constraints.Dof(web, PlateModel.SlopeY), 1));
    }
}
