using CsCheck;
using StrutLessons.Sections;
using StrutLessons.Torsion;

namespace StrutLessons.Tests.Torsion;

public class PointTorqueTests
{
    private static readonly Gen<TorsionBar> Bars = Gen.Select(
        Gen.Double[0.05, 30], Gen.Double[500, 20_000], Gen.Enum<WarpingEnd>(), Gen.Enum<WarpingEnd>(),
        // G I_t chosen such that κL runs from 0.05 to 30.
        (kl, length, e1, e2) => new TorsionBar(2.6e16 * kl * kl / (length * length), 2.6e16, length, e1, e2));

    // Closed forms of warping torsion evaluated for E = 210000, G = 81000, L = 6 m, T = 1 kNm at midspan, I_t by the sections
    // catalogue formula of 2014, I_w by the flange formula: published check values of this project, six digits.
    [Theory]
    [InlineData("IPE 300", 201185, 1.25934e11, 1273.92, 0.0536581, 0.0274248, 0.0920472, 0.1701571, 18.6365)]
    [InlineData("HEA 200", 209849, 1.08000e11, 1155.11, 0.0546433, 0.0297118, 0.0882467, 0.1984127, 18.3005)]
    [InlineData("HEB 300", 1850454, 1.687791e12, 1537.76, 0.00508102, 0.00230180, 0.0100076, 0.0126962, 196.811)]
    public void Midspan_twist_of_three_girders(
        string name, double it, double iw, double a, double forks, double fixedEnds, double stVenant, double warping, double stiffness)
    {
        Girder girder = GirderCatalogue.Find(name);
        TorsionBar Bar(WarpingEnd end) => GirderTorsion.Bar(girder, 6000, end, end, shearModulus: 81_000);
        PointTorque fork = Bar(WarpingEnd.Fork).Under(1e6, 3000), held = Bar(WarpingEnd.WarpingFixed).Under(1e6, 3000);
        Closeness.Relative(it, girder.TorsionConstant(), 3e-6, "I_t");
        Closeness.Relative(iw, girder.WarpingConstant(), 1e-5, "I_w");
        Closeness.Relative(a, 1 / fork.Bar.Decay, 5e-6, "a");
        Closeness.Relative(forks, fork.TwistAtTorque, 5e-6, "forks");
        Closeness.Relative(fixedEnds, held.TwistAtTorque, 5e-6, "warping fixed");
        Closeness.Relative(stVenant, fork.StVenantOnly, 5e-6, "St Venant only");
        Closeness.Relative(warping, fork.WarpingOnly, 5e-6, "warping only");
        Closeness.Relative(stiffness, 1e-6 / fork.Compliance, 5e-6, "T/φ");
    }

    [Fact]
    public void Midspan_formulas_of_the_books_are_special_cases() => Bars.Sample(bar =>
    {
        // φ_mid = (Ta/GI_t)[L/4a − ½ tanh(L/2a)] between forks, (Ta/GI_t)[L/4a − tanh(L/4a)] with warping fixed; a = 1/κ.
        double k = bar.Decay, half = bar.Length / 2, scale = 1 / (bar.StVenant * k);
        if (bar.End1 == bar.End2)
        {
            double want = bar.End1 == WarpingEnd.Fork
                ? scale * (k * bar.Length / 4 - 0.5 * Math.Tanh(k * half))
                : scale * (k * bar.Length / 4 - Math.Tanh(k * bar.Length / 4));
            // Both forms lose digits by cancellation as κL falls; the scale is that of the terms they subtract.
            Closeness.Relative(want, bar.Under(1, half).TwistAtTorque, 1e-12, "φ", scale * k * bar.Length);
        }
    });

    [Fact]
    public void The_closed_form_agrees_with_finite_elements_anywhere_along_the_girder() =>
        Gen.Select(Bars, Gen.Double[0.05, 0.95]).Sample((bar, part) =>
        {
            PointTorque exact = bar.Under(1e6, part * bar.Length);
            IReadOnlyList<(double X, double Twist)> nodes = TorsionElements.Solve(bar, 1e6, exact.Position, 160);
            double scale = nodes.Max(n => Math.Abs(n.Twist));
            foreach ((double x, double twist) in nodes)
            {
                Closeness.Relative(twist, exact.Twist(x), 1e-6, $"κL = {bar.Decay * bar.Length:G4}, φ({x:G5})", scale);
            }
        }, iter: 60);

