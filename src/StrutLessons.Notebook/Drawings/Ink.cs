namespace StrutLessons.Notebook.Drawings;

/// <summary>What a line or an area means. The colour follows from it, once for paper and once for a dark page.</summary>
internal enum Ink
{
    /// <summary>Nothing is drawn.</summary>
    None,

    /// <summary>Outlines and words.</summary>
    Text,

    /// <summary>Dimension and help lines, remarks.</summary>
    Soft,

    /// <summary>Grid lines of a chart.</summary>
    Grid,

    /// <summary>The background.</summary>
    Sheet,

    /// <summary>The angle.</summary>
    Steel,

    /// <summary>The gusset.</summary>
    Plate,

    /// <summary>Forces and eccentricities.</summary>
    Force,

    /// <summary>Compression, and the first series of a chart.</summary>
    Compression,

    /// <summary>Tension, and the second series of a chart.</summary>
    Tension,

    /// <summary>The major axis u–u, and the third series of a chart.</summary>
    Major,

    /// <summary>The minor axis v–v, and the fourth series of a chart.</summary>
    Minor,

    /// <summary>The fifth series of a chart.</summary>
    Fifth,
}
