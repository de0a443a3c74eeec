namespace StrutLessons.Joints;

/// <summary>Limiting values of a gusset's stiffness, N mm/rad, to show beside the computed one.</summary>
public sealed record GussetLimits
{
    internal GussetLimits(GussetFormula f)
    {
        double length = f.EquivalentLength;
        NarrowStrip = f.PlateStiffness * (f.HalfLeft + f.HalfRight) / length;
        NarrowBeam = NarrowStrip * (1 - Materials.Steel.StandardPoissonRatio * Materials.Steel.StandardPoissonRatio);
        InfinitelyWide = f.PlateStiffness * (f.HalfLeft + f.HalfRight + 2 * f.Spread) / length;
        FullWidth = f.PlateStiffness * (f.HalfLeft + f.HalfRight + f.SideLeft + f.SideRight) / length;
        MembraneSpreadWidth = Math.Min(f.PatchLength * Math.Tan(Math.PI / 6), f.Gusset.WidthLeft)
            + Math.Min(f.PatchLength * Math.Tan(Math.PI / 6), f.Gusset.WidthRight);
        MembraneSpread = f.PlateStiffness * MembraneSpreadWidth / f.Gusset.FreeLength;
    }

    /// <summary>D w/g: nothing but the strip under the leg.</summary>
    public double NarrowStrip { get; }

    /// <summary>E I/g of that strip as a beam: without the factor 1/(1 − ν²), 9 % less.</summary>
    public double NarrowBeam { get; }

    /// <summary>D (w + 2λ)/g: plate without end on both sides.</summary>
    public double InfinitelyWide { get; }

    /// <summary>D b/g: the whole width, as if it turned with the leg. Too stiff.</summary>
    public double FullWidth { get; }

    /// <summary>2 L_b tan 30°, limited to the plate: the spread rule for tension in a gusset, mm.</summary>
    public double MembraneSpreadWidth { get; }

    /// <summary>D times that width over g: a rule for forces in the plane of the plate, far too soft for bending.</summary>
    public double MembraneSpread { get; }
}
