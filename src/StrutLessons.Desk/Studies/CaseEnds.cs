using System.Text.Json;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Torsion;

namespace StrutLessons.Desk.Studies;

/// <summary>The ends of a case: given as load point and springs, or as a real joint.</summary>
internal static class CaseEnds
{
    private const double Longest = 100_000, LargestStiffness = 1e18;

    /// <summary>One end, with its joint if it has a real one.</summary>
    internal sealed record Made(StrutEnd End, JointHinge? Joint, int Bolts);

    internal static (Made One, Made Two) Both(CaseNode at, AngleSection section)
    {
        if (at.Has("ends"))
        {
            if (at.Has("end_1") || at.Has("end_2"))
            {
                throw new InputException(at.At("ends"), "given beside end_1 or end_2", "either both alike or one by one", "Leave out \"ends\", or the other two.");
            }
            var alike = One(at.Object("ends"), section);
            return (alike, alike);
        }
        return (One(at.Object("end_1"), section), One(at.Object("end_2"), section));
    }

    internal static Gusset GussetOf(CaseNode at)
    {
        double thickness = at.Number("thickness_mm", 1, 200);
        double? width = at.NumberOrNone("width_mm", 10, 4000);
        var gusset = new Gusset(thickness,
            width / 2 ?? at.Number("width_left_mm", 5, 2000), width / 2 ?? at.Number("width_right_mm", 5, 2000),
            at.Number("free_length_mm", 5, 2000), at.Number("end_distance_mm", 0, 2000, 40), at.Number("taper", 0, 2, 0), at.Number("inclination_degrees", 0, 90, 90));
        at.Done();
        return gusset;
    }

    internal static (GirderSupport Support, WebSeat? Seat) SupportOf(CaseNode at)
    {
        var value = at.Find("girder") ?? throw at.Missing("girder", "a designation or an object");
        Girder girder;
        if (value.ValueKind != JsonValueKind.Object)
        {
            girder = GirderCatalogue.Find(CaseNode.TextOf(value, at.At("girder")));
        }
        else
        {
            var own = at.Object("girder");
            girder = new(own.Text("name", "given girder"), own.Number("height_mm", 20, 4000), own.Number("width_mm", 20, 2000), own.Number("web_mm", 1, 200),
                own.Number("flange_mm", 1, 300), own.Number("root_radius_mm", 0, 200, 0));
            own.Done();
        }
        WarpingEnd Warping(string key) => at.Choice(key, WarpingEnd.Fork, ("fork", WarpingEnd.Fork), ("warping_fixed", WarpingEnd.WarpingFixed));
        var support = new GirderSupport(girder, at.Number("span_mm", 100, Longest), at.Number("position_mm", 0, Longest), Warping("end_1"), Warping("end_2"),
            at.Flag("stiffened", false), at.Flag("held_against_twist", false));
        var onWeb = at.Choice("on", false, ("flange", false), ("web", true));
        WebSeat? seat = null;
        if (onWeb)
        {
            seat = new(at.Number("height_mm", 1, 4000, girder.FlangeSpacing / 2),
                at.Choice("z_towards", ZTowards.MidDepth, ("mid_depth", ZTowards.MidDepth), ("flange", ZTowards.Flange)), at.Number("footprint_mm", 0, 200, 0));
        }
        at.Done();
        return (support, seat);
    }

    private static Made One(CaseNode at, AngleSection section)
    {
        var made = at.Has("bolts") ? Real(at, section) : Given(at);
        at.Done();
        return made;
    }

    private static Made Given(CaseNode at)
    {
        double Spring(string key) => at.Find(key) switch
        {
            null => throw at.Missing(key, "a number, \"hinged\" or \"rigid\""),
            { ValueKind: JsonValueKind.String } word => CaseNode.ChoiceOf(word, at.At(key), ("hinged", 0.0), ("rigid", double.PositiveInfinity)),
            { } number => CaseNode.NumberOf(number, at.At(key), 0, LargestStiffness),
        };
        var end = new StrutEnd(at.Pair("load_point_mm", Longest), new EndSpring(Spring("spring_in_plane_Nmm_per_rad"), Spring("spring_out_of_plane_Nmm_per_rad")), at.Number("arm_mm", 0, Longest, 0))
        {
            ConstantMoment = at.Pair("constant_moment_Nmm", 1e12, Planar.Zero),
        };
        return new(end, null, at.Whole("bolts_for_standards", 0, 20, 2));
    }

    private static Made Real(CaseNode at, AngleSection section)
    {
        var line = at.Object("bolts");
        int count = line.Whole("count", 1, 12, 2);
        var bolts = new BoltLine(line.Number("gauge_mm", 0, 1000), count, line.Number("diameter_mm", 1, 100),
            line.Number("pitch_mm", 0, 1000, 3 * line.Number("diameter_mm", 1, 100)), line.Number("end_distance_mm", 0, 1000, 2 * line.Number("diameter_mm", 1, 100)));
        line.Done();
        Gusset gusset = GussetOf(at.Object("gusset"));
        var face = at.Choice("face", GussetFace.Outer, ("outer", GussetFace.Outer), ("inner", GussetFace.Inner));
        var plane = at.Choice("load_plane", LoadPlane.GussetMidPlane, ("gusset_mid_plane", LoadPlane.GussetMidPlane), ("interface", LoadPlane.Interface), ("leg_mid_plane", LoadPlane.LegMidPlane));
        var inPlane = at.Choice("in_plane", InPlaneEnd.Rigid, ("rigid", InPlaneEnd.Rigid), ("released", InPlaneEnd.Released));
        var plates = at.Choice("method", false, ("hand_formula", false), ("plates", true));
        LoadPoint load = LoadPoint.Of(section, bolts, gusset.Thickness, face, plane);
        GussetFormula formula = GussetOnRigidSupport.HandFormula(gusset, section, bolts, inPlane);
        JointHinge hinge;
        if (at.ObjectOrNone("support") is not { } supportNode)
        {
            hinge = plates ? formula.PlateAnalysis().Hinge : formula.Hinge;
        }
        else
        {
            var (support, seat) = SupportOf(supportNode);
            hinge = seat is null
                ? GussetOnGirderFlange.HandFormula(formula, support) is var flange && plates ? flange.PlateAnalysis().Hinge : flange.Hinge
                : GussetOnGirderWeb.HandFormula(formula, support, seat) is var web && plates ? web.PlateAnalysis().Hinge : web.Hinge;
        }
        return new(StrutEnd.Of(load, hinge, Tie(at)?.On(load)), hinge, count);
    }

    private static AdjacentTie? Tie(CaseNode at)
    {
        if (at.ObjectOrNone("tie") is not { } tie)
        {
            return null;
        }
        var side = tie.Choice("side", TieSide.SameAsStrut, ("same", TieSide.SameAsStrut), ("opposite", TieSide.OppositeToStrut));
        double eccentricity = tie.Number("eccentricity_mm", 0, 1000), share = tie.Number("moment_share", 0, 10, 1);
        var made = tie.NumberOrNone("force_N", -1e9, 1e9) is { } force
            ? AdjacentTie.Constant(force, eccentricity, side, share)
            : AdjacentTie.Proportional(tie.Number("ratio", -10, 10), eccentricity, side, share);
        tie.Done();
        return made;
    }
}
