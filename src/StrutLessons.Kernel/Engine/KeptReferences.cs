using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;

namespace StrutLessons.Kernel.Engine;

/// <summary>Finds the assemblies that cells refer to and keeps what it has found: each cell would read them anew.</summary>
internal sealed class KeptReferences(string folder) : MetadataReferenceResolver
{
    private readonly ScriptMetadataResolver _finder = ScriptMetadataResolver.Default.WithBaseDirectory(folder);
    private readonly ConcurrentDictionary<AssemblyIdentity, PortableExecutableReference?> _missing = new();
    private readonly ConcurrentDictionary<(string, string?, MetadataReferenceProperties), ImmutableArray<PortableExecutableReference>> _named = new();

    public override bool ResolveMissingAssemblies => _finder.ResolveMissingAssemblies;

    public override PortableExecutableReference? ResolveMissingAssembly(MetadataReference definition, AssemblyIdentity referenceIdentity) =>
        _missing.GetOrAdd(referenceIdentity, identity => _finder.ResolveMissingAssembly(definition, identity));

    public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties) =>
        _named.GetOrAdd((reference, baseFilePath, properties), key =>
            [.. _finder.ResolveReference(key.Item1, key.Item2, key.Item3).Select(found => Documented(found.FilePath!, key.Item3))]);

    /// <summary>A reference to an assembly that knows the documentation beside it; questions about code are answered with it.</summary>
    internal static PortableExecutableReference Documented(string file, MetadataReferenceProperties properties = default) =>
        MetadataReference.CreateFromFile(file, properties, XmlDocumentationProvider.CreateFromFile(Path.ChangeExtension(file, ".xml")));

    public override bool Equals(object? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
