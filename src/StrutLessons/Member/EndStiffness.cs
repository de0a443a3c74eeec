namespace StrutLessons.Member;

/// <summary>
/// The strut's stiffness against rotation of its two ends, in the joint's axes, springs and rigid arms included, at one load.
/// Unknowns are the additional slopes θ = (v'₁, w'₁, v'₂, w'₂), scaled by the springs (see <see cref="ScaledSpring"/>).
/// </summary>
/// <remarks>
/// Potential energy (mechanics of the strut with linearised second-order terms):
/// Π = ½ ϑᵀ S ϑ − ½ N (L ψᵀψ + a₁ θ₁ᵀθ₁ + a₂ θ₂ᵀθ₂) + ½ θᵀKθ + N e₁ᵀθ₁ − N e₂ᵀθ₂ + bow, with the chord rotation
/// ψ = −(a₁ θ₁ + a₂ θ₂)/L of a bar on arms a₁, a₂ and ϑ = θ − ψ. S holds the stability functions.
/// The number of negative pivots counts the critical loads below N (Wittrick and Williams, 1971), because the bar with clamped
/// ends buckles only at 4 N_Ev, beyond every load considered here.
/// </remarks>
internal readonly struct EndStiffness<T> where T : struct, ILane<T>
{
    internal EndStiffness(in StrutNumbers strut, T load)
    {
        Load = load;
        U = new AxisFunctions<T>(load * T.Of(strut.PerEulerU));
        V = new AxisFunctions<T>(load * T.Of(strut.PerEulerV));
        T unitU = T.Of(strut.UnitU), unitV = T.Of(strut.UnitV);
        T one = T.Of(1);
        T inverseU = one / U.G, inverseV = one / V.G;
        // Near and far stability functions per principal axis, turned into the joint's axes.
        Turn(strut.AxisU, unitU * (inverseU + U.C), unitV * (inverseV + V.C), out T nearY, out T nearYz, out T nearZ);
        Turn(strut.AxisU, unitU * (inverseU - U.C), unitV * (inverseV - V.C), out T farY, out T farYz, out T farZ);
        Matrix = Assemble(strut, load, nearY, nearYz, nearZ, farY, farYz, farZ, withSprings: true);
    }

    internal readonly T Load;

    internal readonly AxisFunctions<T> U;

    internal readonly AxisFunctions<T> V;

    internal readonly Symmetric4<T> Matrix;

    /// <summary>Adds arms, springs and scaling to the bar's near and far stiffness.</summary>
    internal static Symmetric4<T> Assemble(
        in StrutNumbers strut, T load, T nearY, T nearYz, T nearZ, T farY, T farYz, T farZ, bool withSprings)
    {
        ref readonly ArmFactors arms = ref strut.Arms;
        T near11 = T.Of(arms.Near11), far11 = T.Of(arms.Far11), arm11 = load * T.Of(arms.Load11);
        T near22 = T.Of(arms.Near22), far22 = T.Of(arms.Far22), arm22 = load * T.Of(arms.Load22);
        T near21 = T.Of(arms.Near21), far21 = T.Of(arms.Far21), arm21 = load * T.Of(arms.Load21);
        T y1 = T.Of(strut.Spring1Y.Scale), z1 = T.Of(strut.Spring1Z.Scale), y2 = T.Of(strut.Spring2Y.Scale), z2 = T.Of(strut.Spring2Z.Scale);
        T on = T.Of(withSprings ? 1 : 0);
        return new(
            A11: y1 * y1 * (near11 * nearY + far11 * farY - arm11) + on * T.Of(strut.Spring1Y.Stiffness),
            A21: z1 * y1 * (near11 * nearYz + far11 * farYz),
            A22: z1 * z1 * (near11 * nearZ + far11 * farZ - arm11) + on * T.Of(strut.Spring1Z.Stiffness),
            A31: y2 * y1 * (near21 * nearY + far21 * farY - arm21),
            A32: y2 * z1 * (near21 * nearYz + far21 * farYz),
            A33: y2 * y2 * (near22 * nearY + far22 * farY - arm22) + on * T.Of(strut.Spring2Y.Stiffness),
            A41: z2 * y1 * (near21 * nearYz + far21 * farYz),
            A42: z2 * z1 * (near21 * nearZ + far21 * farZ - arm21),
            A43: z2 * y2 * (near22 * nearYz + far22 * farYz),
            A44: z2 * z2 * (near22 * nearZ + far22 * farZ - arm22) + on * T.Of(strut.Spring2Z.Stiffness));
    }

    /// <summary>A tensor with principal values along ê_u and ê_v in the joint's axes.</summary>
    internal static void Turn(Planar axisU, T alongU, T alongV, out T yy, out T yz, out T zz)
    {
        // ê_u = (p, q), ê_v = ±(q, −p): the sign drops out of the dyads.
        double p = axisU.Y, q = axisU.Z;
        yy = T.Of(p * p) * alongU + T.Of(q * q) * alongV;
        yz = T.Of(p * q) * (alongU - alongV);
        zz = T.Of(q * q) * alongU + T.Of(p * p) * alongV;
    }
}
