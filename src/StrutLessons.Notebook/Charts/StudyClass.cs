using System.Collections.Immutable;
using StrutLessons.Notebook.Maths;
using StrutLessons.Studies;

namespace StrutLessons.Notebook.Charts;

/// <summary>Cases with the same, or nearly the same, value on one axis: their results in rising order.</summary>
/// <param name="X">The value, or the mean of the class.</param>
/// <param name="Values">Results, rising.</param>
internal sealed record StudyClass(double X, ImmutableArray<double> Values)
{
    internal double Mean => Values.Average();

    /// <summary>The result below which a share of the cases lies; straight between two cases.</summary>
    internal double Share(double share)
    {
        double at = share * (Values.Length - 1);
        int low = (int)at;
        return low + 1 < Values.Length ? Values[low] + (at - low) * (Values[low + 1] - Values[low]) : Values[^1];
    }

    /// <summary>Classes along an axis: one for each value if there are not many more than asked for, else as many with equal numbers of cases.</summary>
    internal static StudyClass[] Along(StudyTable table, string x, string y, int[] rows, int most)
    {
        ImmutableArray<double> allX = table.Numbers(x), allY = table.Numbers(y);
        int[] used = [.. rows.Where(r => double.IsFinite(allX[r]) && double.IsFinite(allY[r])).OrderBy(r => allX[r])];
        bool few = used.Select(r => allX[r]).Distinct().Take(3 * most + 1).Count() <= 3 * most;
        return [.. (few ? used.GroupBy(r => allX[r]).Select(g => g.ToArray()) : used.Chunk(Math.Max(1, (used.Length + most - 1) / most)))
            .Select(g => new StudyClass(g.Average(r => allX[r]), [.. g.Select(r => allY[r]).Order()]))];
    }
}

/// <summary>The steps of an axis of a heat map: words in the order they come, numbers rising, many numbers in classes.</summary>
/// <param name="Names">What stands beside the axis.</param>
/// <param name="Of">Step of each row of the table; −1 for none.</param>
internal sealed record StudySteps(ImmutableArray<string> Names, ImmutableArray<int> Of)
{
    internal static StudySteps Along(StudyTable table, string column, int most)
    {
        if (!table.Column(column).IsNumber)
        {
            ImmutableArray<string> words = table.Words(column);
            string[] names = [.. words.Distinct()];
            return names.Length <= 2 * most
                ? new([.. names], [.. words.Select(w => Array.IndexOf(names, w))])
                : throw new InputException("column", $"'{column}' with {names.Length} words", $"at most {2 * most}", "Choose rows with table.Where(…).");
        }

        ImmutableArray<double> numbers = table.Numbers(column);
        double[] values = [.. numbers.Where(double.IsFinite).Distinct().Order()];
        if (values.Length <= most)
        {
            return new([.. values.Select(v => Figures.Text(v))], [.. numbers.Select(v => Array.BinarySearch(values, v)).Select(i => Math.Max(i, -1))]);
        }

        double low = values[0], width = (values[^1] - low) / most;
        return new([.. Enumerable.Range(0, most).Select(i => Figures.Text(low + (i + 0.5) * width, 3))],
            [.. numbers.Select(v => double.IsFinite(v) ? Math.Min((int)((v - low) / width), most - 1) : -1)]);
    }
}
