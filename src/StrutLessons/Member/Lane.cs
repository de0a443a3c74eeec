using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Member;

/// <summary>
/// A number, or several numbers side by side. The strut's equations are written once for any lane:
/// <see cref="Lane1"/> solves one load, <see cref="Lane4"/> four loads at once with vector instructions.
/// </summary>
internal interface ILane<T> where T : struct, ILane<T>
{
    static abstract T Of(double value);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Sqrt(T a);

    static abstract T Abs(T a);

    static abstract T Max(T a, T b);

    static abstract (T Sin, T Cos) SinCos(T a);

    /// <summary>Lane by lane: <paramref name="then"/> where a &lt; limit, else <paramref name="otherwise"/>.</summary>
    static abstract T WhereLess(T a, double limit, T then, T otherwise);
}

/// <summary>One number.</summary>
internal readonly record struct Lane1(double Value) : ILane<Lane1>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Of(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.Value + b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.Value - b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.Value * b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.Value / b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Sqrt(Lane1 a) => new(Math.Sqrt(a.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Abs(Lane1 a) => new(Math.Abs(a.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 a, Lane1 b) => new(Math.Max(a.Value, b.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane1 Sin, Lane1 Cos) SinCos(Lane1 a)
    {
        (double sin, double cos) = Math.SinCos(a.Value);
        return (new(sin), new(cos));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 WhereLess(Lane1 a, double limit, Lane1 then, Lane1 otherwise) => a.Value < limit ? then : otherwise;
}

/// <summary>Four numbers in one vector register.</summary>
internal readonly record struct Lane4(Vector256<double> Value) : ILane<Lane4>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator +(Lane4 a, Lane4 b) => new(a.Value + b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator -(Lane4 a, Lane4 b) => new(a.Value - b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator *(Lane4 a, Lane4 b) => new(a.Value * b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator /(Lane4 a, Lane4 b) => new(a.Value / b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Sqrt(Lane4 a) => new(Vector256.Sqrt(a.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Abs(Lane4 a) => new(Vector256.Abs(a.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Max(Lane4 a, Lane4 b) => new(Vector256.MaxNative(a.Value, b.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane4 Sin, Lane4 Cos) SinCos(Lane4 a)
    {
        (Vector256<double> sin, Vector256<double> cos) = Vector256.SinCos(a.Value);
        return (new(sin), new(cos));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 WhereLess(Lane4 a, double limit, Lane4 then, Lane4 otherwise) =>
        new(Vector256.ConditionalSelect(Vector256.LessThan(a.Value, Vector256.Create(limit)), then.Value, otherwise.Value));
}
