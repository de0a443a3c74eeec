using StrutLessons.Calibration;
using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Nonlinear;
using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Tables;
using StrutLessons.Notebook.Working;
using StrutLessons.Plates;
using StrutLessons.Sections;
using StrutLessons.Standards;
using StrutLessons.Studies;

namespace StrutLessons.Notebook;

/// <summary>The one place that says how a value looks in a cell. Whoever runs cells asks here and needs to know nothing else.</summary>
public static class Showing
{
    /// <summary>The forms of a value, best first; null if the value is none of ours and the caller shows it in its own way.</summary>
    public static IReadOnlyList<ShownPart>? Show(object value) => Picture(value)?.Shown();

    /// <summary>A value by itself is shown by its main picture; a result without one by its worked steps.</summary>
    internal static IShown? Picture(object value) => value switch
    {
        IShown shown => shown,
        AngleSection section => Draw.Section(section),
        Angle angle => Draw.Section(angle.Connected()),
        LoadPoint point => Draw.Eccentricity(point),
        GussetFormula gusset => Draw.GussetBending(gusset),
        GussetFlexibility plate => Draw.PlateDeflection(plate),
        GirderJointFlexibility girder => Draw.GirderDeflection(girder),
        WebFootResult web => Draw.GirderProfile(web),
        JointByPlates plates => Plot.Contributions(plates.Hinge),
        JointComparison comparison => Plot.HandAndPlates(comparison),
        TieMoment tie => Draw.TieSides(tie),
        TieComparison ties => Plot.Ties(ties),
        SpringPlaceComparison places => Plot.SpringPlaces(places),
        JointHinge joint => Plot.Contributions(joint),
        SecondOrderSolution solution => Draw.Shape(solution),
        CapacityResult capacity => Plot.Iteration(capacity),
        CapacityCurve curve => Plot.Curve(curve),
        StandardComparison comparison => Plot.Comparison(comparison),
        StandardCurves curves => Plot.Curves(curves),
        StudyTable table => StudyRows.First(table),
        OneAtATime swings => Plot.Tornado(swings),
        LoadPath path => Plot.LoadDisplacement(path),
        RollCapacity roll => RollTables.Capacities(roll),
        RatioGrid grid => Plot.Ratios(grid),
        RatioStatistics ratios => CalibrationTables.Of(ratios),
        RatioSensitivity sensitivity => Plot.Influences(sensitivity),
        CorrectionFunction correction => Plot.Correction(correction),
        BowChoice choice => Plot.Bows(choice),
        IWorked worked => Steps.Of(worked),
        Plotly.NET.GenericChart chart => new ForeignChart(chart),
        _ => null,
    };
}
