using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Desk.Studies;

/// <summary>How a case asks for the analyses with twist: mesh, effects, residual stress. The same numbers serve each of the case's bows.</summary>
internal sealed record ReferenceCase(RodMesh Mesh, PathSettings Settings, double ResidualPeak, int Elements)
{
    internal static ReferenceCase Read(CaseNode at)
    {
        if (at.ObjectOrNone("reference") is not { } node)
        {
            return new(RodMesh.Standard, PathSettings.PeakOnly, ReferenceStrut.UsualResidualPeak, 32);
        }
        var settings = PathSettings.PeakOnly with { Twist = node.Flag("twist", true), Wagner = node.Flag("wagner", true) };
        var mesh = node.Find("mesh") switch
        {
            null => RodMesh.Standard,
            { ValueKind: JsonValueKind.Object } => Own(node.Object("mesh")),
            { } word => CaseNode.ChoiceOf(word, node.At("mesh"), ("fast", RodMesh.Fast), ("standard", RodMesh.Standard)),
        };
        var made = new ReferenceCase(mesh, settings, node.Number("residual_stress_MPa", 0, 1000, ReferenceStrut.UsualResidualPeak), node.Whole("rod_elements", 2, 64, 32));
        node.Done();
        return made;
    }

    /// <summary>Peak of the load path for each bow.</summary>
    internal JsonArray Path(Strut strut, double torsion, ReferenceSteel steel) => Results.List(strut.Bows, bow =>
    {
        LoadPath path = ReferenceAnalysis.Follow(Of(strut, bow, torsion, steel), Mesh, Settings);
        var p = path.Peak;
        return new JsonObject
        {
            ["bow"] = bow.Name, ["reason"] = StrutCaseSolver.Word(path.Reason.ToString()), ["peak_load_N"] = Results.Number(p?.Load), ["stable_to_peak"] = path.StableToPeak,
            ["lowest_peak_load_N"] = p is null ? null : Results.Number(path.LowestPeakLoad),
            ["shear_centre_mid_mm"] = p is null ? null : Results.Pair(p.ShearCentreMid), ["centroid_mid_mm"] = p is null ? null : Results.Pair(p.CentroidMid),
            ["twist_mid_rad"] = Results.Number(p?.TwistMid), ["shortening_mm"] = Results.Number(p?.Shortening), ["slope_end_1_rad"] = p is null ? null : Results.Pair(p.EndSlope1),
            ["slope_end_2_rad"] = p is null ? null : Results.Pair(p.EndSlope2), ["yielded_fraction"] = Results.Number(p?.YieldedFraction), ["largest_plastic_strain"] = Results.Number(p?.LargestPlasticStrain),
        };
    });

    /// <summary>First yield of the linearised strut with and without roll, and its states under the loads.</summary>
    internal JsonArray Roll(Strut strut, double torsion, ReferenceSteel steel, double[] loads) => Results.List(strut.Bows, bow =>
    {
        var reference = Of(strut, bow, torsion, steel);
        RollCapacity capacity = RollAnalysis.Capacity(reference);
        return new JsonObject
        {
            ["bow"] = bow.Name, ["critical_load_N"] = Results.Number(capacity.Critical), ["critical_load_without_roll_N"] = Results.Number(capacity.CriticalFlexural),
            ["first_yield_N"] = Results.Number(capacity.WithRoll.Load), ["first_yield_without_roll_N"] = Results.Number(capacity.FlexureOnly.Load), ["warning"] = capacity.Warning,
            ["states"] = Results.List(loads, n => State(RollAnalysis.StateAt(reference, n))),
            ["states_without_roll"] = Results.List(loads, n => State(RollAnalysis.StateAt(reference, n, roll: false))),
        };
    });

    /// <summary>States of the elastic rod with large displacements under the loads, which must rise, and its first yield.</summary>
    internal JsonArray ElasticRod(Strut strut, double torsion, ReferenceSteel steel, double[] loads) => Results.List(strut.Bows, bow =>
    {
        var reference = Of(strut, bow, torsion, steel);
        return new JsonObject
        {
            ["bow"] = bow.Name,
            ["states"] = Results.List(Nonlinear.ElasticRod.StatesAt(reference, loads, Elements, Settings.Twist), State),
            ["first_yield_N"] = Results.Number(Nonlinear.ElasticRod.FirstYield(reference, Elements, Settings.Twist)?.Load),
        };
    });

    private static JsonNode? State(ElasticState? s) => s is null ? null : new JsonObject
    {
        ["load_N"] = Results.Number(s.Load), ["centroid_mid_mm"] = Results.Pair(s.CentroidMid), ["shear_centre_mid_mm"] = Results.Pair(s.ShearCentreMid), ["twist_mid_rad"] = Results.Number(s.TwistMid),
        ["largest_compression_MPa"] = Results.Number(s.LargestCompression), ["largest_tension_MPa"] = Results.Number(s.LargestTension),
    };

    private static RodMesh Own(CaseNode node)
    {
        var mesh = new RodMesh(node.Whole("elements", 2, 64, 16), node.Whole("stations", 3, 8, 4), node.Whole("cells_along", 1, 32, 12), node.Whole("cells_through", 1, 4, 2));
        node.Done();
        return mesh;
    }

    private ReferenceStrut Of(Strut strut, Bow bow, double torsion, ReferenceSteel steel)
    {
        var usual = ReferenceStrut.Of(strut, bow, 0);
        Angle angle = strut.Section.Angle;
        var section = ReferenceSection.Angle(strut.Section.ConnectedLength, strut.Section.OutstandingLength, angle.Thickness, angle.RootRadius, angle.ToeRadius, torsion);
        return new(section, steel, usual.Length, usual.Bow, ResidualPeak, usual.End1, usual.End2);
    }
}
