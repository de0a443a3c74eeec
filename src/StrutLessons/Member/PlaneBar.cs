namespace StrutLessons.Member;

/// <summary>Bending of the bar in one principal plane: E I (N mm²), component of its direction out of the gussets' plane, bow (mm).</summary>
internal readonly record struct PlaneBar(double BendingStiffness, double Direction, double Bow);
