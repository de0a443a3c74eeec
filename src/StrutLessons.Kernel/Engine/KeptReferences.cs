using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection.PortableExecutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Finds the assemblies that cells refer to, directly or through others, and keeps what it has found. Those of the framework and of
/// this program are mapped into memory: read in full, as the compiler's own finder does it, the hundred of them behind the first
/// cell are 90 MB of copying.
/// </summary>
internal sealed class KeptReferences(string folder) : MetadataReferenceResolver
{
    /// <summary>Files of the framework and of this program, by the name of their assembly.</summary>
    private static readonly Dictionary<string, string> Known =
        ((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .DistinctBy(file => Path.GetFileNameWithoutExtension(file), StringComparer.OrdinalIgnoreCase)
            .ToDictionary(file => Path.GetFileNameWithoutExtension(file), StringComparer.OrdinalIgnoreCase);

    /// <summary>Each file is mapped once, whatever way leads to it and wherever the current folder goes.</summary>
    private static readonly ConcurrentDictionary<(string, MetadataReferenceProperties), PortableExecutableReference> Maps = new();

    private readonly ScriptMetadataResolver _finder = ScriptMetadataResolver.Default.WithBaseDirectory(folder);
    private readonly ConcurrentDictionary<AssemblyIdentity, PortableExecutableReference?> _missing = new();
    private readonly ConcurrentDictionary<(string, string?, MetadataReferenceProperties), ImmutableArray<PortableExecutableReference>> _named = new();

    public override bool ResolveMissingAssemblies => true;

    public override PortableExecutableReference? ResolveMissingAssembly(MetadataReference definition, AssemblyIdentity referenceIdentity) =>
        Known.TryGetValue(referenceIdentity.Name, out var file)
            ? Mapped(file)
            : _missing.GetOrAdd(referenceIdentity, identity => _finder.ResolveMissingAssembly(definition, identity));

    public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties) =>
        Known.TryGetValue(reference, out var file)
            ? [Mapped(file, properties)]
            : _named.GetOrAdd((reference, baseFilePath, properties), key =>
                [.. _finder.ResolveReference(key.Item1, key.Item2, key.Item3).Select(found => Read(found.FilePath!, key.Item3))]);

    /// <summary>A reference to an assembly whose file stays as it is while this program runs.</summary>
    internal static PortableExecutableReference Mapped(string file, MetadataReferenceProperties properties = default) =>
        Maps.GetOrAdd((file, properties), static key => Map(key.Item1, key.Item2));

    private static PortableExecutableReference Map(string file, MetadataReferenceProperties properties)
    {
        // Without the option to read ahead, the reader maps the file; the module holds it as long as it lives.
        var module = ModuleMetadata.CreateFromStream(new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete), PEStreamOptions.Default);
        return AssemblyMetadata.Create(module).GetReference(Documentation(file), properties.Aliases, properties.EmbedInteropTypes, file);
    }

    /// <summary>A reference to an assembly of the reader's, who may build it anew in the meantime.</summary>
    private static PortableExecutableReference Read(string file, MetadataReferenceProperties properties) =>
        MetadataReference.CreateFromFile(file, properties, Documentation(file));

    /// <summary>The documentation beside an assembly; questions about code are answered with it.</summary>
    private static XmlDocumentationProvider Documentation(string file) =>
        XmlDocumentationProvider.CreateFromFile(Path.ChangeExtension(file, ".xml"));

    public override bool Equals(object? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
