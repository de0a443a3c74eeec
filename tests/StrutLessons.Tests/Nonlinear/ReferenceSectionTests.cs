using StrutLessons.Nonlinear;
using StrutLessons.Sections;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

public class ReferenceSectionTests
{
    [Theory]
    [InlineData(90, 90, 9, 0, 0, 1e-12)]
    [InlineData(100, 65, 8, 0, 0, 1e-12)]
    [InlineData(90, 90, 9, 11, 5.5, 1e-3)]
    [InlineData(100, 65, 8, 10, 5, 1e-3)]
    public void An_angle_of_rectangles_has_the_properties_of_the_exact_outline(double b1, double b2, double t, double root, double toe, double tolerance)
    {
        ReferenceSection section = ReferenceSection.Angle(b1, b2, t, root, toe);
        AngleSection outline = new Angle("outline", b1, b2, t, root, toe).Connected();
        Closeness.Relative(outline.Area, section.Area, 1e-12, "area");
        Closeness.Relative(outline.SecondMomentU, section.Iu, tolerance, "I_u");
        Closeness.Relative(outline.SecondMomentV, section.Iv, tolerance, "I_v");
        Assert.True(Math.Abs(Math.Abs(section.MinorDirection.Dot(outline.AxisU)) - 1) < 1e-6);
    }

    [Theory]
    [MemberData(nameof(CaseIds))]
    public void Area_centroid_and_torsion_constant_are_those_of_the_reference_cases(string id)
    {
        NonlinearCase c = NonlinearCase.Get(id);
        Closeness.Relative(c.Data.GetProperty("A").GetDouble(), c.Strut.Section.Area, 1e-9, "A");
        Closeness.Relative(c.Data.GetProperty("J").GetDouble(), c.Strut.Section.TorsionConstant, 1e-5, "J");
        Closeness.Relative(c.Data.GetProperty("y_c").GetDouble(), c.Strut.Section.Centroid.Y, 1e-5, "y_c");
        Closeness.Relative(c.Data.GetProperty("z_c").GetDouble(), -c.Strut.Section.Centroid.Z, 1e-5, "z_c");
    }

    public static TheoryData<string> CaseIds => [.. NonlinearCase.All.Select(c => c.Id)];

    [Fact]
    public void The_fibres_add_up_to_the_section_on_every_mesh()
    {
        ReferenceSection section = ReferenceSection.Angle(100, 65, 8, 10, 5);
        ReferenceStrut sample = NonlinearCase.Get("P16").Strut;
        var strut = new ReferenceStrut(section, sample.Steel, 1000, Planar.Zero, 0, sample.End1, sample.End2);
        foreach (RodMesh mesh in new[] { new RodMesh(2, 3, 1, 1), RodMesh.Fast, RodMesh.Standard })
        {
            var fibres = new FibreSection(strut, mesh, true);
            double area = 0, iy = 0, iz = 0, iyz = 0;
            for (int i = 0; i < fibres.Count; i++)
            {
                Planar p = fibres.Position(i) + section.ShearCentre - section.Centroid;
                area += fibres.Area(i);
                iy += fibres.Area(i) * p.Z * p.Z;
                iz += fibres.Area(i) * p.Y * p.Y;
                iyz += fibres.Area(i) * p.Y * p.Z;
            }
            Closeness.Relative(section.Area, area, 1e-12, "area");
            Closeness.Relative(section.Iy, iy, 1e-12, "I_y");
            Closeness.Relative(section.Iz, iz, 1e-12, "I_z");
            Closeness.Relative(section.Iyz, iyz, 1e-12, "I_yz");
        }
    }

    [Theory]
    [InlineData(90, 9, 11, false, 1.0265, 1.0315)]
    [InlineData(70, 7, 9, true, 1.003, 1.014)]
    [InlineData(90, 9, 11, true, 1.003, 1.014)]
    [InlineData(60, 6, 8, true, 1.003, 1.014)]
    public void Fillets_raise_the_peak_load_a_little(double leg, double t, double root, bool rigidInPlane, double least, double most)
    {
        // The study behind the reference cases gives +2.7 to +3.1 % hinged at a relative slenderness of 1.2 and +0.3 to +1.4 % rigid in the plane of the
        // gusset. Force on the same bolt line and in the middle of an 8 mm gusset, S355, no residual stress; J with fillets is 1.085 times the mid-line value.
        ReferenceSection sharp = ReferenceSection.Angle(leg, leg, t);
        double length = 1.2 * Math.PI * Math.Sqrt(210000 / 355.0) * Math.Sqrt(sharp.Iv / sharp.Area);
        double Peak(ReferenceSection section)
        {
            var end = new ReferenceEnd(new Planar(leg / 1.8, 4) - section.Centroid, rigidInPlane ? double.PositiveInfinity : 0, 0);
            var strut = new ReferenceStrut(section, ReferenceSteel.WithYield(355), length, length / 1000 * sharp.MinorDirection, 0, end, end);
            return ReferenceAnalysis.Follow(strut, RodMesh.Standard, PathSettings.PeakOnly).PeakLoad;
        }
        double ratio = Peak(ReferenceSection.Angle(leg, leg, t, root, root / 2, 1.085 * sharp.TorsionConstant)) / Peak(sharp);
        Assert.InRange(ratio, least, most);
    }
}
