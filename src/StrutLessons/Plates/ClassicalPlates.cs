namespace StrutLessons.Plates;

/// <summary>
/// Plates with known answers, for watching the element converge. All results are pure numbers for a plate of size 1, D = 1.
/// Answers: S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.
/// </summary>
public static class ClassicalPlates
{
    private const double Poisson = 0.3;

    /// <summary>Centre deflection of a square plate, w·D/(q a⁴) or w·D/(P a²).</summary>
    /// <param name="edges">How the edges are held.</param>
    /// <param name="load">The load.</param>
    /// <param name="elements">Elements per half edge, 1 to 128.</param>
    /// <param name="distortion">Shift of the inner nodes as a part of the element size, 0 to 0.3, in a fixed disorder.</param>
    /// <exception cref="InputException">A value out of range.</exception>
    public static double SquareCentreDeflection(SquareEdges edges, SquareLoad load, int elements, double distortion = 0)
    {
        Guard.Named(edges, "edges");
        Guard.Named(load, "load");
        CheckElements(elements);
        Guard.Within(distortion, 0, 0.3, "distortion", "", "Larger shifts turn elements inside out.");
        var (mesh, grid, constraints) = Quarter(elements, distortion);
        HoldEdges(grid, constraints, edges);
        var model = new PlateModel(mesh, constraints);
        var right = model.NewLoad();
        int centre = constraints.Dof(grid[0, 0], PlateModel.Deflection);
        if (load == SquareLoad.CentrePoint)
        {
            model.Map.AddLoad(right, centre, 0.25);
        }
        else
        {
            AddPressure(mesh, model, right);
        }

        return model.Solve(right)[centre];
    }

    /// <summary>Buckling coefficient k = n_cr a²/(π² D) of a simply supported square plate compressed in one direction.</summary>
    /// <param name="elements">Elements per half edge, 1 to 128.</param>
    /// <exception cref="InputException">A value out of range.</exception>
    public static double SquareBuckling(int elements)
    {
        CheckElements(elements);
        var (mesh, grid, constraints) = Quarter(elements, 0);
        HoldEdges(grid, constraints, SquareEdges.SimplySupported);
        var model = new PlateModel(mesh, constraints);
        var forces = new double[12 * mesh.Elements];
        for (int k = 0; k < forces.Length; k += 3)
        {
            forces[k] = 1;
        }

        return LowestLoad.Find(model.Stiffness, model.Factor, model.GeometricStiffness(forces), 0).Factor / (Math.PI * Math.PI);
    }

    /// <summary>Tip deflection of a cantilever strip forty times as long as wide, over P L³/(3 E I).</summary>
    /// <param name="elements">Elements across the strip, 1 to 32.</param>
    /// <param name="poisson">Poisson's ratio ν: with 0 the strip is a beam, otherwise the clamped root is stiffened a little.</param>
    /// <exception cref="InputException">A value out of range.</exception>
    public static double CantileverStrip(int elements, double poisson = Poisson)
    {
        Guard.Within(elements, 1, 32, "elements", "1 to 32 across the strip.");
        Guard.Within(poisson, 0, 0.49, "Poisson's ratio", "", "Steel has 0.3.");
        const double length = 40;
        var mesh = new PlateMesh();
        var grid = new GridMesh(mesh, Even(length, 20 * elements), Even(1, elements), new(1 / (1 - poisson * poisson), poisson, 0));
        var constraints = PlateModel.NewConstraints(mesh, 1);
        foreach (int node in grid.Column(0))
        {
            constraints.HoldNode(node);
        }

        foreach (int node in grid.Column(grid.Columns))
        {
            // The tip stays straight across the strip, as the end of a beam does.
            constraints.Tie(constraints.Dof(node, PlateModel.Deflection), new TieTerm(constraints.Body(0), 1));
        }

        var model = new PlateModel(mesh, constraints);
        return KeptSystem.Of(model.Factor, 1).Flexibility(0, 0) * 3 / (length * length * length);
    }

