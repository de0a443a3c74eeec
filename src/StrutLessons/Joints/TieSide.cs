namespace StrutLessons.Joints;

/// <summary>On which side of the gusset's mid-plane the line of an adjacent tie lies.</summary>
public enum TieSide
{
    /// <summary>On the side of the strut's centroid: a pulling tie counteracts the pushing strut.</summary>
    SameAsStrut,

    /// <summary>On the other side: tie and strut bend the gusset the same way.</summary>
    OppositeToStrut,
}
