using System.Reflection;
using System.Runtime.CompilerServices;
using StrutLessons.Sections;

namespace StrutLessons.Tests.House;

/// <summary>Domain types do not change once made.</summary>
public class ImmutabilityTests
{
    private static readonly Assembly Mechanics = typeof(AngleSection).Assembly;

    public static TheoryData<string> DomainTypes => [.. Mechanics.GetExportedTypes()
        .Where(t => !t.IsEnum && !t.IsInterface && !(t.IsAbstract && t.IsSealed) && !typeof(Delegate).IsAssignableFrom(t) && !typeof(Exception).IsAssignableFrom(t))
        .Select(t => t.FullName!)];

    [Theory]
    [MemberData(nameof(DomainTypes))]
    public void A_domain_type_has_no_setter_and_no_writable_field(string name)
    {
        Type type = Mechanics.GetType(name)!;
        Assert.All(type.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic),
            p => Assert.True(p.SetMethod is null || IsInit(p.SetMethod), $"{name}.{p.Name} can be set"));
        Assert.All(type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Where(f => !IsBackingField(f)),
            f => Assert.True(f.IsInitOnly, $"{name}.{f.Name} can be written"));
    }

    [Theory]
    [MemberData(nameof(DomainTypes))]
    public void A_domain_type_is_sealed_or_a_value_and_shows_no_array(string name)
    {
        Type type = Mechanics.GetType(name)!;
        Assert.True(type.IsSealed || type.IsAbstract, $"{name} is open to inheritance");
        Assert.All(type.GetProperties(BindingFlags.Instance | BindingFlags.Public),
            p => Assert.False(p.PropertyType.IsArray, $"{name}.{p.Name} hands out an array that a caller could change"));
    }

    [Fact]
    public void No_static_state_can_change() =>
        Assert.Empty(Mechanics.GetTypes()
            .Where(t => t.GetCustomAttribute<CompilerGeneratedAttribute>() is null)
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => !f.IsInitOnly && !f.IsLiteral && !IsBackingField(f) && f.GetCustomAttribute<CompilerGeneratedAttribute>() is null)
            .Select(f => $"{f.DeclaringType!.FullName}.{f.Name}"));

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    /// <summary>Backing fields of init-only properties are written by the compiler's own setter alone.</summary>
    private static bool IsBackingField(FieldInfo field) => field.Name.StartsWith('<');
}
