using System.Text.Json;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Sections;

public class AngleSectionCaseTests
{
    public static TheoryData<string> Ids => [.. StrutCase.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Section_properties_agree_with_the_reference_cases_to_ten_digits(string id)
    {
        StrutCase c = StrutCase.Find(id);
        AngleSection section = c.Section();
        JsonElement want = c.Output.GetProperty("section");
        void Check(string name, double actual) => Closeness.Relative(want.GetProperty(name).GetDouble(), actual, 1e-10, $"{id} {name}");
        Check("A", section.Area);
        Check("c_y", section.CentroidY);
        Check("c_z", section.CentroidZ);
        Check("I_y", section.SecondMomentY);
        Check("I_z", section.SecondMomentZ);
        Check("I_yz", section.ProductMoment);
        Check("I_u", section.SecondMomentU);
        Check("I_v", section.SecondMomentV);
        Check("i_u", section.RadiusU);
        Check("i_v", section.RadiusV);
        Check("eu_y", section.AxisU.Y);
        Check("eu_z", section.AxisU.Z);
        Check("ev_y", section.AxisV.Y);
        Check("ev_z", section.AxisV.Z);
        Check("phi_u_deg", section.AngleToU * 180 / Math.PI);
        Check("tan_alpha", section.TanAlpha);

        JsonElement points = c.Output.GetProperty("points");
        string[] names = ["heel", "c_toe_outer", "c_toe_inner", "o_toe_inner", "o_toe_outer"];
        foreach ((string name, StressPoint point) in names.Zip(section.Corners))
        {
            Closeness.Relative(points.GetProperty(name)[0].GetDouble(), point.Position.Y, 1e-10, $"{id} {name} y");
            Closeness.Relative(points.GetProperty(name)[1].GetDouble(), point.Position.Z, 1e-10, $"{id} {name} z");
        }
    }
}
