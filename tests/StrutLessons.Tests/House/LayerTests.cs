using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace StrutLessons.Tests.House;

/// <summary>The folders tell the story of the load; arrows point down only.</summary>
public partial class LayerTests
{
    /// <summary>Layers of the mechanics from the bottom up. A layer may use those before it.</summary>
    private static readonly string[] Mechanics =
    [
        "Common", "Materials", "Sections", "Eccentricity", "Plates", "Torsion", "Joints", "Member", "Stress", "Capacity",
        "Standards", "Nonlinear", "Calibration", "Studies",
    ];

    /// <summary>Projects from the bottom up, and the packages each may reference.</summary>
    private static readonly (string Project, string[] Packages)[] Projects =
    [
        ("StrutLessons", ["MathNet.Numerics"]),
        ("StrutLessons.Notebook", ["Plotly.NET", "FSharp.Core"]),
        ("StrutLessons.Kernel", ["Microsoft.DotNet.Interactive", "Microsoft.DotNet.Interactive.CSharp", "Plotly.NET.Interactive", "FSharp.Core", "NetMQ"]),
        ("StrutLessons.Desk", ["Markdig", "System.CommandLine", "Microsoft.CodeAnalysis.CSharp", "Parquet.Net"]),
    ];

    [Fact]
    public void Each_folder_of_the_mechanics_uses_only_folders_below_it()
    {
        string source = Path.Combine(Tree.Source, "StrutLessons");
        Assert.Empty(Directory.GetDirectories(source).Select(d => Path.GetFileName(d)!).Except([.. Mechanics, "bin", "obj"]));
        List<string> wrong = [];
        foreach (string file in Tree.Files(source, "*.cs"))
        {
            string folder = Path.GetRelativePath(source, file).Split(Path.DirectorySeparatorChar)[0];
            int layer = Array.IndexOf(Mechanics, folder);
            string text = File.ReadAllText(file);
            string space = folder == "Common" ? "StrutLessons" : "StrutLessons." + folder;
            if (!text.Contains($"namespace {space};", StringComparison.Ordinal))
            {
                wrong.Add($"{file}: namespace is not {space}");
            }

            wrong.AddRange(OtherFolder().Matches(text).Select(m => m.Groups[1].Value)
                .Where(used => Array.IndexOf(Mechanics, used) > layer)
                .Select(used => $"{Path.GetRelativePath(source, file)} uses {used}, a layer above {folder}"));
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Each_project_references_only_projects_below_it_and_its_own_packages()
    {
        for (int i = 0; i < Projects.Length; i++)
        {
            (string project, string[] packages) = Projects[i];
            var file = XDocument.Load(Path.Combine(Tree.Source, project, project + ".csproj"));
            Assert.All(References("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Replace('\\', '/'))),
                r => Assert.Contains(r, Projects.Take(i).Select(p => p.Project)));
            Assert.All(References("PackageReference"), r => Assert.Contains(r, packages));

            IEnumerable<string> References(string kind) => file.Descendants(kind).Select(e => e.Attribute("Include")!.Value);
        }
    }

    [Fact]
    public void Only_the_kernel_names_the_notebook_engine() =>
        Assert.DoesNotContain(Tree.Files(Tree.Source, "*.cs"),
            f => !f.Contains("StrutLessons.Kernel", StringComparison.Ordinal)
                && File.ReadAllText(f).Contains("Microsoft.DotNet.Interactive", StringComparison.Ordinal));

    [Fact]
    public void A_source_file_can_be_read_in_one_sitting() =>
        Assert.DoesNotContain(Tree.Files(Tree.Source, "*.cs"), f => File.ReadLines(f).Count() > 400);

    [GeneratedRegex(@"(?:using |\b)StrutLessons\.([A-Z]\w+)")]
    private static partial Regex OtherFolder();
}
