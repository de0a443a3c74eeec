namespace StrutLessons.Member;

/// <summary>The bar's bending in one principal plane: rotations of its ends against the chord, and the bow.</summary>
/// <param name="Symmetric">θ_s = (ϑ₁ − ϑ₂)/2, rad.</param>
/// <param name="Antisymmetric">θ_a = (ϑ₁ + ϑ₂)/2, rad.</param>
/// <param name="Chord">Chord rotation ψ, rad (0 without arms).</param>
internal readonly record struct PlaneRotations<T>(T Symmetric, T Antisymmetric, T Chord) where T : struct, ILane<T>;

/// <summary>Solves for the end slopes at one load.</summary>
internal readonly struct EndRotations<T> where T : struct, ILane<T>
{
    internal EndRotations(in StrutNumbers strut, in EndStiffness<T> stiffness)
    {
        T load = stiffness.Load;
        BowU = new BowFunctions<T>(stiffness.U);
        BowV = new BowFunctions<T>(stiffness.V);
        // End moments of the clamped, bowed bar, equal and opposite: −(EI/L) 2 (π/L) b ρC/(1 − ρ) at end 1.
        double perLength = 2 * Math.PI / (strut.Length * strut.Length);
        T bowU = T.Of(-perLength * strut.StiffnessU * strut.BowU) * BowU.Moment;
        T bowV = T.Of(-perLength * strut.StiffnessV * strut.BowV) * BowV.Moment;
        Planar u = strut.AxisU, v = strut.AxisV;
        T bowY = T.Of(u.Y) * bowU + T.Of(v.Y) * bowV;
        T bowZ = T.Of(u.Z) * bowU + T.Of(v.Z) * bowV;

        // ∂Π/∂θ = 0: K θ = −N e₁ − M₁ − bow at end 1, + N e₂ + M₂ + bow at end 2, each row scaled by its spring.
        T y1 = T.Of(strut.Spring1Y.Scale), z1 = T.Of(strut.Spring1Z.Scale), y2 = T.Of(strut.Spring2Y.Scale), z2 = T.Of(strut.Spring2Z.Scale);
        var right = new Four<T>(
            T.Of(0) - y1 * (load * T.Of(strut.Load1.Y) + T.Of(strut.Moment1.Y) + bowY),
            T.Of(0) - z1 * (load * T.Of(strut.Load1.Z) + T.Of(strut.Moment1.Z) + bowZ),
            y2 * (load * T.Of(strut.Load2.Y) + T.Of(strut.Moment2.Y) + bowY),
            z2 * (load * T.Of(strut.Load2.Z) + T.Of(strut.Moment2.Z) + bowZ));
        Four<T> x = stiffness.Matrix.Factor().Solve(right);
        Slopes = new(x.Y1 * y1, x.Z1 * z1, x.Y2 * y2, x.Z2 * z2);
        U = InPlane(strut, Slopes, u);
        V = InPlane(strut, Slopes, v);
    }

    internal readonly BowFunctions<T> BowU;

    internal readonly BowFunctions<T> BowV;

    /// <summary>Additional slopes at the ends in the joint's axes, rad.</summary>
    internal readonly Four<T> Slopes;

    internal readonly PlaneRotations<T> U;

    internal readonly PlaneRotations<T> V;

    private static PlaneRotations<T> InPlane(in StrutNumbers strut, Four<T> slopes, Planar axis)
    {
        T y = T.Of(axis.Y), z = T.Of(axis.Z), half = T.Of(0.5);
        T theta1 = y * slopes.Y1 + z * slopes.Z1;
        T theta2 = y * slopes.Y2 + z * slopes.Z2;
        T chord = T.Of(-strut.Arm1) * theta1 + T.Of(-strut.Arm2) * theta2;
        return new(half * (theta1 - theta2), half * (theta1 + theta2) - chord, chord);
    }
}
