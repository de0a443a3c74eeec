using MathNet.Numerics.Distributions;
using StrutLessons.Calibration;

namespace StrutLessons.Tests.Calibration;

/// <summary>EN 1990:2002, Annex D.8 (from memory). The worked example is our own synthetic data, calculated apart from this library.</summary>
public class AnnexDTests
{
    private static readonly double[] Calculated = [52.0, 71.5, 88.0, 104.0, 126.0, 149.0, 171.0, 205.0];
    private static readonly double[] Measured = [58.1, 70.4, 98.6, 109.2, 141.0, 151.3, 193.2, 214.0];
    private static readonly BasicVariable[] Variables = [new("yield strength", 0.07), new("area", 0.03), new("elastic modulus", 0.005)];

    private static AnnexDEvaluation Example(AnnexDSettings? settings = null) =>
        AnnexDEvaluation.Of([.. Measured.Zip(Calculated, (e, t) => new AnnexDTest(e, t))], Variables, settings);

    [Fact]
    public void The_worked_example_holds_to_every_printed_digit()
    {
        AnnexDEvaluation e = Example();
        Printed(1.07063147m, e.Slope);
        decimal[] errors = [1.0436m, 0.91966m, 1.04654m, 0.98073m, 1.04522m, 0.94845m, 1.05529m, 0.97503m];
        Assert.All(errors.Zip(e.ErrorTerms), pair => Printed(pair.First, pair.Second));
        Printed(0.00059725m, e.MeanLogError);
        Printed(0.00279618m, e.LogErrorVariance);
        Printed(0.0529159m, e.ErrorVariation);
        Printed(0.0763217m, e.ModelVariation);
        Printed(0.0928714m, e.VariationSum);
        Printed(0.0929837m, e.VariationProduct);
        Printed(0.0926721m, e.Q);
        Printed(0.0762109m, e.QModel);
        Printed(0.0528789m, e.QError);
        Printed(0.822372m, e.WeightModel);
        Printed(0.570603m, e.WeightError);
        Printed(0.905583m, e.CharacteristicResistance);
        Printed(0.756124m, e.DesignResistance);
        Printed(1.19767m, e.PartialFactor);
        Printed(1.32253m, e.PartialFactorOnNominal);
        Printed(1.10211m, Example(new AnnexDSettings { MeanOverNominal = 1.2 }).PartialFactorOnNominal);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(5000)]
    public void From_a_hundred_tests_on_one_fractile_factor_acts_on_the_whole_scatter(int count)
    {
        AnnexDEvaluation e = Example(new AnnexDSettings { CountForFractiles = count });
        Printed(0.915736m, e.CharacteristicResistance);
        Printed(0.804312m, e.DesignResistance);
    }

    [Fact]
    public void In_product_form_the_two_scatters_add_up_exactly()
    {
        AnnexDEvaluation e = Example(new AnnexDSettings { Form = VariationForm.Product });
        Printed(0.0929837m, e.Variation);
        Closeness.Relative(e.Q * e.Q, e.QModel * e.QModel + e.QError * e.QError, 1e-12, "Q²");
        Closeness.Relative(1, e.WeightModel * e.WeightModel + e.WeightError * e.WeightError, 1e-12, "Σα²");
    }

    [Fact]
    public void Tests_that_the_model_meets_but_for_one_factor_need_no_partial_factor()
    {
        AnnexDEvaluation e = AnnexDEvaluation.Of([.. Calculated.Select(t => new AnnexDTest(1.25 * t, t))], []);
        Closeness.Relative(1.25, e.DesignResistance, 1e-7, "r_d");
        Closeness.Relative(1, e.PartialFactor, 1e-7, "γ_M");
    }

    /// <summary>Printed columns: fractile of Student's t times √(1 + 1/n), at 5 % (k_n) and 0.1 % (k_d,n); prints differ from it by 0.9 % at most.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    public void The_columns_for_V_unknown_follow_Students_t(int count)
    {
        double Factor(double p) => StudentT.InvCDF(0, 1, count - 1, 1 - p) * Math.Sqrt(1 + 1.0 / count);
        Closeness.Relative(Factor(0.05), AnnexDTable.Characteristic(count, VariationKnowledge.Unknown), 0.009, "k_n");
        Closeness.Relative(Factor(0.001), AnnexDTable.Design(count, VariationKnowledge.Unknown), 0.009, "k_d,n");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    [InlineData(30)]
    public void The_columns_for_V_known_follow_the_normal_distribution(int count)
    {
        Closeness.Relative(1.645 * Math.Sqrt(1 + 1.0 / count), AnnexDTable.Characteristic(count, VariationKnowledge.Known), 0.009, "k_n");
        Closeness.Relative(3.08 * Math.Sqrt(1 + 1.0 / count), AnnexDTable.Design(count, VariationKnowledge.Known), 0.009, "k_d,n");
    }

    [Fact]
    public void The_last_column_of_the_design_table_is_the_printed_3_04_and_not_the_limit_of_the_others()
    {
        foreach (VariationKnowledge knowledge in Enum.GetValues<VariationKnowledge>())
        {
            Closeness.Relative(3.04, AnnexDTable.Design(10_000_000, knowledge), 1e-5, "k_d,∞");
            Closeness.Relative(1.64, AnnexDTable.Characteristic(10_000_000, knowledge), 1e-5, "k_∞");
        }

        Assert.True(AnnexDTable.DesignMany < 0.99 * Normal.InvCDF(0, 1, 0.999));
    }

    [Fact]
    public void Between_printed_columns_a_factor_is_linear_in_one_over_n()
    {
        // 1/n of 7 between 6 and 8: (1/6 − 1/7)/(1/6 − 1/8) = 4/7 of the way. Of 15 between 10 and 20: 2/3.
        Closeness.Relative(2.18 - 0.18 * 4 / 7, AnnexDTable.Characteristic(7, VariationKnowledge.Unknown), 1e-12, "k_7");
        Closeness.Relative(4.51 - 0.87 * 2 / 3, AnnexDTable.Design(15, VariationKnowledge.Unknown), 1e-12, "k_d,15");
        Closeness.Relative((1.73 + 1.64) / 2, AnnexDTable.Characteristic(60, VariationKnowledge.Unknown), 1e-12, "k_60");
    }

    [Theory]
    [InlineData(VariationKnowledge.Known)]
    [InlineData(VariationKnowledge.Unknown)]
    public void More_tests_never_raise_a_factor(VariationKnowledge knowledge)
    {
        for (int n = 4; n < 200; n++)
        {
            Assert.True(AnnexDTable.Characteristic(n + 1, knowledge) <= AnnexDTable.Characteristic(n, knowledge));
            Assert.True(AnnexDTable.Design(n + 1, knowledge) <= AnnexDTable.Design(n, knowledge));
        }
    }

    /// <summary>The value rounds to the print.</summary>
    private static void Printed(decimal print, double value) => Assert.Equal(print, Math.Round((decimal)value, print.Scale, MidpointRounding.AwayFromZero));
}
