using StrutLessons.Member;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

public static partial class Draw
{
    private const int Stations = 60;

    /// <summary>The deflected strut in the plane of the gusset and square to it: bow, final shape, supports and load points.</summary>
    /// <param name="solution">The strut under its load.</param>
    /// <param name="enlarged">How much displacements and eccentricities are enlarged against the length; 0 chooses a round number.</param>
    public static Drawing Shape(SecondOrderSolution solution, double enlarged = 0)
    {
        ArgumentNullException.ThrowIfNull(solution);
        (double x, Planar bow, Planar total)[] line = Line(solution);
        Strut strut = solution.Strut;
        double most = line.Max(p => Math.Max(Reach(p.bow), Reach(p.total)));
        most = Math.Max(most, Math.Max(Reach(strut.End1.Eccentricity), Reach(strut.End2.Eccentricity)));
        double perLength = 520 / strut.SystemLength, factor = enlarged > 0 ? enlarged : RoundDown(74 / (most * perLength));
        Picture picture = Picture.Empty(720, 500).With(new Words($"Displacements enlarged {Figures.Text(factor)} times against the length", new Paper(28, 486), Anchor.Start, 12, Ink.Soft));
        picture = WithView(picture, solution, line, new Paper(96, 120), perLength, factor, "in the plane of the gusset, along y", "y", p => p.Y, EndSprings(strut, s => s.InPlane));
        picture = WithView(picture, solution, line, new Paper(96, 350), perLength, factor, "square to the gusset, along z", "z", p => p.Z, EndSprings(strut, s => s.OutOfPlane));
        (double at, Planar _, Planar middle) = line[Stations / 2];
        return new Drawing(picture, $"Deflected shape under {Figures.Text(solution.Load / 1e3)} kN, bow {solution.Bow.Name}",
            $"Two side views of the strut, enlarged {Figures.Text(factor)} times. At mid-length (x = {Figures.Text(at)} mm) bow and deflection together move the centroid by " +
            $"{Figures.Text(middle.Y)} mm along y, in the plane of the gusset, and {Figures.Text(middle.Z)} mm along z, towards the gusset where positive.");

        static double Reach(Planar p) => Math.Max(Math.Abs(p.Y), Math.Abs(p.Z));
    }

    private static (double X, Planar Bow, Planar Total)[] Line(SecondOrderSolution solution) =>
        [.. Enumerable.Range(0, Stations + 1).Select(i =>
        {
            double x = solution.Strut.BarLength * i / Stations;
            return (x, solution.BowAt(x), solution.BowAt(x) + solution.Deflection(x));
        })];

    private static (double First, double Second) EndSprings(Strut strut, Func<EndSpring, double> stiffness) => (stiffness(strut.End1.Spring), stiffness(strut.End2.Spring));

    private static double RoundDown(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return (value / power) switch { >= 5 => 5, >= 2 => 2, _ => 1 } * power;
    }

    private static Picture WithView(
        Picture picture, SecondOrderSolution solution, (double X, Planar Bow, Planar Total)[] line, Paper origin, double perLength, double factor,
        string view, string axis, Func<Planar, double> part, (double First, double Second) springs)
    {
        Strut strut = solution.Strut;
        double arm = strut.End1.ArmLength, across = perLength * factor;
        Paper At(double x, double shift) => new(origin.X + perLength * (arm + x), origin.Y - across * shift);

        Paper hinge1 = origin, hinge2 = origin + new Paper(perLength * strut.SystemLength, 0);
        Paper bolt1 = At(0, part(line[0].Total)), bolt2 = At(strut.BarLength, part(line[^1].Total));
        Paper load1 = bolt1 - new Paper(0, across * part(strut.End1.Eccentricity)), load2 = bolt2 - new Paper(0, across * part(strut.End2.Eccentricity));
        picture = picture.With(
            Stroke.Line(hinge1, hinge2, Ink.Soft, 1, "12 3 2 3"),
            new Stroke([.. line.Select(p => At(p.X, part(p.Bow)))], Ink.Compression, 1.6, "6 4"),
            Stroke.Line(hinge1, bolt1, Ink.Text, 4),
            Stroke.Line(bolt2, hinge2, Ink.Text, 4),
            new Stroke([.. line.Select(p => At(p.X, part(p.Total)))], Ink.Text, 2.6),
            Stroke.Line(bolt1, load1, Ink.Force, 2.4),
            Stroke.Line(bolt2, load2, Ink.Force, 2.4))
            .With(Lines.Arrow(load1 - new Paper(44, 0), load1, Ink.Force, 2.4, 11)).With(Lines.Arrow(load2 + new Paper(44, 0), load2, Ink.Force, 2.4, 11))
            .With(Hinge(hinge1, springs.First)).With(Hinge(hinge2, springs.Second))
            .With(Lines.Arrow(origin + new Paper(-70, 30), origin + new Paper(-70, -6), Ink.Soft, 1.2, 8))
            .With(new Words($"Displacement {view}", new Paper(28, origin.Y - 96), Anchor.Start, 14, Bold: true));
        picture = picture.Name($"${axis}$", origin + new Paper(-70, -6), new Paper(0, -1), Ink.Soft, 14, 4).Name("$N$", load1 - new Paper(30, 0), new Paper(0, -1), Ink.Force, 15, 6, true)
            .Name(SpringWords(springs.First), hinge1, new Paper(0.2, 1), gap: 12).Name(SpringWords(springs.Second), hinge2, new Paper(-0.2, 1), gap: 12);
        int top = Enumerable.Range(0, line.Length).MaxBy(i => Math.Abs(part(line[i].Total)));
        double most = part(line[top].Total);
        Paper peak = At(line[top].X, most);
        return Math.Abs(most) < 0.005
            ? picture.Name("stays straight in this view", At(strut.BarLength / 2, 0), new Paper(0, -1))
            : picture.With(new Disc(peak, 3.4, Ink.Text, 1.4, Ink.Sheet)).Name($"{Figures.Text(most, 3)} mm", peak, new Paper(0, most > 0 ? -1 : 1), gap: 8, bold: true)
                .Name("initial bow", At(0.27 * strut.BarLength, part(solution.BowAt(0.27 * strut.BarLength))), new Paper(0, -1), Ink.Compression, 12);
    }

    /// <summary>A hinge as a circle, a spring as a circle in a spiral, a rigid end as a block.</summary>
    private static IEnumerable<Mark> Hinge(Paper at, double stiffness)
    {
        if (double.IsPositiveInfinity(stiffness))
        {
            yield return Stroke.Area([at + new Paper(-5, -12), at + new Paper(5, -12), at + new Paper(5, 12), at + new Paper(-5, 12)], Ink.Text);
            yield break;
        }

        if (stiffness > 0)
        {
            yield return new Stroke([.. Enumerable.Range(0, 61).Select(i => at + (6 + i / 8.0) * new Paper(Math.Cos(i * Math.PI / 15), Math.Sin(i * Math.PI / 15)))], Ink.Major, 1.6);
        }

        yield return new Disc(at, 5, Ink.Text, 1.8, Ink.Sheet);
    }

    private static string SpringWords(double stiffness) => stiffness switch
    {
        0 => "hinge",
        double.PositiveInfinity => "rigid",
        _ => $"spring {Figures.Text(stiffness / 1e6, 3)} kNm/rad",
    };
}
