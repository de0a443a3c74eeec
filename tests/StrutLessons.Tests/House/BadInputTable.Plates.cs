using StrutLessons.Plates;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly GussetPlate Sound = new(10, 60, 60, 80, 70, 60, 30);
    private static readonly GirderShape Ipe300 = new(300, 150, 7.1, 10.7);
    private static readonly GirderSpan Middle = new(6000, 3000);

    private static IEnumerable<BadInput> Plates =>
        Gussets.Concat(GirderPlates).Concat(PlateSettings).Select(row => row with { Name = "plate analysis: " + row.Name });

    private static IEnumerable<BadInput> Gussets =>
    [
        Bad("plate thickness zero", Sound with { Thickness = 0 }, "gusset thickness", "greater than 0"),
        Bad("plate thickness negative", Sound with { Thickness = -8 }, "gusset thickness", "-8 mm"),
        Bad("plate thickness NaN", Sound with { Thickness = double.NaN }, "gusset thickness", "NaN"),
        Bad("plate thickness infinite", Sound with { Thickness = double.PositiveInfinity }, "gusset thickness", "greater than 0"),
        Bad("patch width zero", Sound with { PatchWidth = 0 }, "patch width", "greater than 0", "connected leg"),
        Bad("patch width NaN", Sound with { PatchWidth = double.NaN }, "patch width", "NaN"),
        Bad("patch wider than the plate on the left", Sound with { Left = 39 }, "left plate width", "39 mm", "40", "narrow the patch"),
        Bad("patch wider than the plate on the right", Sound with { Right = 39 }, "right plate width", "39 mm", "narrow the patch"),
        Bad("plate width negative", Sound with { Left = -60 }, "left plate width", "-60 mm"),
        Bad("plate width NaN", Sound with { Right = double.NaN }, "right plate width", "NaN"),
        Bad("plate width infinite", Sound with { Left = double.PositiveInfinity }, "left plate width", "narrow the patch"),
        Bad("plate free length zero", Sound with { FreeLength = 0 }, "free length", "greater than 0"),
        Bad("plate free length negative", Sound with { FreeLength = -1 }, "free length", "-1 mm"),
        Bad("plate free length NaN", Sound with { FreeLength = double.NaN }, "free length", "NaN"),
        Bad("plate free length infinite", Sound with { FreeLength = double.PositiveInfinity }, "free length", "greater than 0"),
        Bad("bolt group length negative", Sound with { GroupLength = -60 }, "bolt group length", "0 or more"),
        Bad("bolt group length NaN", Sound with { GroupLength = double.NaN }, "bolt group length", "NaN"),
        Bad("plate end distance negative", Sound with { EndDistance = -1 }, "end distance", "0 or more"),
        Bad("single bolt at the plate's end", Sound with { GroupLength = 0, EndDistance = 0 }, "end distance", "single bolt", "go on"),
        Bad("strut angle zero", Sound with { Angle = 0 }, "strut angle", "between 0.261799 and 1.5708", "acute angle"),
        Bad("strut angle in degrees", Sound with { Angle = 60 }, "strut angle", "60 rad"),
        Bad("strut angle obtuse", Sound with { Angle = 2 }, "strut angle", "2 rad"),
        Bad("strut angle NaN", Sound with { Angle = double.NaN }, "strut angle", "NaN"),
        Bad("taper negative", Sound with { Taper = -0.1 }, "taper", "0 or more"),
        Bad("taper NaN", Sound with { Taper = double.NaN }, "taper", "NaN"),
        Bad("far side never meets the support", Sound with { Angle = Math.PI / 4, Taper = 1 }, "taper times cotangent of the angle", "less taper"),
        Bad("leg corner in the support", Sound with { Angle = Math.PI / 6 }, "free length", "70 mm", "70.6", "corner of the leg"),
        Bad("support cuts off the near edge", Sound with { Angle = Math.PI / 4, Right = 200 }, "right plate width", "less than 156.8 mm", "cut off"),
        new("compression NaN", () => PlateOnRigidSupport.FlexibilityUnder(Sound, double.NaN), "compression", "NaN"),
        new("compression above buckling", () => PlateOnRigidSupport.FlexibilityUnder(Sound, 1e8), "compression", "buckling load", "thicker"),
        new("no buckling of a plate of no thickness", () => PlateOnRigidSupport.Buckling(Sound with { Thickness = 0 }), "gusset thickness"),
    ];

    private static IEnumerable<BadInput> GirderPlates =>
    [
        Bad("girder height zero", Ipe300 with { Height = 0 }, "girder height", "greater than 0"),
        Bad("girder height NaN", Ipe300 with { Height = double.NaN }, "girder height", "NaN"),
        Bad("girder flange width negative", Ipe300 with { FlangeWidth = -150 }, "flange width", "-150 mm"),
        Bad("girder web thickness infinite", Ipe300 with { WebThickness = double.PositiveInfinity }, "web thickness", "greater than 0"),
        Bad("girder flange thickness zero", Ipe300 with { FlangeThickness = 0 }, "flange thickness", "greater than 0"),
        Bad("flanges thicker than the girder is high", Ipe300 with { FlangeThickness = 150 }, "two flange thicknesses", "300 mm", "room for a web"),
        Bad("web wider than the flanges", Ipe300 with { WebThickness = 150 }, "web thickness", "check both"),
        new("foot length zero", () => FlangeFoot.HeldFlanges(Ipe300, 0), "foot length", "greater than 0"),
        new("foot length NaN on a web", () => WebFoot.HeldFlanges(Ipe300, double.NaN, 100), "foot length", "NaN"),
        new("height above the web", () => WebFoot.HeldFlanges(Ipe300, 100, 290), "height on the web", "290 mm", "mid-plane of the bottom flange"),
        new("height below the web", () => PlateOnGirder.OnWebHeld(Sound, Ipe300, 0), "height on the web", "between 14.465"),
        new("height NaN", () => PlateOnGirder.OnWeb(Sound, Ipe300, double.NaN, Middle), "height on the web", "NaN"),
        new("load beyond the girder", () => FlangeFoot.FullGirder(Ipe300, 100, new(6000, 6100)), "load position", "6100 mm", "on the girder"),
        new("load position negative", () => WebFoot.FullGirder(Ipe300, 100, 150, new(6000, -1)), "load position", "between 0 and 6000 mm"),
        new("foot beyond the fork", () => PlateOnGirder.OnFlange(Sound, Ipe300, new(6000, 50)), "load position", "between 60 and 5940 mm", "whole foot"),
        new("girder length zero", () => PlateOnGirder.OnFlange(Sound, Ipe300, new(0, 0)), "girder length", "greater than 0"),
        new("girder length infinite", () => FlangeFoot.FullGirder(Ipe300, 100, new(double.PositiveInfinity, 100)), "girder length", "greater than 0"),
        new("load position NaN", () => FlangeFoot.FullGirder(Ipe300, 100, new(6000, double.NaN)), "load position", "NaN"),
        new("gusset without width on a girder", () => PlateOnGirder.OnFlangeHeld(Sound with { Left = 0 }, Ipe300), "left plate width", "0 mm"),
    ];

    private static IEnumerable<BadInput> PlateSettings =>
    [
        new("plate modulus zero", () => PlateOnRigidSupport.Flexibility(Sound, new(0, 0.3)), "Young's modulus", "greater than 0"),
        new("plate modulus NaN", () => FlangeFoot.HeldFlanges(Ipe300, 100, new(double.NaN, 0.3)), "Young's modulus", "NaN"),
        new("Poisson's ratio above a half", () => PlateOnRigidSupport.Flexibility(Sound, new(210_000, 0.6)), "Poisson's ratio", "0.3"),
        new("fineness one", () => PlateOnRigidSupport.Flexibility(Sound, fineness: 1), "fineness", "between 2 and 16"),
        new("fineness hundred", () => PlateOnGirder.OnWebHeld(Sound, Ipe300, 150, fineness: 100), "fineness", "100"),
        new("square without elements", () => ClassicalPlates.SquareBuckling(0), "elements", "between 1 and 128"),
        new("square edges without a name", () => ClassicalPlates.SquareCentreDeflection((SquareEdges)7, SquareLoad.Uniform, 4), "edges", "Clamped"),
        new("distortion too large", () => ClassicalPlates.SquareCentreDeflection(SquareEdges.Clamped, SquareLoad.Uniform, 4, 0.6), "distortion", "inside out"),
        new("root moment between nodes", () => ClassicalPlates.CantileverPlateRootMoment(0.6, 0.1, 1), "distance of the force or place on the root", "0.25"),
        new("strip Poisson's ratio negative", () => ClassicalPlates.CantileverStrip(2, -1), "Poisson's ratio", "0.3"),
        new("disc without elements", () => ClassicalPlates.CircleCentreDeflection(0), "elements", "between 1 and 64"),
    ];

    private static BadInput Bad(string name, GussetPlate plate, string field, params string[] fragments) =>
        new(name, () => PlateOnRigidSupport.Flexibility(plate), field, fragments);

    private static BadInput Bad(string name, GirderShape girder, string field, params string[] fragments) =>
        new(name, () => FlangeFoot.HeldFlanges(girder, 100), field, fragments);
}
