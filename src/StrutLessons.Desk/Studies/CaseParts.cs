using System.Text.Json;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Desk.Studies;

/// <summary>Section, steel and bows of a case.</summary>
internal static class CaseParts
{
    private const double LongestLength = 100_000;

    internal static (AngleSection Section, double TorsionConstant) Section(CaseNode at)
    {
        var value = at.Find("section") ?? throw at.Missing("section", "a designation or an object");
        if (value.ValueKind != JsonValueKind.Object)
        {
            var leg = at.Choice("connected_leg", ConnectedLeg.Long, ("long", ConnectedLeg.Long), ("short", ConnectedLeg.Short));
            var found = AngleCatalogue.Find(CaseNode.TextOf(value, at.At("section"))).Connected(leg);
            return (found, found.TorsionConstant);
        }
        var own = at.Object("section");
        double connected = own.Number("connected_leg_mm", 1, 1000), outstanding = own.Number("outstanding_leg_mm", 1, 1000);
        var angle = new Angle(own.Text("name", "given angle"), Math.Max(connected, outstanding), Math.Min(connected, outstanding),
            own.Number("thickness_mm", 0.1, 200), own.Number("root_radius_mm", 0, 200, 0), own.Number("toe_radius_mm", 0, 200, 0));
        var section = angle.Connected(connected >= outstanding ? ConnectedLeg.Long : ConnectedLeg.Short);
        var torsion = own.Number("torsion_constant_mm4", 1e-3, 1e12, section.TorsionConstant);
        own.Done();
        return (section, torsion);
    }

    internal static (Steel Steel, ReferenceSteel Reference) SteelOf(CaseNode at, double thickness)
    {
        var value = at.Find("steel") ?? throw at.Missing("steel", "a grade or an object");
        if (value.ValueKind != JsonValueKind.Object)
        {
            var grade = CaseNode.ChoiceOf(value, at.At("steel"), [.. SteelGrade.All.Select(g => (g.Name, g))]);
            var steel = grade.ForThickness(thickness);
            return (steel, new(steel.ElasticModulus, steel.ShearModulus, steel.YieldStrength));
        }
        var own = at.Object("steel");
        var custom = Steel.Custom(own.Text("name", "given steel"), own.Number("yield_strength_MPa", -1e12, 1e12), own.Number("elastic_modulus_MPa", -1e12, 1e12, Steel.StandardElasticModulus));
        var reference = new ReferenceSteel(custom.ElasticModulus, own.Number("shear_modulus_MPa", 1, 1e12, custom.ShearModulus), custom.YieldStrength, own.Number("hardening_modulus_MPa", 0, 1e6, 0));
        own.Done();
        return (custom, reference);
    }

    internal static double Length(CaseNode at) => at.Number("length_mm", 1, LongestLength);

    internal static IReadOnlyList<Bow> Bows(CaseNode at, AngleSection section, double length)
    {
        if (at.Find("bows") is not { } value)
        {
            return Both(Strut.UsualBowRatio);
        }
        if (value.ValueKind == JsonValueKind.String)
        {
            return CaseNode.ChoiceOf(value, at.At("bows"), ("both_signs", false), ("four_principal", true))
                ? [.. Both(Strut.UsualBowRatio), Bow.AlongV(section, length / 300), Bow.AlongV(section, -length / 300)]
                : Both(Strut.UsualBowRatio);
        }
        return value.ValueKind == JsonValueKind.Array && value.GetArrayLength() is > 0 and <= 36
            ? [.. value.EnumerateArray().Select((b, i) => One(new(b, $"{at.At("bows")}[{i}]")))]
            : throw CaseNode.Wrong(at.At("bows"), value, "\"both_signs\", \"four_principal\" or a list of 1 to 36 bows", "Leave it out for L/300 along u in both signs.");

        IReadOnlyList<Bow> Both(double ratio) => [Bow.AlongU(section, ratio * length), Bow.AlongU(section, -ratio * length)];

        Bow One(CaseNode bow)
        {
            var made = bow.Has("vector_mm") ? OfVector(bow.Pair("vector_mm", LongestLength)) : Directed(bow);
            bow.Done();
            return made;
        }

        Bow Directed(CaseNode bow)
        {
            var amplitude = bow.Number("amplitude_mm", -LongestLength, LongestLength);
            var direction = bow.Find("direction") ?? throw bow.Missing("direction", "\"u\", \"v\" or degrees from y towards z");
            return direction.ValueKind == JsonValueKind.Number
                ? Bow.AtAngle(CaseNode.NumberOf(direction, bow.At("direction"), -360, 360), amplitude)
                : CaseNode.ChoiceOf(direction, bow.At("direction"), ("u", true), ("v", false)) ? Bow.AlongU(section, amplitude) : Bow.AlongV(section, amplitude);
        }
    }

    private static Bow OfVector(Planar vector) => vector.Length == 0 ? Bow.None : Bow.AtAngle(Math.Atan2(vector.Z, vector.Y) * 180 / Math.PI, vector.Length);
}
