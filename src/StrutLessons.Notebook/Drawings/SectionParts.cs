namespace StrutLessons.Notebook.Drawings;

/// <summary>What a drawing of the section shows besides the outline and the centroid.</summary>
[Flags]
public enum SectionParts
{
    /// <summary>Outline and centroid only.</summary>
    None = 0,

    /// <summary>Legs, thickness and the distances of the centroid from the heel.</summary>
    Dimensions = 1,

    /// <summary>Axes y and z of the connected leg.</summary>
    LegAxes = 2,

    /// <summary>Principal axes u–u and v–v.</summary>
    PrincipalAxes = 4,

    /// <summary>Ellipse of inertia: its tangents keep the radius of gyration from the parallel axis.</summary>
    Ellipse = 8,

    /// <summary>Names of the five corners at which stresses are checked.</summary>
    Corners = 16,

    /// <summary>The shear centre.</summary>
    ShearCentre = 32,

    /// <summary>Dimensions, leg axes and principal axes.</summary>
    Usual = Dimensions | LegAxes | PrincipalAxes,
}