    [Fact]
    public void Twist_at_b_from_a_torque_at_a_is_twist_at_a_from_a_torque_at_b() =>
        Gen.Select(Bars, Gen.Double[0.01, 0.99], Gen.Double[0.01, 0.99]).Sample((bar, a, b) =>
        {
            double one = bar.Under(1, a * bar.Length).Twist(b * bar.Length), two = bar.Under(1, b * bar.Length).Twist(a * bar.Length);
            // Cancellation as κL falls, see above.
            double scale = bar.Length / bar.StVenant;
            Closeness.Relative(one, two, 1e-12, "Maxwell and Betti", scale);
        });

    [Fact]
    public void Torques_balance_and_the_ends_are_held_as_they_should_be() =>
        Gen.Select(Bars, Gen.Double[0.02, 0.98], Gen.Double[0, 1]).Sample((bar, part, at) =>
        {
            PointTorque p = bar.Under(1e6, part * bar.Length);
            double l = bar.Length, scale = Math.Abs(p.Torque / bar.StVenant);
            Closeness.Relative(0, p.Twist(0), 1e-11, "φ(0)", scale * l);
            Closeness.Relative(0, p.Twist(l), 1e-11, "φ(L)", scale * l);
            Closeness.Relative(0, bar.End1 == WarpingEnd.Fork ? p.TwistCurvature(0) * l : p.TwistRate(0), 1e-10, "end 1", scale);
            Closeness.Relative(0, bar.End2 == WarpingEnd.Fork ? p.TwistCurvature(l) * l : p.TwistRate(l), 1e-10, "end 2", scale);
            // φ′ and φ″ are derivatives of φ and φ′ on each side of the torque.
            double x = at < 0.5 ? at * 2 * p.Position : p.Position + (2 * at - 1) * (l - p.Position), h = 1e-5 * l;
            if (Math.Abs(x - p.Position) > 2 * h && x > h && x < l - h)
            {
                Closeness.Relative((p.Twist(x + h) - p.Twist(x - h)) / (2 * h), p.TwistRate(x), 1e-6, "φ′", scale);
                Closeness.Relative((p.TwistRate(x + h) - p.TwistRate(x - h)) / (2 * h), p.TwistCurvature(x), 1e-5, "φ″", scale * bar.Decay);
            }
        }, iter: 300);

    [Fact]
    public void Stopping_warping_never_makes_the_girder_softer() =>
        Gen.Select(Gen.Double[0.05, 30], Gen.Double[0.02, 0.98]).Sample((kl, part) =>
        {
            double Twist(WarpingEnd e1, WarpingEnd e2) => new TorsionBar(kl * kl, 1, 1, e1, e2).Under(1, part).TwistAtTorque;
            double free = Twist(WarpingEnd.Fork, WarpingEnd.Fork), one = Twist(WarpingEnd.WarpingFixed, WarpingEnd.Fork);
            double both = Twist(WarpingEnd.WarpingFixed, WarpingEnd.WarpingFixed), slack = 1e-12 * free + 1e-15 / (kl * kl);
            Assert.True(both <= one + slack && one <= free + slack);
        });

    [Theory]
    [InlineData(WarpingEnd.Fork, WarpingEnd.Fork)]
    [InlineData(WarpingEnd.WarpingFixed, WarpingEnd.Fork)]
    [InlineData(WarpingEnd.Fork, WarpingEnd.WarpingFixed)]
    [InlineData(WarpingEnd.WarpingFixed, WarpingEnd.WarpingFixed)]
    public void A_girder_of_little_St_Venant_stiffness_twists_as_a_beam_bends(WarpingEnd end1, WarpingEnd end2)
    {
        PointTorque p = new TorsionBar(1e-6, 1, 1, end1, end2).Under(1, 0.3);
        Closeness.Relative(p.WarpingOnly, p.TwistAtTorque, 1e-6, "warping only");
    }

    [Fact]
    public void A_very_long_girder_twists_by_St_Venant_shear_alone_and_does_not_overflow()
    {
        PointTorque p = new TorsionBar(1e8, 1, 1).Under(1, 0.3); // κL = 10 000
        Closeness.Relative(p.StVenantOnly, p.TwistAtTorque, 5e-4, "St Venant only");
    }
}
