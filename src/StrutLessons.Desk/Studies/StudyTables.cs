using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>
/// Tables of studies in any of the three forms. Rows are always collected as comma-separated values, which can be continued after a stop; the other forms are
/// made of them at the end.
/// </summary>
internal static class StudyTables
{
    internal static void Check(string output, params string[] endings)
    {
        if (!endings.Contains(Path.GetExtension(output).ToLowerInvariant()))
        {
            throw new InputException("--out", output, "a name that ends in " + string.Join(" or ", endings), "The ending says which form is written.");
        }
    }

    /// <summary>Runs a study into a file; gives the number of rows.</summary>
    internal static async Task<long> WriteAsync(Study study, string output, StudySettings settings, CancellationToken cancel)
    {
        Check(output, ".csv", ".json", ".parquet");
        var table = IsCsv(output) ? output : output + ".unfinished.csv";
        var rows = study.Write(table, settings, cancel);
        await TurnAsync(table, output, cancel).ConfigureAwait(false);
        return rows;
    }

    /// <summary>Merges parts into a file; gives the number of rows.</summary>
    internal static async Task<long> MergeAsync(IReadOnlyList<string> parts, string output, CancellationToken cancel)
    {
        Check(output, ".csv", ".json", ".parquet");
        var table = IsCsv(output) ? output : output + ".unfinished.csv";
        var rows = StudyFile.Merge(parts, table);
        await TurnAsync(table, output, cancel).ConfigureAwait(false);
        return rows;
    }

    private static bool IsCsv(string output) => Path.GetExtension(output).Equals(".csv", StringComparison.OrdinalIgnoreCase);

    private static async Task TurnAsync(string table, string output, CancellationToken cancel)
    {
        if (table == output)
        {
            return;
        }
        if (Path.GetExtension(output).Equals(".json", StringComparison.OrdinalIgnoreCase))
        {
            StudyJson.Write(table, output);
        }
        else
        {
            await ParquetTables.WriteAsync(table, output, cancel).ConfigureAwait(false);
        }
        File.Delete(table);
        File.Delete(StudyFile.DescriptionOf(table));
    }
}
