using StrutLessons.Studies;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly Study Plain = Study.Of(new StudyStrut());

    private static IEnumerable<BadInput> Studies =>
    [
        new("variable without a name", () => StudyVariable.Find("thickness"), "variable", "gusset thickness"),
        new("quantity without a name", () => StudyQuantity.Find("load"), "quantity", "critical load"),
        new("numbers for words", () => Plain.Vary(StudyVariable.Section, 80), "section", "words in quotes"),
        new("words for a number", () => Plain.Vary(StudyVariable.Length, "2 m"), "system length", "a number in mm"),
        new("no values", () => Plain.Vary(StudyVariable.Length, Array.Empty<double>()), "system length", "no value"),
        new("value NaN in a study", () => Plain.Vary(StudyVariable.Length, 1, double.NaN), "system length", "not finite"),
        new("unknown end", () => Plain.Vary(StudyVariable.End, "pinned"), "end", "hinged, rigid support"),
        new("unknown grade", () => Plain.Vary(StudyVariable.Steel, "S36"), "steel", "S355"),
        new("half a stiffener", () => Plain.Vary(StudyVariable.Stiffened, "half"), "web stiffeners", "yes or no"),
        new("factor named twice", () => Plain.Vary(StudyVariable.Length, 1000).Vary(StudyVariable.Length, 2000), "system length", "one list"),
        new("interval that falls", () => Plain.Between(StudyVariable.Length, 2000, 1000), "system length", "smaller end first"),
        new("interval of words", () => Plain.Between(StudyVariable.Section, 1, 2), "section", "words need a list"),
        new("range of one value", () => Plain.Range(StudyVariable.Length, 1000, 2000, 1), "number of values", "11 values"),
        new("interval in a grid", () => Plain.Between(StudyVariable.Length, 1000, 2000).Run(), "system length", "Sample(count, key)"),
        new("no samples", () => Plain.Sample(0, 1), "number of samples", "between 1"),
        new("grid as a sampling", () => Plain.Sample(10, 1, StudySampling.Grid), "sampling", "leave Sample out"),
        new("nothing wanted", () => Plain.Find(), "quantities", "none"),
        new("case that is none", () => Plain.Case(2), "case", "between 1 and 1"),
        new("half a bolt", () => Plain.Vary(StudyVariable.BoltCount, 1.5).Case(1), "bolts", "whole number"),
        new("no threads", () => _ = new StudySettings { Threads = 0 }, "threads", "all cores"),
        new("part beyond the last", () => StudySettings.Default.ForPart(4, 3), "part", "between 1 and 3"),
        new("too many cases for memory", () => Plain.Sample(30_000_000, 1).Run(), "number of cases", "Write(path)"),
        new("column without a name", () => Plain.Run().Numbers("load"), "column", "capacity"),
        new("numbers of a column of words", () => Plain.Run().Numbers("reason"), "column", "use Words"),
        new("rows for nothing", () => Plain.Run().Where(_ => false), "condition", "at least one"),
        new("merge of nothing", () => StudyFile.Merge([], "merged.csv"), "parts", "none"),
        new("sensitivity of words", () => Sensitivity.OneAtATime(Plain.Vary(StudyVariable.Length, 1000, 2000), StudyQuantity.Reason), "study", "a quantity of words"),
        new("shares of one row", () => Sensitivity.Shares(Plain.Run(), "capacity", "case"), "capacity", "eight or more"),
        new("quote that is not closed", () => Assert.NotEmpty(CsvRows.Read(new StringReader("a,\"b"))), "row 1", "not closed"),
    ];
}
