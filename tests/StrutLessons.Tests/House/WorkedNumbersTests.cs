using StrutLessons.Calibration;
using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Plates;
using StrutLessons.Sections;
using StrutLessons.Standards;
using StrutLessons.Torsion;

namespace StrutLessons.Tests.House;

/// <summary>
/// The numbers put into the formula of a worked step must give the value of the step: they are evaluated here by a small TeX
/// calculator that knows nothing of the library.
/// </summary>
public class WorkedNumbersTests
{
    private static readonly Lazy<RatioGrid> Lengths = new(() => RatioGrid.Run([.. Enumerable.Range(0, 9).Select(i => Diagonal.WithLength(900 + 300 * i))]));

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
        ["plate analysis of a gusset"] = () => PlateOnRigidSupport.Flexibility(new GussetPlate(10, 60, 60, 80, 70, 60, 30)).Limit,
        ["by plates, rigid support"] = () => GussetOnRigidSupport.PlateAnalysis(Inclined, L100, Bolts),
        ["by plates, on a flange"] = () => GussetOnGirderFlange.PlateAnalysis(Square, L100, Bolts, Support(WarpingEnd.Fork)),
        ["by plates, on a web"] = () => GussetOnGirderWeb.PlateAnalysis(Square, L100, Bolts, Support(WarpingEnd.Fork), new WebSeat(80)),
        ["hand and plates"] = () => GussetOnGirderFlange.HandFormula(Square, L100, Bolts, Support(WarpingEnd.Fork)).Compare(),
        ["softening"] = () => GussetSoftening.Of(Strip, 30_000),
        ["three segments"] = () => Segments.Under(0.5 * Segments.CriticalLoad),
        ["places of the spring"] = () => SpringPlaceComparison.Of(Segments),
        ["capacity with a tie"] = () => TieComparison.Of(Diagonal, LoadPoint.Of(L100, Bolts, 10), AdjacentTie.Constant(50_000, 25, TieSide.SameAsStrut)),
        ["constant tie"] = () => AdjacentTie.Constant(50_000, 25, TieSide.SameAsStrut).On(LoadPoint.Of(L100, Bolts, 10)),
        ["tie in proportion"] = () => AdjacentTie.Proportional(0.8, 25, TieSide.OppositeToStrut).On(LoadPoint.Of(L100, Bolts, 10)),
        ["second-order solution"] = () => SecondOrderSolution.Of(Diagonal, 40_000),
        ["capacity"] = () => StrutCapacity.Of(Diagonal),
        ["Annex D, few tests"] = () => AnnexD(AnnexDSettings.Default),
        ["Annex D, product form, part of many tests"] = () => AnnexD(new AnnexDSettings { Form = VariationForm.Product, CountForFractiles = 120, MeanOverNominal = 1.2 }),
        ["load path"] = () => ReferenceAnalysis.Follow(ReferenceStrut.Of(Diagonal, Diagonal.Bows[0]), RodMesh.Fast),
        ["load path cut short"] = () => ReferenceAnalysis.Follow(ReferenceStrut.Of(Diagonal, Diagonal.Bows[0]), RodMesh.Fast, PathSettings.Default with { MostSteps = 2 }),
        ["capacity with roll"] = () => RollAnalysis.Capacity(ReferenceStrut.Of(Diagonal, Diagonal.Bows[0], 0)),
        ["constant correction"] = () => CorrectionFunction.Of(Lengths.Value, ElasticModel.Plane, CorrectionForm.Constant, CorrectionVariable.LoadRatio),
        ["linear correction"] = () => CorrectionFunction.Of(Lengths.Value, ElasticModel.WithRoll, CorrectionForm.Linear, CorrectionVariable.LoadRatio),
        ["quadratic correction, capped"] = () => CorrectionFunction.Of(Lengths.Value, ElasticModel.WithRoll, CorrectionForm.Quadratic, CorrectionVariable.Slenderness, 0.8, 1.05),
        ["choice of the bow"] = () => BowChoice.Of(RatioGrid.Run(BowChoice.Borderline([Diagonal])), ElasticModel.WithRoll, [200, 300, 1000]),
        ["EN, concentric"] = () => En1993.ConcentricStrut(Standard(2150)),
        ["EN, stocky"] = () => En1993.ConcentricStrut(Standard(200)),
        ["EN, BB.1.2"] = () => En1993.WebMemberStrut(Standard(2150)),
        ["EN, class 4"] = () => En1993.WebMemberStrut(new StandardStrut(ThinLegs, SteelGrade.S355.ForThickness(6), 2500)),
        ["EN, refused"] = () => En1993.WebMemberStrut(Standard(2150, 1)),
        ["EN, Annex G, one bolt"] = () => En1993AnnexG.Bracing(Standard(2150, 1)),
        ["AISC (a), elastic"] = () => Aisc360.SingleAngle(Standard(2150)),
        ["AISC (b), inelastic"] = () => Aisc360.SingleAngle(Standard(800), Aisc360Truss.Space),
        ["AISC, short leg"] = () => Aisc360.SingleAngle(ShortLeg(1200)),
        ["AISC, short leg, lower limit"] = () => Aisc360.SingleAngle(ShortLeg(2600)),
        ["AISC, slender legs"] = () => Aisc360.SingleAngle(new StandardStrut(ThinLegs, SteelGrade.S355.ForThickness(6), 800)),
        ["ASCE, stocky"] = () => Asce10.Bracing(Standard(1000)),
        ["ASCE, restrained"] = () => Asce10.Bracing(Standard(2150)),
        ["ASCE, unrestrained"] = () => Asce10.Bracing(Standard(2150), Asce10Restraint.None),
        ["ASCE, thin legs"] = () => Asce10.Bracing(new StandardStrut(ThinLegs, SteelGrade.S355.ForThickness(6), 1500)),
        ["ASCE, very thin legs"] = () => Asce10.Bracing(new StandardStrut(VeryThinLegs, SteelGrade.S450.ForThickness(6), 2500)),
        ["IS, fixed"] = () => Is800.SingleAngle(Standard(2150), 1),
        ["IS, hinged, one bolt"] = () => Is800.SingleAngle(Standard(2150, 1), 0),
        ["IS, between"] = () => Is800.SingleAngle(Standard(2150), 0.4),
        ["BS"] = () => Bs5950.SingleAngle(Standard(2150)),
        ["BS, stocky, one bolt"] = () => Bs5950.SingleAngle(Standard(120, 1)),
        ["AS"] = () => As4100.WebMember(Standard(2150)),
        ["AS, stocky"] = () => As4100.WebMember(new StandardStrut(AngleCatalogue.Find("L 100x100x10").Connected(), SteelGrade.S235.ForThickness(10), 300)),
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

