using System.Reflection;
using StrutLessons.Notebook;

namespace StrutLessons.Kernel.Engine;

/// <summary>What every lesson may use from its first cell on, without a package reference.</summary>
internal static class Preload
{
    private static readonly Assembly[] Library = [typeof(WorkedStep).Assembly, typeof(Showing).Assembly];

    /// <summary>Files of the assemblies that cells are compiled against.</summary>
    internal static IReadOnlyList<string> AssemblyFiles { get; } =
    [
        .. Library.Concat([typeof(Plotly.NET.GenericChart).Assembly, typeof(Microsoft.FSharp.Core.Unit).Assembly, typeof(MathNet.Numerics.Constants).Assembly])
            .Select(assembly => assembly.Location),
    ];

    /// <summary>Namespaces that need no <c>using</c>: the common ones of .NET and every public one of the lessons' library.</summary>
    internal static IReadOnlyList<string> Namespaces { get; } =
    [
        "System",
        "System.Collections",
        "System.Collections.Generic",
        "System.Linq",
        "System.Text",
        "System.Threading.Tasks",
        .. Library.SelectMany(assembly => assembly.GetExportedTypes())
            .Select(type => type.Namespace)
            .OfType<string>()
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The cell that runs before the first one.</summary>
    internal static string Code => string.Concat(Namespaces.Select(name => $"using {name};\n")) + $"using static {typeof(Cells).FullName};\n";
}
