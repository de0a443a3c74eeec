using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Standards;
using StrutLessons.Studies;

namespace StrutLessons.Tests.Studies;

/// <summary>What a study finds is what the library finds for the same strut.</summary>
public class StudyNumbersTests
{
    private static readonly Study Grid = Study.Of(new StudyStrut())
        .Vary(StudyVariable.Section, "L 80x80x8", "L 100x65x8")
        .Vary(StudyVariable.Steel, "S235", "S355")
        .Vary(StudyVariable.End, "hinged", "rigid support", "girder flange", "girder web", "rigid")
        .Vary(StudyVariable.GussetThickness, 8, 16)
        .Vary(StudyVariable.Length, 900, 2150, 3400)
        .Find(StudyQuantity.CriticalLoad, StudyQuantity.Capacity, StudyQuantity.CapacityPlus, StudyQuantity.CapacityMinus, StudyQuantity.Hinged,
            StudyQuantity.Rigid, StudyQuantity.Spring, StudyQuantity.Reason, StudyQuantity.Corner, StudyQuantity.Standard("EN BB.1.2"));

    [Fact]
    public void A_grid_finds_what_the_library_finds_for_each_strut()
    {
        StudyTable table = Grid.Run();
        Assert.Equal(120, table.RowCount);
        Assert.Equal(0, table.ProblemCount);
        for (int i = 0; i < table.RowCount; i++)
        {
            Strut strut = ByHand(Grid.Case((long)table.Numbers("case")[i]));
            CapacityResult want = StrutCapacity.Of(strut);
            void Check(string name, double expected) => Closeness.Relative(expected / 1e3, table.Numbers(name)[i], 1e-11, $"case {i + 1} {name}");
            Check("critical load", want.CriticalLoad);
            Check("capacity", want.Load);
            Check("capacity u+", want.Bows[0].Load);
            Check("capacity u-", want.Bows[1].Load);
            Check("hinged capacity", StrutCapacity.LoadOf(strut.WithSprings(EndSpring.Hinged)));
            Check("rigid capacity", StrutCapacity.LoadOf(strut.WithSprings(EndSpring.Rigid)));
            Assert.Equal(want.Governing.Reason.ToString().ToLowerInvariant(), table.Words("reason")[i]);
            double? rule = RuleChoice.Pick("EN BB.1.2")[0].Apply(new StandardStrut(strut.Section, strut.Steel, strut.SystemLength)).NominalResistance;
            Assert.Equal(rule is null, double.IsNaN(table.Numbers("EN BB.1.2")[i]));
            Closeness.Relative((rule ?? 0) / 1e3, rule is null ? 0 : table.Numbers("EN BB.1.2")[i], 1e-12, "rule");
        }
    }

    [Fact]
    public void A_slenderness_gives_the_length_by_its_definition()
    {
        // λ̄_v = √(A f_y/N_Ev), EN 1993-1-1:2005, 6.3.1.2.
        StudyTable table = Study.Of(new StudyStrut()).Vary(StudyVariable.Slenderness, 0.5, 1, 2).Find(StudyQuantity.Length, StudyQuantity.Slenderness).Run();
        AngleSection section = AngleCatalogue.Find("L 80x80x8").Connected();
        for (int i = 0; i < 3; i++)
        {
            double length = table.Numbers("length")[i], euler = Math.PI * Math.PI * 210_000 * section.SecondMomentV / (length * length);
            Closeness.Relative(table.Numbers("slenderness")[i], Math.Sqrt(section.Area * 355 / euler), 1e-12, "slenderness");
        }
    }

    [Fact]
    public void Four_bows_are_never_better_than_two() => Assert.All(
        Grid.Find(StudyQuantity.Capacity).Vary(StudyVariable.Bows, "both signs", "four principal").Run().Numbers("capacity").Chunk(2), pair => Assert.True(pair[1] <= pair[0]));

    [Fact]
    public void Plates_are_another_way_to_the_same_joint()
    {
        StudyTable table = Study.Of(new StudyStrut()).Vary(StudyVariable.Method, "hand formula", "plates").Find(StudyQuantity.Spring).Run();
        double plates = GussetOnRigidSupport.PlateAnalysis(Gusset.Symmetric(10, 160, 65, 40), AngleCatalogue.Find("L 80x80x8").Connected(), new BoltLine(45, 2, 20, 60, 40)).Hinge.OutOfPlaneStiffness;
        Closeness.Relative(plates / 1e6, table.Numbers("spring")[1], 1e-12, "plates");
        Assert.InRange(table.Numbers("spring")[0] / table.Numbers("spring")[1], 0.86, 1.06); // stated range of the formula
    }

    private static Strut ByHand(StudyStrut s)
    {
        AngleSection section = s.Angle.Connected();
        var bolts = new BoltLine(0.5625 * section.ConnectedLength, 2, 20, 60, 40);
        LoadPoint load = LoadPoint.Of(section, bolts, s.GussetThickness);
        GussetFormula gusset = GussetOnRigidSupport.HandFormula(Gusset.Symmetric(s.GussetThickness, 2 * section.ConnectedLength, 65, 40), section, bolts);
        Girder girder = GirderCatalogue.Find("IPE 360");
        var support = new GirderSupport(girder, 5600, 2800);
        StrutEnd end = s.End switch
        {
            StudyEnd.Hinged => new StrutEnd(load.Offset, EndSpring.Hinged),
            StudyEnd.Rigid => new StrutEnd(load.Offset, EndSpring.Rigid),
            StudyEnd.RigidSupport => StrutEnd.Of(load, gusset.Hinge),
            StudyEnd.GirderFlange => StrutEnd.Of(load, GussetOnGirderFlange.HandFormula(gusset, support).Hinge),
            _ => StrutEnd.Of(load, GussetOnGirderWeb.HandFormula(gusset, support, WebSeat.AtMidDepth(girder)).Hinge),
        };
        return new Strut(section, s.Grade.ForThickness(8), s.Length, end, end);
    }
}