    private static AngleSection ThinLegs => new Angle("thin legs", 100, 100, 6, 12, 6).Connected();

    private static AngleSection VeryThinLegs => new Angle("very thin legs", 150, 150, 6, 12, 6).Connected();

    private static GussetSegment Strip => GussetSegment.Of(GussetOnRigidSupport.HandFormula(Square, L100, Bolts));

    private static ThreeSegmentStrut Segments => ThreeSegmentStrut.InOnePlane(5e10, 2000, Strip, Strip, 28, 28, 6);

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

    private static AnnexDEvaluation AnnexD(AnnexDSettings settings) => AnnexDEvaluation.Of(
        [new(58.1, 52), new(70.4, 71.5), new(98.6, 88), new(109.2, 104), new(141, 126)], [new("yield strength", 0.07), new("area", 0.03)], settings);

    private static StandardStrut Standard(double length, int bolts = 2) =>
        new(AngleCatalogue.Find("L 80x80x8").Connected(), SteelGrade.S355.ForThickness(8), length, bolts);

    private static StandardStrut ShortLeg(double length) =>
        new(AngleCatalogue.Find("L 100x65x8").Connected(ConnectedLeg.Short), SteelGrade.S235.ForThickness(8), length);

    private static GirderSupport Support(WarpingEnd end) => new(GirderCatalogue.Find("IPE 360"), 5600, 1500, end);
}
