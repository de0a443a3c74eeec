using System.Text.Json;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Stress;

namespace StrutLessons.Tests.Member;

public class ResponseCaseTests
{
    public static TheoryData<string, string> Loads()
    {
        var data = new TheoryData<string, string>();
        foreach (StrutCase c in StrutCase.All)
        {
            foreach (string load in new[] { "response_half", "response_N_Ev" })
            {
                if (c.Output.TryGetProperty(load, out JsonElement e) && e.ValueKind == JsonValueKind.Object)
                {
                    data.Add(c.Id, load);
                }
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void Displacements_rotations_moments_and_stresses_agree_with_the_reference_cases(string id, string load)
    {
        StrutCase c = StrutCase.Find(id);
        JsonElement want = c.Output.GetProperty(load);
        Strut strut = c.ToStrut();
        SecondOrderSolution s = SecondOrderSolution.Of(strut, want.GetProperty("N").GetDouble());
        double length = strut.SystemLength;
        AngleSection section = strut.Section;
        Planar middle = s.Deflection(length / 2);
        Planar m1 = s.Moment(0), mm = s.Moment(length / 2), m2 = s.Moment(length);

        // Where a whole group is zero, "largest component" means nothing: the floor is 1e-9 of a micrometre, a microradian, a N mm.
        Check(1e-3, ("d_u_mid", section.AlongU(middle)), ("d_v_mid", section.AlongV(middle)), ("d_y_mid", middle.Y), ("d_z_mid", middle.Z));
        Check(1e-6, ("th_y1", s.RotationEnd1.Y), ("th_z1", s.RotationEnd1.Z), ("th_y2", s.RotationEnd2.Y), ("th_z2", s.RotationEnd2.Z));
        Check(1e-6, ("th_y1", s.Slope(0).Y), ("th_z1", s.Slope(0).Z), ("th_y2", s.Slope(length).Y), ("th_z2", s.Slope(length).Z));
        Check(1, ("M_y_1", m1.Y), ("M_z_1", m1.Z), ("M_y_mid", mm.Y), ("M_z_mid", mm.Z), ("M_y_2", m2.Y), ("M_z_2", m2.Z));

        StressExtremes extremes = s.Extremes();
        Check(0, ("s_max_comp", extremes.LargestCompression), ("s_max_tens", extremes.LargestTension));
        Place("s_max_comp", extremes.Compression);
        Place("s_max_tens", extremes.Tension);

        void Check(double floor, params (string Name, double Actual)[] group)
        {
            double largest = group.Max(g => Math.Abs(want.GetProperty(g.Name).GetDouble()));
            foreach ((string name, double actual) in group)
            {
                Closeness.Relative(want.GetProperty(name).GetDouble(), actual, 1e-9, $"{id} {load} {name}", Math.Max(largest, floor));
            }
        }

        void Place(string name, IReadOnlyList<StressPlace> places)
        {
            if (want.GetProperty(name + "_point").ValueKind != JsonValueKind.String)
            {
                return;
            }

            string corner = want.GetProperty(name + "_point").GetString()!;
            double x = want.GetProperty(name + "_x").GetDouble();
            Assert.Contains(places, p => CornerNames.Of(p.Corner) == corner && Math.Abs(p.X - x) <= 1e-6 * length);
        }
    }
}
