using StrutLessons.Plates;

namespace StrutLessons.Tests.Plates;

public class ElementTests
{
    private static readonly QuadCorners Distorted = new(0, 0, 4, 0.5, 5, 4, -0.7, 3);

    // Patch test: a state of constant curvature must come out exactly, whatever the shape (B. Irons; e.g. O. C. Zienkiewicz, R. L. Taylor, The Finite Element Method).
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(0.7, -0.3, 0.4)]
    public void Constant_curvature_is_exact_on_any_quadrilateral(double xx, double yy, double xy)
    {
        const double rigidity = 3, poisson = 0.3;
        var stiffness = new double[144];
        new PlateElement(Distorted).Stiffness(rigidity, poisson, stiffness);
        var movement = new double[12];
        for (int k = 0; k < 4; k++)
        {
            var (x, y) = Distorted[k];
            movement[3 * k] = 0.5 * xx * x * x + 0.5 * yy * y * y + xy * x * y + 0.2 * x - y + 3;
            movement[3 * k + 1] = xx * x + xy * y + 0.2;
            movement[3 * k + 2] = yy * y + xy * x - 1;
        }

        double energy = Quadratic(stiffness, movement);
        double exact = rigidity * (xx * xx + yy * yy + 2 * poisson * xx * yy + 2 * (1 - poisson) * xy * xy) * Distorted.Area;
        Assert.Equal(exact, energy, 1e-9);
    }

    [Fact]
    public void Rigid_movements_strain_neither_plate_nor_membrane()
    {
        var plate = new double[144];
        new PlateElement(Distorted).Stiffness(1, 0.3, plate);
        var membrane = new double[64];
        new MembraneElement(Distorted, 1, 0.3).Stiffness(membrane);
        var tilt = new double[12];
        var turn = new double[8];
        for (int k = 0; k < 4; k++)
        {
            var (x, y) = Distorted[k];
            (tilt[3 * k], tilt[3 * k + 1], tilt[3 * k + 2]) = (1 + 2 * x - 3 * y, 2, -3);
            (turn[2 * k], turn[2 * k + 1]) = (4 - 0.5 * y, 1 + 0.5 * x);
        }

        Assert.Equal(0, Quadratic(plate, tilt), 1e-10);
        Assert.Equal(0, Quadratic(membrane, turn), 1e-10);
    }

    // Patch test of the membrane: constant stress on a distorted quadrilateral.
    [Fact]
    public void Constant_membrane_strain_gives_constant_membrane_forces()
    {
        const double stretch = 5, poisson = 0.3;
        var movement = new double[8];
        for (int k = 0; k < 4; k++)
        {
            var (x, y) = Distorted[k];
            (movement[2 * k], movement[2 * k + 1]) = (0.01 * x + 0.004 * y, 0.002 * x - 0.003 * y);
        }

        var forces = new double[12];
        new MembraneElement(Distorted, stretch, poisson).Forces(movement, forces);
        double plane = stretch / (1 - poisson * poisson);
        for (int point = 0; point < 4; point++)
        {
            Assert.Equal(plane * (0.01 - poisson * 0.003), forces[3 * point], 1e-12);
            Assert.Equal(plane * (-0.003 + poisson * 0.01), forces[3 * point + 1], 1e-12);
            Assert.Equal(plane * 0.5 * (1 - poisson) * 0.006, forces[3 * point + 2], 1e-12);
        }
    }

    // Beam theory: pure bending of a rectangle in its plane, M = E t h³/12 · curvature, energy M²L/2EI.
    [Fact]
    public void A_rectangle_bends_in_its_plane_like_a_beam()
    {
        const double length = 10, height = 2, curvature = 0.01;
        var stiffness = new double[64];
        new MembraneElement(new(0, -height / 2, length, -height / 2, length, height / 2, 0, height / 2), 1, 0.3).Stiffness(stiffness);
        double end = curvature * length * height / 2;
        double sag = curvature * length * length / 2;
        double[] movement = [0, 0, -end, -sag, end, -sag, 0, 0];
        double exact = height * height * height / 12 * curvature * curvature * length;
        Assert.Equal(exact, Quadratic(stiffness, movement), 1e-9);
    }

    // Slope-deflection equations: 12EI/L³, 4EI/L, GI_t/L.
    [Fact]
    public void An_edge_beam_has_the_stiffness_of_a_beam()
    {
        const double length = 5, bending = 7, torsion = 3;
        var stiffness = new double[36];
        new EdgeBeam(0, 1, bending, torsion).Stiffness(length, 0, stiffness);
        Assert.Equal(12 * bending / (length * length * length), stiffness[0], 1e-12);
        Assert.Equal(4 * bending / length, stiffness[7], 1e-12);
        Assert.Equal(2 * bending / length, stiffness[10], 1e-12);
        Assert.Equal(6 * bending / (length * length), stiffness[1], 1e-12);
        Assert.Equal(-torsion / length, stiffness[2 * 6 + 5], 1e-12);
    }

    private static double Quadratic(double[] matrix, double[] vector)
    {
        double sum = 0;
        for (int row = 0; row < vector.Length; row++)
        {
            for (int column = 0; column < vector.Length; column++)
            {
                sum += vector[row] * matrix[row * vector.Length + column] * vector[column];
            }
        }

        return sum;
    }
}
