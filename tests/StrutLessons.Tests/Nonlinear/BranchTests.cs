using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Nonlinear;

/// <summary>
/// Branches before the peak: which ones count. Reference: an independent study of 1080 struts, in which only thin legs held in both planes hide a branch.
/// </summary>
public class BranchTests
{
    [Fact]
    public void A_thin_angle_held_in_both_planes_has_the_peak_of_the_study_only_without_a_disturbance()
    {
        // The study: 405.8 kN; 381 kN with an initial twist of 1e-4 rad.
        LoadPath path = ReferenceAnalysis.Follow(Strut(100, 6, 55, 0.4, double.PositiveInfinity, double.PositiveInfinity), RodMesh.Fast, PathSettings.PeakOnly);
        Closeness.Relative(405.8e3, path.PeakLoad, 0.002, "peak load");
        Assert.False(path.StableToPeak);
        Closeness.Relative(381e3, path.LowestPeakLoad, 0.01, "peak load with a disturbance");
        Assert.InRange(path.Branch!.Load / path.PeakLoad, 0.8, 0.9);
        Assert.Equal(path.LowestPeakLoad / 1e3, path.WorkedSteps().Single(s => s.Symbol == "N_{u,b}").Value);
    }

    [Fact]
    public void A_plastic_end_section_beside_its_spring_makes_an_unstable_mode_that_does_not_lower_the_peak()
    {
        ReferenceStrut strut = Strut(90, 9, 50, 0.4, 1, 1);
        LoadPath path = ReferenceAnalysis.Follow(strut, RodMesh.Fast, PathSettings.PeakOnly);
        Assert.Contains(path.Points.Take(path.PeakIndex), p => p.UnstableModes > 0);
        Assert.True(path.StableToPeak);
        Assert.InRange(path.Branch!.PeakLoad / path.PeakLoad, 0.996, 1);
        Assert.Equal(path.PeakLoad, path.LowestPeakLoad);
        // It comes from the zero stiffness of flowing fibres: a little hardening takes it away, and so does a finer mesh.
        var hardening = new ReferenceStrut(
            strut.Section, new ReferenceSteel(210000, 80769, 355, 2100), strut.Length, strut.Bow, strut.ResidualPeak, strut.End1, strut.End2);
        Assert.Null(ReferenceAnalysis.Follow(hardening, RodMesh.Standard, PathSettings.PeakOnly).Branch);
        Assert.Null(ReferenceAnalysis.Follow(strut, RodMesh.Standard, PathSettings.PeakOnly).Branch);
    }

    [Fact]
    public void Unlike_ends_that_push_the_strut_off_its_symmetry_confirm_that_the_branch_does_not_count()
    {
        ReferenceStrut a = Strut(90, 9, 50, 0.4, 1, 1);
        ReferenceEnd Moved(double by) => new(a.End1.LoadPoint + new Planar(by, by), a.End1.InPlaneSpring, a.End1.OutOfPlaneSpring);
        var b = new ReferenceStrut(a.Section, a.Steel, a.Length, a.Bow, a.ResidualPeak, Moved(a.Length / 1e5), Moved(-a.Length / 1e5));
        LoadPath even = ReferenceAnalysis.Follow(a, RodMesh.Fast, PathSettings.PeakOnly), uneven = ReferenceAnalysis.Follow(b, RodMesh.Fast, PathSettings.PeakOnly);
        Assert.Null(uneven.Branch);
        Closeness.Relative(even.PeakLoad, uneven.PeakLoad, 2e-3, "peak load");
    }

    [Fact]
    public void The_unstable_mode_of_a_hinged_column_is_half_a_sine_wave_along_the_minor_direction()
    {
        ReferenceSection section = ReferenceSection.Angle(90, 90, 9);
        var end = new ReferenceEnd(Planar.Zero, 0, 0);
        var strut = new ReferenceStrut(section, ReferenceSteel.WithYield(double.PositiveInfinity), 3000, Planar.Zero, 0, end, end);
        double euler = Math.PI * Math.PI * 210000 * section.Iv / (3000.0 * 3000);
        var model = new RodModel(strut, RodMesh.Standard, true, true);
        var follower = new PathFollower(model);
        while (follower.Found.NegativePivots == 0)
        {
            Assert.True(follower.TryStep(0.05));
            follower.Accept();
        }
        Assert.InRange(follower.Last.Load / euler, 1, 1.15);
        double[] mode = follower.UnstableMode();
        double work = mode.Zip(model.Load, (m, f) => m * f).Sum(), middle = At(model.Elements / 2);
        // A hinged straight column bends without any work of the load, to first order.
        Assert.InRange(Math.Abs(work), 0, 1e-6 * Math.Abs(middle));
        for (int node = 0; node <= model.Elements; node++)
        {
            Assert.Equal(Math.Sin(Math.PI * node / model.Elements), At(node) / middle, 0.002);
            Assert.InRange(Math.Abs(mode[RodModel.PerNode * node + 6]) * 45 / Math.Abs(middle), 0, 0.002);
        }

        double At(int node)
        {
            var place = new Planar(mode[RodModel.PerNode * node + 2], mode[RodModel.PerNode * node + 4]);
            Assert.Equal(0, place.Dot(new Planar(-section.MinorDirection.Z, section.MinorDirection.Y)), 1e-3);
            return place.Dot(section.MinorDirection);
        }
    }

    /// <summary>S355, sharp corners, bow L/1000 along the minor direction, load at the bolt line and half an 8 mm gusset; springs as multiples of EI/L.</summary>
    private static ReferenceStrut Strut(double leg, double thickness, double gauge, double slenderness, double inPlane, double outOfPlane)
    {
        ReferenceSection section = ReferenceSection.Angle(leg, leg, thickness);
        double length = slenderness * Math.PI * Math.Sqrt(210000 / 355.0 * section.Iv / section.Area), unit = 210000 / length;
        var end = new ReferenceEnd(new Planar(gauge, 4) - section.Centroid, inPlane * unit * section.Iz, outOfPlane * unit * section.Iy);
        return new(section, ReferenceSteel.WithYield(355), length, length / -1000 * section.MinorDirection, ReferenceStrut.UsualResidualPeak, end, end);
    }
}
