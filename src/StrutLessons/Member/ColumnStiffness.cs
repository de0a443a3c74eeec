namespace StrutLessons.Member;

/// <summary>
/// Stiffness of a straight column segment under compression, bending in one plane: near and far rotation stiffness, and the softening of
/// its chord. With ϑ = θ − ψ and the chord rotation ψ: Π = ½ near (ϑ₁² + ϑ₂²) + far ϑ₁ϑ₂ − ½ N L ψ².
/// </summary>
internal readonly record struct ColumnStiffness(double Near, double Far, double Length, double Load)
{
    /// <summary>A segment of one bending stiffness.</summary>
    internal static ColumnStiffness Of(double bendingStiffness, double length, double load)
    {
        var axis = new AxisFunctions<Lane1>(new Lane1(load / (Math.PI * Math.PI * bendingStiffness / (length * length))));
        double unit = bendingStiffness / length;
        return new(unit * (1 / axis.G.Value + axis.C.Value), unit * (1 / axis.G.Value - axis.C.Value), length, load);
    }

    /// <summary>Force at an end per its displacement.</summary>
    internal double Sway => 2 * (Near + Far) / (Length * Length) - Load / Length;

    /// <summary>Moment at an end per displacement of end 1, and force at end 1 per rotation.</summary>
    internal double Cross => (Near + Far) / Length;
}
