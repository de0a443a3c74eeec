using System.Collections.Frozen;
using System.Globalization;

namespace StrutLessons.Sections;

/// <summary>169 rolled angles with their dimensions and sources; read once from the embedded table angles.csv.</summary>
public static class AngleCatalogue
{
    private static readonly Lazy<Contents> Table = new(Read);

    /// <summary>All angles, equal legs first, in the order of size.</summary>
    public static IReadOnlyList<Angle> All => Table.Value.Angles;

    /// <summary>
    /// The angle with this trade designation. Spaces, case, the kind of multiplication sign, a decimal comma and the leading L
    /// do not matter; an equal angle may be named by one leg: <c>L 80x80x8</c>, <c>l80×80×8</c>, <c>80 * 8</c>.
    /// </summary>
    /// <exception cref="InputException">No such angle; the message lists the nearest designations.</exception>
    public static Angle Find(string designation)
    {
        ArgumentNullException.ThrowIfNull(designation);
        string key = Designation.Normalise(designation, "l");
        double[]? numbers = Designation.Numbers(key);
        if (numbers is { Length: 2 })
        {
            numbers = [numbers[0], numbers[0], numbers[1]];
        }

        if (numbers is { Length: 3 } && Table.Value.BySize.TryGetValue((numbers[0], numbers[1], numbers[2]), out Angle? found))
        {
            return found;
        }

        throw new InputException("angle", $"'{designation}'", "a designation of the catalogue (AngleCatalogue.All lists them)",
            $"Nearest: {string.Join(", ", Nearest(key, numbers))}. For a shape of your own use new Angle(…).");
    }

    /// <summary>The printed table values of a catalogue angle, for comparison.</summary>
    /// <exception cref="InputException">The angle is not one of the catalogue.</exception>
    public static PrintedAngle Printed(Angle angle)
    {
        ArgumentNullException.ThrowIfNull(angle);
        return Table.Value.Printed.TryGetValue(angle.Name, out PrintedAngle? printed)
            ? printed
            : throw new InputException("angle", $"'{angle.Name}'", "an angle of the catalogue",
                "A custom angle has no printed values; its section properties are computed from the geometry.");
    }

    private static IEnumerable<string> Nearest(string key, double[]? numbers)
    {
        double Distance(Angle a) => numbers is { Length: 3 }
            ? Math.Abs(a.LongLeg - Math.Max(numbers[0], numbers[1])) + Math.Abs(a.ShortLeg - Math.Min(numbers[0], numbers[1]))
                + 3 * Math.Abs(a.Thickness - numbers[2])
            : Designation.Edits(Designation.Normalise(a.Name, "l"), key);
        return All.OrderBy(Distance).Take(3).Select(a => a.Name);
    }

    private static Contents Read()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = CsvText.Resource("angles.csv");
        var angles = new List<Angle>(rows.Count);
        var printed = new Dictionary<string, PrintedAngle>(rows.Count);
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            double Size(string column) => double.Parse(row[column], CultureInfo.InvariantCulture);
            double? Value(string column, double unit) => row[column].Length == 0 ? null : Size(column) * unit;
            // L 75x75x4 is listed with r2 = 4.5 mm on a toe only 4 mm thick: the rounding can take the whole toe, not more.
            double toeRadius = Math.Min(Size("r2"), Size("t"));
            angles.Add(new Angle(row["name"], Size("a"), Size("b"), Size("t"), Size("r1"), toeRadius, row["source"]));
            printed.Add(row["name"], new PrintedAngle(
                Value("A_cm2", 1e2), Value("cy_cm", 10), Value("cz_cm", 10), Value("Iy_cm4", 1e4), Value("Iz_cm4", 1e4),
                Value("Iu_cm4", 1e4), Value("Iv_cm4", 1e4), Value("iv_cm", 10), Value("tan_alpha", 1), Value("It_cm4", 1e4), row["source"]));
        }

        return new Contents(
            angles.AsReadOnly(),
            angles.ToFrozenDictionary(a => (a.LongLeg, a.ShortLeg, a.Thickness)),
            printed.ToFrozenDictionary());
    }

    private sealed record Contents(
        IReadOnlyList<Angle> Angles,
        FrozenDictionary<(double A, double B, double T), Angle> BySize,
        FrozenDictionary<string, PrintedAngle> Printed);
}
