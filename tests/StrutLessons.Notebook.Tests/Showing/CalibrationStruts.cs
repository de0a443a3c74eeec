using StrutLessons.Calibration;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Sections;

namespace StrutLessons.Notebook.Tests.Shown;

/// <summary>Results of the reference analysis and of a small calibration, for everything that shows them.</summary>
internal static class CalibrationStruts
{
    private static readonly Lazy<LoadPath> _path = new(() => ReferenceAnalysis.Follow(
        ReferenceStrut.Of(GalleryStrut.Strut, Bow.AlongU(GalleryStrut.Section, 2.15)), RodMesh.Fast, PathSettings.Default with { KeepYielding = true }));

    private static readonly Lazy<RatioGrid> _grid = new(() => RatioGrid.Run(
        [.. from length in new[] { 500.0, 1500, 2600 } from spring in new[] { 0.0, 1e8, double.PositiveInfinity }
            select GalleryStrut.Strut.WithLength(length + 61).WithSprings(new EndSpring(spring, 1e8)), ThinAndRigid]));

    /// <summary>The gallery's diagonal up to its peak and behind, with yielding at every state.</summary>
    internal static LoadPath Path => _path.Value;

    /// <summary>Nine struts, and a thin one held in both planes that turns off into a branch before its peak.</summary>
    internal static RatioGrid Grid => _grid.Value;

    internal static CorrectionFunction Correction => CorrectionFunction.Of(Grid, ElasticModel.WithRoll, CorrectionForm.Linear, CorrectionVariable.LoadRatio, 0.8, 1.3);

    internal static BowChoice Bows => BowChoice.Of(RatioGrid.Run(BowChoice.Borderline([GalleryStrut.Strut])), ElasticModel.Plane, [200, 300, 500]);

    private static Strut ThinAndRigid
    {
        get
        {
            AngleSection section = new Angle("sharp 100x100x6", 100, 100, 6, 0, 0).Connected();
            var end = new StrutEnd(new Planar(55 - section.CentroidY, section.CentroidZ + 4), EndSpring.Rigid);
            return new Strut(section, SteelGrade.S355.ForThickness(6), 1500, end, end);
        }
    }

    internal static RollCapacity Roll => RollAnalysis.Capacity(ReferenceStrut.Of(GalleryStrut.Strut, GalleryStrut.Strut.Bows[0], 0));
}
