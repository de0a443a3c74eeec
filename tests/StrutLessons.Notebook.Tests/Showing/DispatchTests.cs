using StrutLessons.Capacity;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Notebook.Tests.Shown;

public class DispatchTests
{
    private sealed record Explained : IWorked
    {
        public IReadOnlyList<WorkedStep> WorkedSteps() => [new("a", "a", "", "", 1, "mm", "given")];
    }

    public static TheoryData<string, string> Values => new()
    {
        { "section", "image/svg+xml" }, { "angle", "image/svg+xml" }, { "load point", "image/svg+xml" }, { "gusset", "image/svg+xml" },
        { "solution", "image/svg+xml" }, { "joint", "application/vnd.plotly.v1+json" }, { "capacity", "application/vnd.plotly.v1+json" },
        { "curve", "application/vnd.plotly.v1+json" }, { "standards", "application/vnd.plotly.v1+json" }, { "standard curves", "application/vnd.plotly.v1+json" }, { "explained", "text/html" },
        { "load path", "application/vnd.plotly.v1+json" }, { "roll", "text/html" }, { "ratio grid", "application/vnd.plotly.v1+json" }, { "ratios", "text/html" },
        { "sensitivity", "application/vnd.plotly.v1+json" }, { "correction", "application/vnd.plotly.v1+json" }, { "bows", "application/vnd.plotly.v1+json" }, { "plotly", "application/vnd.plotly.v1+json" },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void Every_result_shows_its_main_form_first_and_ends_with_text(string name, string first)
    {
        object value = name switch
        {
            "section" => GalleryStrut.Section,
            "angle" => GalleryStrut.Section.Angle,
            "load point" => GalleryStrut.LoadPoint,
            "gusset" => GalleryStrut.Gusset,
            "solution" => GalleryStrut.Solution,
            "joint" => GalleryStrut.Gusset.Hinge,
            "capacity" => GalleryStrut.Capacity,
            "curve" => CapacityCurve.Of(GalleryStrut.Strut, count: 5),
            "standards" => StandardComparison.Of(GalleryStrut.Strut),
            "standard curves" => StandardCurves.Of(GalleryStrut.Strut, count: 5),
            "load path" => CalibrationStruts.Path,
            "roll" => CalibrationStruts.Roll,
            "ratio grid" => CalibrationStruts.Grid,
            "ratios" => CalibrationStruts.Correction.Fitted,
            "sensitivity" => Calibration.RatioSensitivity.Of(CalibrationStruts.Grid, Calibration.ElasticModel.Plane),
            "correction" => CalibrationStruts.Correction,
            "bows" => CalibrationStruts.Bows,
            "plotly" => Notebook.Charts.Plot.MomentsAlong(GalleryStrut.Solution).ToPlotly(),
            _ => new Explained(),
        };
        IReadOnlyList<ShownPart> parts = Showing.Show(value)!;
        Assert.Equal(first, parts[0].MimeType);
        Assert.Equal("text/plain", parts[^1].MimeType);
        Assert.All(parts, p => Assert.NotEmpty(p.Content));
    }

    [Fact]
    public void What_is_none_of_ours_is_left_to_the_caller()
    {
        Assert.Null(Showing.Show(42));
        Assert.Null(Showing.Show("text"));
        Assert.Null(Showing.Show(AngleCatalogue.All));
    }

    [Fact]
    public void The_layer_knows_no_notebook_engine() =>
        Assert.DoesNotContain(typeof(Showing).Assembly.GetReferencedAssemblies(), a => a.Name!.Contains("Interactive", StringComparison.Ordinal));
}
