using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Tests.Shown;

/// <summary>The diagonal of the quarry's conveyor gallery that all lessons carry along.</summary>
internal static class GalleryStrut
{
    internal static AngleSection Section { get; } = AngleCatalogue.Find("L 80x80x8").Connected();

    internal static BoltLine Bolts { get; } = new(gauge: 45, count: 2, diameter: 20, pitch: 60, endDistance: 40);

    internal static LoadPoint LoadPoint { get; } = LoadPoint.Of(Section, Bolts, 10);

    internal static GussetFormula Gusset { get; } =
        GussetOnRigidSupport.HandFormula(Joints.Gusset.Symmetric(10, 160, 65, 40), Section, Bolts);

    internal static Strut Strut { get; } = new(Section, SteelGrade.S355.ForThickness(8), 2150, End, End);

    internal static CapacityResult Capacity { get; } = StrutCapacity.Of(Strut);

    internal static SecondOrderSolution Solution { get; } = Capacity.AtCapacity();

    private static StrutEnd End =>
        new(LoadPoint.Offset, new EndSpring(Gusset.Hinge.InPlaneStiffness, Gusset.Hinge.OutOfPlaneStiffness), Gusset.Hinge.HingeDistance);
}
