using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Nonlinear;

public class WrongReferenceInputTests
{
    private static readonly ReferenceSection Section = ReferenceSection.Angle(90, 90, 9);
    private static readonly ReferenceEnd Hinge = new(Planar.Zero, 0, 0);
    private static readonly ReferenceSteel Steel = ReferenceSteel.WithYield(355);

    private static ReferenceStrut Strut(double length = 2000, double bow = 2, double residual = 50, ReferenceSteel? steel = null) =>
        new(Section, steel ?? Steel, length, new Planar(bow, 0), residual, Hinge, Hinge);

    public static TheoryData<string, string, string> Cases => new()
    {
        { "elastic modulus in GPa", "elastic modulus", "MPa" },
        { "shear modulus NaN", "shear modulus", "NaN" },
        { "yield strength zero", "yield strength", "greater than 0" },
        { "hardening negative", "hardening modulus", "0 or more" },
        { "load point NaN", "load point z", "finite" },
        { "spring negative", "in-plane spring", "rigid" },
        { "spring NaN", "out-of-plane spring", "0 or more" },
        { "arm negative", "rigid arm", "0 or more" },
        { "length zero", "length", "greater than 0" },
        { "length infinite", "length", "greater than 0" },
        { "bow too large", "bow", "L/20" },
        { "bow NaN", "bow", "L/20" },
        { "residual above yield", "residual stress", "below the yield strength" },
        { "thickness too large", "thickness", "half of each leg" },
        { "leg negative", "outstanding leg", "greater than 0" },
        { "rectangle inside out", "side along y", "greater than 0" },
        { "no rectangle", "rectangles", "at least one" },
        { "odd elements", "elements", "even" },
        { "two stations", "stations per element", "between 3 and 8" },
        { "no cells", "cells along the leg", "between 1 and 400" },
        { "step too large", "largest step", "between 0.001 and 1" },
        { "fall of one", "fall behind the peak", "between 0 and 0.9" },
        { "no steps", "most steps", "between 1" },
        { "load negative", "load", "greater than 0" },
        { "loads falling", "load", "greater than the one before" },
        { "load beyond stability", "load", "stable equilibrium" },
        { "first yield without yield strength", "yield strength", "finite" },
        { "hinged length zero", "length", "greater than 0" },
        { "rod loads with nothing", "load", "greater than 0" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_wrong_input_is_named_with_what_is_allowed(string what, string field, string allowed)
    {
        InputException error = Assert.Throws<InputException>(() => Do(what));
        Assert.Equal(field, error.Field);
        Assert.Contains(allowed, error.Message);
        Assert.NotEmpty(error.Advice);
    }

    private static object? Do(string what) => what switch
    {
        "elastic modulus in GPa" => new ReferenceSteel(210, 80769, 355),
        "shear modulus NaN" => new ReferenceSteel(210000, double.NaN, 355),
        "yield strength zero" => ReferenceSteel.WithYield(0),
        "hardening negative" => new ReferenceSteel(210000, 80769, 355, -1),
        "load point NaN" => new ReferenceEnd(new Planar(0, double.NaN), 0, 0),
        "spring negative" => new ReferenceEnd(Planar.Zero, -1, 0),
        "spring NaN" => new ReferenceEnd(Planar.Zero, 0, double.NaN),
        "arm negative" => new ReferenceEnd(Planar.Zero, 0, 0, -5),
        "length zero" => Strut(length: 0),
        "length infinite" => Strut(length: double.PositiveInfinity),
        "bow too large" => Strut(bow: 200),
        "bow NaN" => Strut(bow: double.NaN),
        "residual above yield" => Strut(residual: 400),
        "thickness too large" => ReferenceSection.Angle(50, 50, 30),
        "leg negative" => ReferenceSection.Angle(50, -50, 5),
        "rectangle inside out" => new SectionRectangle(3, 1, 0, 5),
        "no rectangle" => ReferenceSection.Of([], Planar.Zero, 1),
        "odd elements" => new RodMesh(7, 4, 8, 1),
        "two stations" => new RodMesh(8, 2, 8, 1),
        "no cells" => new RodMesh(8, 4, 0, 1),
        "step too large" => new PathSettings { LargestStep = 2 },
        "fall of one" => new PathSettings { Fall = 1 },
        "no steps" => new PathSettings { MostSteps = 0 },
        "load negative" => RollAnalysis.StateAt(Strut(), -1),
        "loads falling" => ElasticRod.StatesAt(Strut(), [2e4, 1e4], 4),
        "load beyond stability" => ElasticRod.StatesAt(Strut(bow: 0), [1e6], 8),
        "first yield without yield strength" => RollAnalysis.Capacity(Strut(steel: ReferenceSteel.WithYield(double.PositiveInfinity))),
        "hinged length zero" => TorsionalFlexuralBuckling.Hinged(Section, Steel, 0),
        "rod loads with nothing" => ElasticRod.StatesAt(Strut(), [0], 4),
        _ => throw new ArgumentException(what),
    };
}
