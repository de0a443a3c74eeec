namespace StrutLessons.Tests.House;

/// <summary>One wrong input: what it is, what it does, the field that must be named, and words the message must hold.</summary>
internal sealed record BadInput(string Name, Action Act, string Field, params string[] Fragments);
