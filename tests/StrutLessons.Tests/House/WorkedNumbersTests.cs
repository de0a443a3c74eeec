using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Torsion;

namespace StrutLessons.Tests.House;

/// <summary>
/// The numbers put into the formula of a worked step must give the value of the step: they are evaluated here by a small TeX
/// calculator that knows nothing of the library.
/// </summary>
public class WorkedNumbersTests
{
    private static readonly Dictionary<string, Func<IWorked>> Results = new()
    {
        ["equal angle"] = () => AngleCatalogue.Find("L 80x80x8").Connected(),
        ["unequal angle, long leg"] = () => AngleCatalogue.Find("L 100x65x8").Connected(),
        ["unequal angle, short leg"] = () => AngleCatalogue.Find("L 100x65x8").Connected(ConnectedLeg.Short),
        ["girder"] = () => GirderCatalogue.Find("HEB 300"),
        ["girder in torsion, catalogue"] = () => GirderCatalogue.Find("HEB 300").InTorsion(),
        ["girder in torsion, SCI P385"] = () => GirderCatalogue.Find("HEB 300").InTorsion(TorsionConstantRule.SciP385, WarpingConstantRule.WholeSection),
        ["girder in torsion, thin plates"] = () => GirderCatalogue.Find("IPE 80").InTorsion(TorsionConstantRule.ThinPlates),
        ["load point"] = () => LoadPoint.Of(L100, Bolts, 10),
        ["load point, inner face"] = () => LoadPoint.Of(L100, Bolts, 10, GussetFace.Inner),
        ["load point, interface"] = () => LoadPoint.Of(L100, Bolts, 10, GussetFace.Inner, LoadPlane.Interface),
        ["load point, leg"] = () => LoadPoint.Of(L100, Bolts, 10, GussetFace.Outer, LoadPlane.LegMidPlane),
        ["load point, other leg"] = () => LoadPoint.OfOtherLeg(AngleCatalogue.Find("L 100x100x10").Connected(), Bolts, 10),
        ["square gusset"] = () => GussetOnRigidSupport.HandFormula(Square, L100, Bolts),
        ["inclined gusset"] = () => GussetOnRigidSupport.HandFormula(Inclined, L100, Bolts),
        ["on a flange"] = () => GussetOnGirderFlange.HandFormula(Square, L100, Bolts, Support(WarpingEnd.Fork)),
        ["on a flange, inclined"] = () => GussetOnGirderFlange.HandFormula(Inclined, L100, Bolts, Support(WarpingEnd.WarpingFixed)),
        ["on a web, off mid-depth"] = () => GussetOnGirderWeb.HandFormula(Square, L100, Bolts, Support(WarpingEnd.Fork), new WebSeat(80)),
        ["on a web, inclined, with footprint"] = () =>
            GussetOnGirderWeb.HandFormula(Inclined, L100, Bolts, Support(WarpingEnd.WarpingFixed), new WebSeat(80, ZTowards.Flange, 8)),
        ["constant tie"] = () => AdjacentTie.Constant(50_000, 25, TieSide.SameAsStrut).On(LoadPoint.Of(L100, Bolts, 10)),
        ["tie in proportion"] = () => AdjacentTie.Proportional(0.8, 25, TieSide.OppositeToStrut).On(LoadPoint.Of(L100, Bolts, 10)),
        ["second-order solution"] = () => SecondOrderSolution.Of(Diagonal, 40_000),
        ["capacity"] = () => StrutCapacity.Of(Diagonal),
    };

    public static TheoryData<string> Names => [.. Results.Keys];

    private static AngleSection L100 => AngleCatalogue.Find("L 100x65x8").Connected();

    private static BoltLine Bolts => new(55, 2, 20, 60, 40);

    private static Strut Diagonal
    {
        get
        {
            StrutEnd end = StrutEnd.Of(LoadPoint.Of(L100, Bolts, 10), GussetOnRigidSupport.HandFormula(Square, L100, Bolts).Hinge);
            return new Strut(L100, SteelGrade.S355.ForThickness(8), 2150, end, end);
        }
    }

    private static Gusset Square => Gusset.Symmetric(10, 160, 65, 40);

    private static Gusset Inclined => Gusset.Symmetric(10, 160, 90, 40, 0.1, 60);

    [Theory]
    [MemberData(nameof(Names))]
    public void Numbers_put_into_the_formula_give_the_value_of_the_step(string name)
    {
        IReadOnlyList<WorkedStep> steps = Results[name]().WorkedSteps();
        Assert.NotEmpty(steps);
        foreach (WorkedStep step in steps)
        {
            Assert.False(string.IsNullOrWhiteSpace(step.Source), $"{name}: {step.Title} has no source");
            if (step.Numbers.Length > 0)
            {
                // Numbers are written with five digits; a difference of nearly equal terms keeps fewer.
                double tolerance = step.Symbol == @"\theta_0/N" ? 0.02 : 3e-4;
                Closeness.Relative(step.Value, TexArithmetic.Evaluate(step.Numbers), tolerance, $"{name}: {step.Title} = {step.Numbers}");
            }
        }
    }

    private static GirderSupport Support(WarpingEnd end) => new(GirderCatalogue.Find("IPE 360"), 5600, 1500, end);
}
