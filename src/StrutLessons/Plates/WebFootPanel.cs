namespace StrutLessons.Plates;

/// <summary>One mesh of a girder with a straight, rigid foot on its web.</summary>
internal static class WebFootPanel
{
    private const int Shift = 0, Slope = 1, Skew = 2, Movements = 3;

    /// <summary>Flexibility of the foot, and the web under a unit moment.</summary>
    internal static (WebFlexibility Flexibility, PlateField Field) Analyse(
        in GirderCase girder, double footLength, double height, MeshDensity density)
    {
        var mesh = new PlateMesh();
        var foot = new Stretch(footLength, 0.5 * Math.Min(footLength, girder.Shape.WebHeight), density, Finer.Both);
        var web = new GirderMesh(mesh, girder, [.. foot.Lines(-footLength / 2)], height, density);
        var constraints = PlateModel.NewConstraints(mesh, Movements);
        web.Support(constraints);
        int shift = constraints.Body(Shift), slope = constraints.Body(Slope), skew = constraints.Body(Skew);
        foreach (int node in web.FootNodes)
        {
            constraints.Tie(constraints.Dof(node, PlateModel.Deflection), new(shift, 1), new(skew, mesh.Nodes[node].X));
            constraints.Tie(constraints.Dof(node, PlateModel.SlopeX), new TieTerm(skew, 1));
            constraints.Tie(constraints.Dof(node, PlateModel.SlopeY), new TieTerm(slope, 1));
        }

        var model = new PlateModel(mesh, constraints);
        var kept = KeptSystem.Of(model.Factor, Movements);
        var load = model.NewLoad();
        load[model.Map.Kept + Slope] = 1;
        return (
            new(kept.Flexibility(Shift, Shift), kept.Flexibility(Shift, Slope), kept.Flexibility(Slope, Slope)),
            web.Field(model.Solve(load)));
    }
}
