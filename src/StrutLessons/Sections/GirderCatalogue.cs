using System.Collections.Frozen;
using System.Globalization;

namespace StrutLessons.Sections;

/// <summary>56 rolled girders (IPE, HEA, HEB) with their dimensions and sources; read once from the embedded table girders.csv.</summary>
public static class GirderCatalogue
{
    private static readonly Lazy<Contents> Table = new(Read);

    /// <summary>All girders.</summary>
    public static IReadOnlyList<Girder> All => Table.Value.Girders;

    /// <summary>
    /// The girder with this trade designation; spaces and case do not matter, and HE 200 A means HEA 200.
    /// </summary>
    /// <exception cref="InputException">No such girder; the message lists the nearest designations.</exception>
    public static Girder Find(string designation)
    {
        ArgumentNullException.ThrowIfNull(designation);
        string key = Key(designation);
        return Table.Value.ByName.TryGetValue(key, out Girder? girder)
            ? girder
            : throw new InputException("girder", $"'{designation}'", "a designation of the catalogue (GirderCatalogue.All lists them)",
                $"Nearest: {string.Join(", ", All.OrderBy(g => Distance(Key(g.Name), key)).Take(3).Select(g => g.Name))}. "
                + "For a section of your own use new Girder(…).");
    }

    /// <summary>The printed table values of a catalogue girder, for comparison.</summary>
    /// <exception cref="InputException">The girder is not one of the catalogue.</exception>
    public static PrintedGirder Printed(Girder girder)
    {
        ArgumentNullException.ThrowIfNull(girder);
        return Table.Value.Printed.TryGetValue(girder.Name, out PrintedGirder? printed)
            ? printed
            : throw new InputException("girder", $"'{girder.Name}'", "a girder of the catalogue",
                "A custom girder has no printed values; its section properties are computed from the geometry.");
    }

    private static string Key(string designation)
    {
        string key = Designation.Normalise(designation);
        // HE 200 A is the other common way to write HEA 200.
        return key.StartsWith("he", StringComparison.Ordinal) && key.Length > 3 && char.IsDigit(key[2]) && char.IsLetter(key[^1])
            ? "he" + key[^1] + key[2..^1]
            : key;
    }

    /// <summary>Series first, then size.</summary>
    private static double Distance(string a, string b)
    {
        (string series, double size) Split(string key)
        {
            string letters = new([.. key.TakeWhile(char.IsLetter)]);
            return (letters, double.TryParse(key[letters.Length..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n) ? n : 0);
        }

        (string s1, double n1) = Split(a);
        (string s2, double n2) = Split(b);
        return 1e4 * Designation.Edits(s1, s2) + Math.Abs(n1 - n2);
    }

    private static Contents Read()
    {
        var girders = new List<Girder>();
        var printed = new Dictionary<string, PrintedGirder>();
        foreach (IReadOnlyDictionary<string, string> row in CsvText.Resource("girders.csv"))
        {
            double Size(string column) => double.Parse(row[column], CultureInfo.InvariantCulture);
            double? Value(string column, double unit) => row[column].Length == 0 ? null : Size(column) * unit;
            string name = row["name"].Insert(3, " ");
            girders.Add(new Girder(name, Size("h_mm"), Size("b_mm"), Size("tw_mm"), Size("tf_mm"), Size("r_mm"), row["source"]));
            printed.Add(name, new PrintedGirder(
                Value("A_cm2", 1e2), Value("Iy_cm4", 1e4), Value("Iz_cm4", 1e4), Value("It_cm4", 1e4), Value("Iw_cm6", 1e6), row["source"]));
        }

        return new Contents(girders.AsReadOnly(), girders.ToFrozenDictionary(g => Key(g.Name)), printed.ToFrozenDictionary());
    }

    private sealed record Contents(
        IReadOnlyList<Girder> Girders, FrozenDictionary<string, Girder> ByName, FrozenDictionary<string, PrintedGirder> Printed);
}
