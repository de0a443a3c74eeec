namespace StrutLessons.Member;

/// <summary>Four numbers: end slopes or end moments in the order y₁, z₁, y₂, z₂.</summary>
internal readonly record struct Four<T>(T Y1, T Z1, T Y2, T Z2) where T : struct, ILane<T>;

/// <summary>A symmetric 4×4 matrix, lower triangle, in the order y₁, z₁, y₂, z₂.</summary>
internal readonly record struct Symmetric4<T>(T A11, T A21, T A22, T A31, T A32, T A33, T A41, T A42, T A43, T A44)
    where T : struct, ILane<T>
{
    /// <summary>L D Lᵀ without pivoting; below the critical load all pivots are positive.</summary>
    internal Factor4<T> Factor()
    {
        T one = T.Of(1);
        T r1 = one / A11;
        T l21 = A21 * r1, l31 = A31 * r1, l41 = A41 * r1;
        T d2 = A22 - l21 * A21;
        T m32 = A32 - l31 * A21, m42 = A42 - l41 * A21;
        T r2 = one / d2;
        T l32 = m32 * r2, l42 = m42 * r2;
        T d3 = A33 - l31 * A31 - l32 * m32;
        T m43 = A43 - l41 * A31 - l42 * m32;
        T r3 = one / d3;
        T l43 = m43 * r3;
        T d4 = A44 - l41 * A41 - l42 * m42 - l43 * m43;
        return new(l21, l31, l32, l41, l42, l43, A11, d2, d3, d4, r1, r2, r3, one / d4);
    }

    /// <summary>xᵀ A x.</summary>
    internal T Quadratic(Four<T> x)
    {
        Four<T> y = Times(x);
        return x.Y1 * y.Y1 + x.Z1 * y.Z1 + x.Y2 * y.Y2 + x.Z2 * y.Z2;
    }

    /// <summary>A x.</summary>
    internal Four<T> Times(Four<T> x) => new(
        A11 * x.Y1 + A21 * x.Z1 + A31 * x.Y2 + A41 * x.Z2,
        A21 * x.Y1 + A22 * x.Z1 + A32 * x.Y2 + A42 * x.Z2,
        A31 * x.Y1 + A32 * x.Z1 + A33 * x.Y2 + A43 * x.Z2,
        A41 * x.Y1 + A42 * x.Z1 + A43 * x.Y2 + A44 * x.Z2);
}

/// <summary>The factors L D Lᵀ of a <see cref="Symmetric4{T}"/>, with the reciprocals R of the pivots.</summary>
internal readonly record struct Factor4<T>(
    T L21, T L31, T L32, T L41, T L42, T L43, T D1, T D2, T D3, T D4, T R1, T R2, T R3, T R4) where T : struct, ILane<T>
{
    /// <summary>Solves A x = b.</summary>
    internal Four<T> Solve(Four<T> b)
    {
        T y1 = b.Y1;
        T y2 = b.Z1 - L21 * y1;
        T y3 = b.Y2 - L31 * y1 - L32 * y2;
        T y4 = b.Z2 - L41 * y1 - L42 * y2 - L43 * y3;
        T x4 = y4 * R4;
        T x3 = y3 * R3 - L43 * x4;
        T x2 = y2 * R2 - L32 * x3 - L42 * x4;
        T x1 = y1 * R1 - L21 * x2 - L31 * x3 - L41 * x4;
        return new(x1, x2, x3, x4);
    }
}
