using System.Text.Json;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>Reads the grid of a case file: <c>set</c> puts values into the strut, <c>vary</c> gives lists, ranges and intervals, <c>find</c> says what is wanted.</summary>
internal static class GridFile
{
    private const double Largest = 1e9;

    internal static Study Read(JsonElement grid)
    {
        var at = new CaseNode(grid, "grid");
        var strut = new StudyStrut();
        if (at.Find("set") is { } set)
        {
            Object(set, "grid.set");
            foreach (var member in set.EnumerateObject())
            {
                strut = Factor(Study.Of(strut), member, "grid.set", single: true).Case(1);
            }
        }
        var study = Study.Of(strut);
        var vary = at.Find("vary") ?? throw at.Missing("vary", "an object with a list for each variable");
        Object(vary, "grid.vary");
        foreach (var member in vary.EnumerateObject())
        {
            study = Factor(study, member, "grid.vary", single: false);
        }
        if (at.ObjectOrNone("sample") is { } sample)
        {
            study = study.Sample(sample.Whole("count", 1, 1_000_000_000, 1000), (ulong)sample.Number("key", 0, 9e15),
                sample.Choice("kind", StudySampling.LowDiscrepancy, ("low_discrepancy", StudySampling.LowDiscrepancy), ("random", StudySampling.Random)));
            sample.Done();
        }
        var find = at.Words("find", [.. StudyQuantity.All.Select(q => q.Name)]);
        at.Done();
        return find.Length > 0 ? study.Find([.. find.Select(StudyQuantity.Find)]) : study;
    }

    private static Study Factor(Study study, JsonProperty member, string path, bool single)
    {
        var variable = StudyVariable.Find(member.Name.Length <= 60 ? member.Name : CaseNode.Short(member.Name));
        var place = $"{path}.{variable.Name}";
        var value = member.Value;
        if (value.ValueKind == JsonValueKind.Object && !single)
        {
            var span = new CaseNode(value, place);
            double from = span.Number("from", -Largest, Largest), to = span.Number("to", -Largest, Largest);
            var whole = span.Has("count") ? study.Range(variable, from, to, span.Whole("count", 2, 1_000_000, 2)) : study.Between(variable, from, to);
            span.Done();
            return whole;
        }
        JsonElement[] items = value.ValueKind != JsonValueKind.Array || single ? [value]
            : value.GetArrayLength() <= 100_000 ? [.. value.EnumerateArray()] : throw CaseNode.Wrong(place, value, "a list of at most 100000 values", "Write from, to and count.");
        return variable.IsNumber
            ? study.Vary(variable, [.. items.Select(v => CaseNode.NumberOf(v, place, -Largest, Largest))])
            : study.Vary(variable, [.. items.Select(v => CaseNode.TextOf(v, place))]);
    }

    private static void Object(JsonElement element, string path) => _ = new CaseNode(element, path);
}
