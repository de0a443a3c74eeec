using StrutLessons.Plates;

namespace StrutLessons.Tests.Plates;

/// <summary>
/// The plate element against the classical plates. T&amp;WK: S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells,
/// 2nd ed. Book digits from memory unless a closed form is given.
/// </summary>
public class ClassicalPlateTests
{
    // Navier's double series, T&WK ch. 5, summed to six digits; the book prints 0.00406 (table 8) and 0.01160 (table 23).
    [Theory]
    [InlineData(SquareLoad.Uniform, 0.00406235)]
    [InlineData(SquareLoad.CentrePoint, 0.0116008)]
    public void The_simply_supported_square_reaches_Naviers_series(SquareLoad load, double navier) =>
        Closeness.Relative(navier, ClassicalPlates.SquareCentreDeflection(SquareEdges.SimplySupported, load, 32), 1e-3, "value");

    // Uniform: 0.00126532 q a⁴/D (R. L. Taylor, S. Govindjee, Commun. Numer. Meth. Engng 20, 2004, from memory; T&WK table 35
    // prints 0.00126). Centre load: 0.00560 P a²/D (T&WK table 37), three digits.
    [Theory]
    [InlineData(SquareLoad.Uniform, 0.00126532, 0, 1e-3)]
    [InlineData(SquareLoad.Uniform, 0.00126532, 0.2, 1e-3)]
    [InlineData(SquareLoad.CentrePoint, 0.00560, 0, 5e-3)]
    [InlineData(SquareLoad.CentrePoint, 0.00560, 0.2, 5e-3)]
    public void The_clamped_square_reaches_the_book_on_straight_and_distorted_meshes(
        SquareLoad load, double book, double distortion, double digits) =>
        Closeness.Relative(book, ClassicalPlates.SquareCentreDeflection(SquareEdges.Clamped, load, 32, distortion), digits, "deflection");

    [Theory]
    [InlineData(SquareEdges.SimplySupported, 0)]
    [InlineData(SquareEdges.Clamped, 0)]
    [InlineData(SquareEdges.Clamped, 0.2)]
    public void Even_pressure_converges_with_the_square_of_the_element_size(SquareEdges edges, double distortion) =>
        Assert.InRange(Order(n => ClassicalPlates.SquareCentreDeflection(edges, SquareLoad.Uniform, n, distortion), 16), 1.9, 2.15);

    // Under a point load the moments are infinite: theory gives h² ln h, seen as an order a little below 2.
    [Theory]
    [InlineData(SquareEdges.SimplySupported)]
    [InlineData(SquareEdges.Clamped)]
    public void A_point_load_converges_almost_as_fast(SquareEdges edges) =>
        Assert.InRange(Order(n => ClassicalPlates.SquareCentreDeflection(edges, SquareLoad.CentrePoint, n), 16), 1.7, 2.0);

    // T&WK art. 17: w = q a⁴/(64 D).
    [Fact]
    public void The_clamped_circle_reaches_its_closed_form_with_order_two()
    {
        Closeness.Relative(1 / 64.0, ClassicalPlates.CircleCentreDeflection(16), 5e-4, "value");
        Assert.InRange(Order(ClassicalPlates.CircleCentreDeflection, 8), 1.9, 2.1);
    }

    // Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., art. 9.2: k = 4.
    [Fact]
    public void The_compressed_square_buckles_at_k_4_with_order_two()
    {
        Closeness.Relative(4, ClassicalPlates.SquareBuckling(16), 2e-4, "value");
        Assert.InRange(Order(ClassicalPlates.SquareBuckling, 8), 1.95, 2.1);
    }

    // Beam theory, P L³/3EI: exact for ν = 0, where nothing hinders the strip across its length.
    [Fact]
    public void A_cantilever_strip_without_lateral_contraction_is_a_beam() =>
        Closeness.Relative(1, ClassicalPlates.CantileverStrip(2, poisson: 0), 1e-6, "value");

    // Reference cases: 0.9974 for ν = 0.3, stiffer than the beam because the root cannot curve across.
    [Fact]
    public void A_clamped_root_stiffens_the_strip_a_little() =>
        Closeness.Relative(0.9974, ClassicalPlates.CantileverStrip(8), 5e-4, "value");

    // T. J. Jaramillo, J. Appl. Mech. 17, 1950, as printed in Roark's Formulas, table 11.4 (from memory);
    // fourth digits by a Fourier integral solved independently (reference cases).
    [Theory]
    [InlineData(1.0, 0, 0.5087)]
    [InlineData(1.0, 0.25, 0.4740)]
    [InlineData(1.0, 0.5, 0.3893)]
    [InlineData(1.0, 1, 0.2054)]
    [InlineData(1.0, 1.5, 0.0913)]
    [InlineData(1.0, 2, 0.0372)]
    [InlineData(0.5, 0, 0.3695)]
    [InlineData(0.5, 0.25, 0.3017)]
    [InlineData(0.5, 0.5, 0.1957)]
    [InlineData(0.5, 1, 0.0757)]
    [InlineData(0.5, 1.5, 0.0290)]
    [InlineData(0.5, 2, 0.0108)]
    public void The_long_cantilever_plate_has_Jaramillos_root_moments(double distance, double along, double moment) =>
        Closeness.Relative(moment, ClassicalPlates.CantileverPlateRootMoment(distance, along, 8), 2.5e-3, "value");

    [Theory]
    [InlineData(1.0, 0)]
    [InlineData(1.0, 1)]
    [InlineData(0.5, 0)]
    [InlineData(0.5, 1)]
    public void Root_moments_converge_with_order_two(double distance, double along) =>
        Assert.InRange(Order(n => ClassicalPlates.CantileverPlateRootMoment(distance, along, n), 2), 1.75, 2.1);

    /// <summary>Observed order of convergence from three meshes, each twice as fine as the one before.</summary>
    private static double Order(Func<int, double> value, int elements)
    {
        double coarse = value(elements), middle = value(2 * elements), fine = value(4 * elements);
        return Math.Log2(Math.Abs((middle - coarse) / (fine - middle)));
    }
}
