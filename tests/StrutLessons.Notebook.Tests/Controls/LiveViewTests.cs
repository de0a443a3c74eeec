using System.Text.RegularExpressions;
using StrutLessons.Capacity;
using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Controls;
using StrutLessons.Notebook.Tests.Shown;

namespace StrutLessons.Notebook.Tests.Controls;

public sealed class LiveViewTests
{
    private static readonly Slider Length = Slider.Of("Length", 1, 3, step: 0.5, start: 2, "m");

    [Fact]
    public void A_view_shows_what_its_calculation_gives_for_the_places_of_its_controls()
    {
        var side = Choice.Of("Bow", ("to the heel", -1.0), ("to the toes", 1.0));
        var view = Live.Of(Length, side, (length, sign) => $"{sign * length}");

        Assert.Equal("-2", view.At(view.Start).Single());
        Assert.Equal("3", view.At([3, 1]).Single());
    }

    [Fact]
    public void Every_place_of_the_controls_has_its_frame_in_the_order_in_which_the_script_counts()
    {
        var view = Live.Of(Length, Choice.OfWords("Bow", "a", "b"), (length, bow) => [$"length {length}{bow}", "more"]);
        var html = view.Shown()[0].Content;

        var frames = Regex.Matches(html, "<template>(.*?)</template>", RegexOptions.Singleline).Select(match => match.Groups[1].Value).ToArray();
        Assert.Equal(10, frames.Length);
        Assert.All(frames, frame => Assert.Contains("more", frame, StringComparison.Ordinal));
        // The script counts at = place of the first * options of the second + place of the second.
        Assert.Contains("length 1.5b", frames[1 * 2 + 1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_slider_is_thinned_out_and_keeps_its_ends_and_its_start()
    {
        var slider = Slider.Of("Thickness", 4, 20, step: 0.1, start: 10.3, "mm");
        var places = LiveFrames.Thinned([slider, Choice.OfWords("Bow", "a", "b")]);

        Assert.InRange(places[0].Length * places[1].Length, 20, LiveFrames.MostFrames);
        Assert.Equal((4.0, 20.0), (places[0][0], places[0][^1]));
        Assert.Contains(10.3, places[0]);
        Assert.Equal(2, places[1].Length);
    }

    [Fact]
    public void A_chart_in_a_frame_is_a_still_picture_that_needs_no_script()
    {
        var view = Live.Of(Length, length => Plot.Curve(CapacityCurve.Of(GalleryStrut.Strut)));
        var html = view.Shown()[0].Content;

        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.DoesNotContain("plotly", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_place_that_the_calculation_refuses_says_why_and_the_others_stay()
    {
        var view = Live.Of(Length, length => length > 2.4 ? throw new InputException("gauge", "70 mm", "between 24 and 56 mm", "Move it.") : $"fits {length}");
        var html = view.Shown()[0].Content;

        Assert.Equal(2, Regex.Count(html, "Not possible.*gauge = 70 mm is not allowed"));
        Assert.Contains("fits 1.5", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_views_on_a_page_have_different_names()
    {
        var view = Live.Of(Length, length => length);
        string Name() => Regex.Match(view.Shown()[0].Content, "id=\"([^\"]+)\"").Groups[1].Value;

        Assert.NotEqual(Name(), Name());
    }

    [Theory]
    [InlineData(3, 1, 0.5, 2, "rising interval")]
    [InlineData(1, double.NaN, 0.5, 1, "rising interval")]
    [InlineData(1, 3, 0, 2, "whole number of times")]
    [InlineData(1, 3, 0.7, 2, "whole number of times")]
    [InlineData(1, 3, 0.0001, 2, "1000 at most")]
    [InlineData(1, 3, 0.5, 3.5, "between 1 and 3")]
    public void A_slider_that_cannot_be_is_refused(double from, double to, double step, double start, string allowed)
    {
        var refused = Assert.Throws<InputException>(() => Slider.Of("Length", from, to, step, start, "m"));

        Assert.Contains("Length", refused.Message, StringComparison.Ordinal);
        Assert.Contains(allowed, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_outside_the_range_is_refused_by_the_name_of_its_control()
    {
        var view = Live.Of(Length, length => length);

        Assert.Equal("Length", Assert.Throws<InputException>(() => view.At([3.5])).Field);
        Assert.Contains("one for each control", Assert.Throws<InputException>(() => view.At([1, 2])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_needs_two_names_that_differ()
    {
        Assert.Throws<InputException>(() => Choice.OfWords("Bow", "a"));
        Assert.Throws<InputException>(() => Choice.OfWords("Bow", "a", "a"));
    }
}
