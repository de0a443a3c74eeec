namespace StrutLessons.Plates;

/// <summary>A girder, its material and its support: forks at the ends of a span, or flanges held all along if there is no span.</summary>
internal readonly record struct GirderCase(GirderShape Shape, GirderSpan? Span, PlateMaterial Material);
