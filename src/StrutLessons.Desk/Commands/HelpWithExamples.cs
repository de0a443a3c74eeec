using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace StrutLessons.Desk.Commands;

/// <summary>The usual help text with examples under it.</summary>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly Dictionary<string, string[]> Examples = new()
    {
        [""] = ["", "open my-lessons --no-browser", "site --out pages", "run notebooks --times"],
        ["open"] = ["open", "open --no-browser --port 8090", "open my-lessons --folder my-changes"],
        ["site"] = ["site", "site --out pages"],
        ["study"] = ["study cases.json --out results.json", "study grid.json --out part-1.csv --part 1/4 --threads 2"],
        ["merge"] = ["merge part-1.csv part-2.csv --out whole.parquet"],
        ["plot"] = ["plot results.csv --x slenderness --y capacity --by section --out figure.svg", "plot grid.json --kind tornado --out tornado.svg"],
        ["measure"] = ["measure", "measure --struts 1000 100000 --threads 1", "measure --starts 10"],
        ["run"] = ["run", "run notebooks/01-the-angle-and-its-axes.ipynb --times", "run my-lessons --limit 30"],
        ["jupyter"] = ["jupyter", "jupyter --remove"],
        ["ready"] = ["ready"],
    };

    /// <summary>Replaces the help action of the command line.</summary>
    internal static void AddTo(RootCommand root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
    }

    public override int Invoke(ParseResult parseResult)
    {
        var code = usual.Invoke(parseResult);
        var verb = parseResult.CommandResult.Command is RootCommand ? "" : parseResult.CommandResult.Command.Name;
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine(Examples[verb].Length == 1 ? "Example:" : "Examples:");
        foreach (var example in Examples[verb])
        {
            output.WriteLine("  " + CommandLine.Call + (example.Length > 0 ? " -- " + example : ""));
        }
        return code;
    }
}
