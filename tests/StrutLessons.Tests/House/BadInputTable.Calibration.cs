using StrutLessons.Calibration;
using StrutLessons.Member;
using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly AnnexDTest[] FourTests = [new(10, 9), new(20, 21), new(31, 30), new(40, 41)];

    private static readonly Lazy<RatioGrid> PinnedGrid = new(() => RatioGrid.Run([Pinned]));
    private static readonly Lazy<RatioGrid> SixAlike = new(() => RatioGrid.Run([.. Enumerable.Repeat(Pinned, 6)]));

    private static Strut Pulled => Pinned.WithEnds(Pinned.End1 with { ConstantMoment = new Planar(0, 1e5) }, Pinned.End2);

    private static IEnumerable<BadInput> Calibration =>
    [
        new("test without resistance", () => _ = new AnnexDTest(0, 10), "measured resistance r_e", "greater than 0"),
        new("model resistance NaN", () => _ = new AnnexDTest(10, double.NaN), "calculated resistance r_t", "NaN"),
        new("test made without its constructor", () => AnnexDEvaluation.Of([.. FourTests, default], []), "measured resistance r_e"),
        new("basic variable without a name", () => _ = new BasicVariable(" ", 0.05), "name of the basic variable", "yield strength"),
        new("variation in per cent", () => _ = new BasicVariable("yield strength", 7), "coefficient of variation V_X", "7 % is 0.07"),
        new("variation NaN", () => _ = new BasicVariable("yield strength", double.NaN), "coefficient of variation V_X", "NaN"),
        new("one test", () => AnnexDEvaluation.Of([new(10, 9)], []), "number of tests", "2 or more"),
        new("three tests with V unknown", () => AnnexDEvaluation.Of(FourTests[..3], []), "number of tests n", "4 or more"),
        new("two tests, k_n with V unknown", () => AnnexDTable.Characteristic(2, VariationKnowledge.Unknown), "number of tests n", "3 or more"),
        new("no test, k_n with V known", () => AnnexDTable.Characteristic(0, VariationKnowledge.Known), "number of tests n", "1 or more"),
        new("no test, k_d,n with V known", () => AnnexDTable.Design(-3, VariationKnowledge.Known), "number of tests n", "1 or more"),
        new("knowledge without a name", () => AnnexDTable.Design(10, (VariationKnowledge)5), "knowledge of the variation", "Known"),
        new("form of the variation without a name", () => AnnexDEvaluation.Of(FourTests, [], new AnnexDSettings { Form = (VariationForm)9 }),
            "form of the variation", "Product"),
        new("series of no tests", () => _ = new AnnexDSettings { CountForFractiles = 0 }, "count for the fractiles", "between 1"),
        new("mean over nominal NaN", () => _ = new AnnexDSettings { MeanOverNominal = double.NaN }, "mean over nominal resistance", "1.2"),
        new("constant joint moment in the reference", () => ReferenceStrut.Of(Pulled, Bow.None), "constant joint moment", "in proportion"),
        new("constant joint moment in a grid", () => RatioGrid.Run([Pulled]), "constant joint moment", "0 for this analysis"),
        new("grid without struts", () => RatioGrid.Run([]), "struts", "at least one"),
        new("bow of the reference as a divisor", () => _ = new RatioSettings { BowRatio = 1000 }, "bow ratio of the reference", "L/1000"),
        new("residual stress of a grid NaN", () => _ = new RatioSettings { ResidualPeak = double.NaN }, "residual stress", "NaN"),
        new("no workers", () => _ = new RatioSettings { Workers = 0 }, "workers", "between 1 and 1024"),
        new("ratios of nothing", () => RatioStatistics.Of([]), "ratios", "none"),
        new("ratio NaN", () => RatioStatistics.Of([1, double.NaN]), "ratio", "NaN"),
        new("fractile in per cent", () => RatioStatistics.Of([1, 2]).Fractile(5), "share", "0.05"),
        new("model of a ratio without a name", () => PinnedGrid.Value.Cases[0].Ratio((ElasticModel)4), "elastic model", "WithRoll"),
        new("correction from one case", () => CorrectionFunction.Of(PinnedGrid.Value, ElasticModel.Plane, CorrectionForm.Linear, CorrectionVariable.LoadRatio),
            "number of cases", "6 or more"),
        new("correction of one slenderness", () => CorrectionFunction.Of(SixAlike.Value, ElasticModel.Plane, CorrectionForm.Linear, CorrectionVariable.Slenderness),
            "different values of the variable", "simpler form"),
        new("correction outside its grid", () => CorrectionFunction.Of(SixAlike.Value, ElasticModel.Plane, CorrectionForm.Constant, CorrectionVariable.LoadRatio).At(3),
            "variable of the correction", "wider grid"),
        new("form of a correction without a name", () => CorrectionFunction.Of(PinnedGrid.Value, ElasticModel.Plane, (CorrectionForm)8, CorrectionVariable.LoadRatio),
            "form of the correction", "Linear"),
        new("variable of a correction without a name", () => CorrectionFunction.Of(PinnedGrid.Value, ElasticModel.Plane, CorrectionForm.Linear, (CorrectionVariable)8),
            "variable of the correction", "Slenderness"),
        new("safe share in per cent", () => CorrectionFunction.Of(PinnedGrid.Value, ElasticModel.Plane, CorrectionForm.Linear, CorrectionVariable.LoadRatio, 95),
            "safe share", "between 0.5 and 1"),
        new("cap of zero", () => CorrectionFunction.Of(PinnedGrid.Value, ElasticModel.Plane, CorrectionForm.Linear, CorrectionVariable.LoadRatio, 0.9, 0),
            "cap of the correction", "between 0.5 and 3"),
        new("variable of a grid without a name", () => RatioVariable.Of("", c => 1), "name of the variable", "unit"),
        new("words of a grid without a name", () => RatioVariable.OfWords(" ", c => ""), "name of the variable", "unit"),
        new("nothing varies in a grid", () => RatioSensitivity.Of(SixAlike.Value, ElasticModel.Plane), "variables", "at least one that differs"),
        new("sensitivity of a model without a name", () => RatioSensitivity.Of(SixAlike.Value, (ElasticModel)7), "elastic model", "Plane"),
        new("fit outside its grid", () => CorrectionFunction.Of(SixAlike.Value, ElasticModel.Plane, CorrectionForm.Constant, CorrectionVariable.LoadRatio).FitAt(3),
            "variable of the correction", "wider grid"),
        new("no bow on trial", () => BowChoice.Of(PinnedGrid.Value, ElasticModel.Plane, []), "bow divisors", "none"),
        new("bow on trial as a ratio", () => BowChoice.Of(PinnedGrid.Value, ElasticModel.Plane, [0.003]), "bow divisor", "L/300"),
        new("safe share of a bow NaN", () => BowChoice.Of(PinnedGrid.Value, ElasticModel.Plane, [300], double.NaN), "safe share", "NaN"),
        new("springs between the borderline supports", () => BowChoice.Of(RatioGrid.Run([Pinned.WithSprings(new EndSpring(1e8, 1e8))]), ElasticModel.Plane, [300]),
            "springs", "BowChoice.Borderline"),
    ];
}
