namespace StrutLessons.Plates;

/// <summary>One mesh of a girder that is turned at its top flange.</summary>
internal sealed class FlangeFootPanel
{
    private readonly PlateMesh _mesh = new();
    private readonly GirderMesh _girder;
    private readonly GirderCase _case;

    internal FlangeFootPanel(in GirderCase girder, double footLength, MeshDensity density)
    {
        _case = girder;
        double reach = 0.5 * Math.Min(footLength, girder.Shape.WebHeight);
        var foot = new Stretch(footLength, reach, density, Finer.Both);
        _girder = new GirderMesh(_mesh, girder, [.. foot.Lines(-footLength / 2)], girder.Shape.WebHeight, density);
    }

    /// <summary>Twist of a rigid foot and rotation of the chord between the flanges, both per unit moment.</summary>
    internal (double Twist, double Chord) RigidFoot()
    {
        var constraints = PlateModel.NewConstraints(_mesh, 1);
        _girder.Support(constraints);
        foreach (int node in _girder.FootNodes)
        {
            constraints.Tie(constraints.Dof(node, PlateModel.SlopeY), new TieTerm(constraints.Body(0), 1));
        }

        var model = new PlateModel(_mesh, constraints);
        var load = model.NewLoad();
        load[model.Map.Kept] = 1;
        var movement = model.Solve(load);
        return (movement[constraints.Body(0)], Chord(movement));
    }

    /// <summary>Mean twist under an even line moment of total 1, and the deflected web.</summary>
    internal (double Twist, PlateField Field) UniformMoment()
    {
        var constraints = PlateModel.NewConstraints(_mesh, 0);
        _girder.Support(constraints);
        var model = new PlateModel(_mesh, constraints);
        var load = model.NewLoad();
        var share = LineMoment.Shares(_girder.FootNodes, _mesh);
        for (int k = 0; k < share.Length; k++)
        {
            model.Map.AddLoad(load, constraints.Dof(_girder.FootNodes[k], PlateModel.SlopeY), share[k]);
        }

        var movement = model.Solve(load);
        double mean = 0;
        for (int k = 0; k < share.Length; k++)
        {
            mean += share[k] * movement[constraints.Dof(_girder.FootNodes[k], PlateModel.SlopeY)];
        }

        return (mean, _girder.Field(movement));
    }

    /// <summary>Difference of the flanges' deflections at the middle of the foot over the web height.</summary>
    private double Chord(double[] movement)
    {
        int middle = _girder.FootNodes.MinBy(node => Math.Abs(_mesh.Nodes[node].X));
        double top = movement[3 * middle], bottom = movement[3 * _girder.BottomUnder(middle)];
        return (top - bottom) / _case.Shape.WebHeight;
    }
}