    /// <summary>
    /// Bending moment at the clamped root of a very long cantilever plate of depth a under a force P, as K_m = −M_x/P.
    /// </summary>
    /// <param name="distance">Distance of the force from the root over the depth; 0.25, 0.5, 0.75 or 1.</param>
    /// <param name="along">Place on the root, distance from the foot of the force over the depth, 0 to 2, a multiple of 0.25.</param>
    /// <param name="elements">Elements per quarter depth, 1 to 16.</param>
    /// <exception cref="InputException">A value out of range.</exception>
    public static double CantileverPlateRootMoment(double distance, double along, int elements)
    {
        Guard.Within(distance, 0.25, 1, "distance of the force", "", "Give it as a part of the depth.");
        Guard.Within(along, 0, 2, "place on the root", "", "Give it as a multiple of the depth.");
        Guard.Within(elements, 1, 16, "elements", "1 to 16 per quarter depth.");
        int column = (int)Math.Round(distance * 4 * elements), row = (int)Math.Round(along * 4 * elements);
        if (Math.Abs(column - distance * 4 * elements) > 1e-9 || Math.Abs(row - along * 4 * elements) > 1e-9)
        {
            throw Guard.Fail(distance, "distance of the force or place on the root", "", "a multiple of 0.25", "Forces and moments sit at nodes.");
        }

        // Half of the plate; five depths to the side the moment has died away.
        var mesh = new PlateMesh();
        var grid = new GridMesh(mesh, Even(1, 4 * elements), Even(5, 20 * elements), new(1, Poisson, 0));
        var constraints = PlateModel.NewConstraints(mesh, 0);
        foreach (int node in grid.Row(0))
        {
            constraints.Hold(constraints.Dof(node, PlateModel.SlopeY));
        }

        foreach (int node in grid.Column(0))
        {
            constraints.HoldNode(node);
        }

        var model = new PlateModel(mesh, constraints);
        var load = model.NewLoad();
        model.Map.AddLoad(load, constraints.Dof(grid[column, 0], PlateModel.Deflection), 0.5);
        double reaction = model.InnerForces(model.Solve(load))[constraints.Dof(grid[0, row], PlateModel.SlopeX)];
        double share = 0.25 / elements * (row == 0 ? 0.5 : 1);
        return Math.Abs(reaction) / share;
    }

    /// <summary>Centre deflection of a clamped circular plate of radius a under even pressure, w·D/(q a⁴).</summary>
    /// <param name="elements">Elements along the radius's inner half, 1 to 64.</param>
    /// <exception cref="InputException">A value out of range.</exception>
    public static double CircleCentreDeflection(int elements)
    {
        Guard.Within(elements, 1, 64, "elements", "1 to 64 along half the radius.");
        var (mesh, corner) = QuarterDisc.Build(elements, new(1, Poisson, 0));
        var constraints = PlateModel.NewConstraints(mesh, 0);
        QuarterDisc.HoldClamped(mesh, constraints);
        var model = new PlateModel(mesh, constraints);
        var load = model.NewLoad();
        AddPressure(mesh, model, load);
        return model.Solve(load)[constraints.Dof(corner, PlateModel.Deflection)];
    }

    private static void CheckElements(int elements) =>
        Guard.Within(elements, 1, 128, "elements", "1 to 128 per half edge.");

    private static double[] Even(double length, int parts) =>
        [.. Enumerable.Range(0, parts + 1).Select(k => length * k / parts)];

    /// <summary>A quarter of the unit square with the centre at the origin; both axes are lines of symmetry.</summary>
    private static (PlateMesh Mesh, GridMesh Grid, Constraints Constraints) Quarter(int elements, double distortion)
    {
        var mesh = new PlateMesh();
        double size = 0.5 / elements;
        var grid = new GridMesh(mesh, elements, elements, new(1, Poisson, 0), (column, row) =>
        {
            bool inner = column > 0 && row > 0 && column < elements && row < elements;
            double shift = inner ? distortion * size : 0;
            return (column * size + shift * Math.Sin(7.0 * column + 3 * row), row * size + shift * Math.Cos(5.0 * row + 2 * column));
        });
        var constraints = PlateModel.NewConstraints(mesh, 0);
        foreach (int node in grid.Column(0))
        {
            constraints.Hold(constraints.Dof(node, PlateModel.SlopeX));
        }

        foreach (int node in grid.Row(0))
        {
            constraints.Hold(constraints.Dof(node, PlateModel.SlopeY));
        }

        return (mesh, grid, constraints);
    }

    private static void HoldEdges(GridMesh grid, Constraints constraints, SquareEdges edges)
    {
        Hold(grid.Column(grid.Columns), PlateModel.SlopeY);
        Hold(grid.Row(grid.Rows), PlateModel.SlopeX);

        void Hold(IEnumerable<int> nodes, int along)
        {
            foreach (int node in nodes)
            {
                constraints.Hold(constraints.Dof(node, PlateModel.Deflection));
                constraints.Hold(constraints.Dof(node, along));
                if (edges == SquareEdges.Clamped)
                {
                    constraints.HoldNode(node);
                }
            }
        }
    }

    /// <summary>A quarter of each element's load at each corner, weighted by the bilinear shape functions.</summary>
    private static void AddPressure(PlateMesh mesh, PlateModel model, double[] load)
    {
        for (int e = 0; e < mesh.Elements; e++)
        {
            var corners = mesh.CornersOf(e);
            for (int point = 0; point < GaussRule.Points; point++)
            {
                var (xi, eta) = GaussRule.Point(point);
                double weight = corners.JacobianAt(xi, eta).Determinant;
                for (int k = 0; k < 4; k++)
                {
                    double shape = 0.25 * (1 + QuadCorners.Xi[k] * xi) * (1 + QuadCorners.Eta[k] * eta);
                    model.Map.AddLoad(load, 3 * mesh.Quad(e)[k] + PlateModel.Deflection, weight * shape);
                }
            }
        }
    }
}
