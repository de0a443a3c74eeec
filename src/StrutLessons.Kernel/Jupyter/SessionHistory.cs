using System.IO.Enumeration;
using System.Text.Json.Nodes;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>The cells run in this session. Nothing is kept on disk, so there are no earlier sessions to look into.</summary>
internal sealed class SessionHistory
{
    private readonly List<(int Count, string Code)> _cells = [];

    internal void Add(int count, string code) => _cells.Add((count, code));

    /// <summary>The answer to a history request: the last cells, a range of them, or those that match a pattern with * and ?.</summary>
    internal JsonObject Answer(JupyterRequest request)
    {
        var wanted = request.Text("hist_access_type") switch
        {
            "range" => Range(request.Number("session", 0), request.Number("start", 0), request.Number("stop", int.MaxValue)),
            "search" => Last(Matching(request.Text("pattern"), request.Flag("unique", false)), request.Number("n", int.MaxValue)),
            _ => Last(_cells, request.Number("n", int.MaxValue)),
        };
        var withOutput = request.Flag("output", false);
        return new JsonObject
        {
            ["status"] = "ok",
            ["history"] = new JsonArray([.. wanted.Select(cell =>
                new JsonArray(0, cell.Count, withOutput ? new JsonArray(cell.Code, null) : JsonValue.Create(cell.Code)))]),
        };
    }

    private IEnumerable<(int Count, string Code)> Range(int session, int start, int stop) =>
        session == 0 ? _cells.Where(cell => cell.Count >= start && cell.Count < stop) : [];

    private IEnumerable<(int Count, string Code)> Matching(string pattern, bool unique)
    {
        var found = _cells.Where(cell => FileSystemName.MatchesSimpleExpression(pattern, cell.Code, ignoreCase: false));
        // Of equal cells the last one counts.
        return unique ? found.Reverse().DistinctBy(cell => cell.Code).Reverse() : found;
    }

    private static IEnumerable<(int Count, string Code)> Last(IEnumerable<(int Count, string Code)> cells, int number) =>
        cells.TakeLast(Math.Max(number, 0));
}
