using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Strain measures of a geometrically exact rod without shear deformation, with first and second derivatives.
/// <para>
/// q = r' and p = r'' are the first two derivatives of the axis (through the shear centre), t = q/|q| its tangent, φ the roll.
/// The triad (t, m1, m2) is the smallest rotation that carries e_x to t; n1, n2 are m1, m2 rolled by φ. Then
/// e = |q| − 1, k1 = t'·n1, k2 = t'·n2, τ = φ' + (t_z t_y' − t_y t_z')/(1 + t_x).
/// </para>
/// <para>
/// With α = 1/|q|, β = 1/(|q| + q_x), γ = αβ, δ = αγ the parts without roll are linear in p:
/// f1 = α p_y − γ q_y p_x − δ q_y (q·p), f2 = α p_z − γ q_z p_x − δ q_z (q·p), f3 = γ (q_z p_y − q_y p_z),
/// and k1 = cos φ f1 + sin φ f2, k2 = −sin φ f1 + cos φ f2, τ = φ' + f3.
/// </para>
/// Eight local variables in two vectors of four: A = (q_x, q_y, q_z, φ') and B = (p_x, p_y, p_z, φ).
/// </summary>
internal struct RodKinematics
{
    internal StrainMeasures Strain;

    /// <summary>Derivatives of e, k1, k2, τ with respect to A and to B.</summary>
    internal Vector256<double> EA, K1A, K1B, K2A, K2B, TA, TB;

    private Vector256<double> q, p, gradAlpha, gradBeta, gradGamma, gradDelta;
    private double alpha, beta, gamma, delta, cos, sin;

    private static readonly Vector256<double> X = Vector256.Create(1.0, 0, 0, 0);
    private static readonly Vector256<double> Y = Vector256.Create(0.0, 1, 0, 0);
    private static readonly Vector256<double> Z = Vector256.Create(0.0, 0, 1, 0);
    private static readonly Vector256<double> W = Vector256.Create(0.0, 0, 0, 1);
    private static readonly Vector256<double> XYZ = Vector256.Create(1.0, 1, 1, 0);

    /// <summary>Strains and first derivatives at A = (q, φ'), B = (p, φ).</summary>
    internal static void Evaluate(Vector256<double> a, Vector256<double> b, out RodKinematics k)
    {
        Unsafe.SkipInit(out k);
        double phi = b[3];
        Vector256<double> q = a * XYZ, p = b * XYZ;
        double length = Math.Sqrt(Vector256.Dot(q, q)), rho = Vector256.Dot(q, p);
        double alpha = 1 / length, beta = 1 / (length + a[0]), gamma = alpha * beta, delta = alpha * gamma;
        Vector256<double> ga = -(alpha * alpha * alpha) * q;
        Vector256<double> gb = -(beta * beta) * (alpha * q + X);
        Vector256<double> gg = beta * ga + alpha * gb;
        Vector256<double> gd = gamma * ga + alpha * gg;
        double qy = a[1], qz = a[2], px = b[0], py = b[1], pz = b[2];
        double cross = qz * py - qy * pz;
        double f1 = alpha * py - gamma * qy * px - delta * qy * rho;
        double f2 = alpha * pz - gamma * qz * px - delta * qz * rho;
        Vector256<double> f1q = py * ga - (qy * px) * gg - (gamma * px + delta * rho) * Y - (qy * rho) * gd - (qy * delta) * p;
        Vector256<double> f2q = pz * ga - (qz * px) * gg - (gamma * px + delta * rho) * Z - (qz * rho) * gd - (qz * delta) * p;
        Vector256<double> f1p = alpha * Y - (qy * gamma) * X - (qy * delta) * q;
        Vector256<double> f2p = alpha * Z - (qz * gamma) * X - (qz * delta) * q;
        (double s, double c) = phi == 0 ? (0, 1) : Math.SinCos(phi);
        double k1 = c * f1 + s * f2, k2 = c * f2 - s * f1;
        k.Strain = new StrainMeasures(length - 1, k1, k2, a[3] + gamma * cross);
        k.EA = alpha * q;
        k.K1A = c * f1q + s * f2q;
        k.K1B = c * f1p + s * f2p + k2 * W;
        k.K2A = c * f2q - s * f1q;
        k.K2B = c * f2p - s * f1p - k1 * W;
        k.TA = cross * gg + gamma * (py * Z - pz * Y) + W;
        k.TB = gamma * (qz * Y - qy * Z);
        (k.q, k.p, k.gradAlpha, k.gradBeta, k.gradGamma, k.gradDelta) = (q, p, ga, gb, gg, gd);
        (k.alpha, k.beta, k.gamma, k.delta, k.cos, k.sin) = (alpha, beta, gamma, delta, c, s);
    }

    /// <summary>
    /// Adds Σ S_i ∇²ε_i, the geometric part of the tangent, to three 4 × 4 blocks given as rows:
    /// AA at 0, AB (row from A, column from B) at 4, BB at 8.
    /// </summary>
    internal readonly void AddCurvature(in SectionState s, ref Vector256<double> block)
    {
        double s1 = cos * s.S1 - sin * s.S2, s2 = sin * s.S1 + cos * s.S2, s3 = s.S3;
        double qy = q[1], qz = q[2], px = p[0], py = p[1], pz = p[2];
        double rho = Vector256.Dot(q, p), eta = s1 * qy + s2 * qz, kappa = s1 * py + s2 * pz, chi = s3 * (qz * py - qy * pz);
        Vector256<double> gEta = s1 * Y + s2 * Z, gChi = s3 * (py * Z - pz * Y);
        Vector256<double> outer = alpha * q + X;
        double a3 = alpha * alpha * alpha, b2 = beta * beta;
        double wAlpha = kappa, wGamma = chi - px * eta, wDelta = -rho * eta;
        // ∇²γ = β∇²α + α∇²β + sym(∇α, ∇β), ∇²δ = γ∇²α + α∇²γ + sym(∇α, ∇γ): gather the factors of ∇²α, ∇²β and of the pairs.
        double toGamma = wGamma + wDelta * alpha;
        double toAlpha = wAlpha + wDelta * gamma + toGamma * beta, toBeta = toGamma * alpha;
        // Multiple of the unit matrix: S0 ∇²e, ∇²α and ∇²β each hold one.
        double unit = s.S0 * alpha - toAlpha * a3 - toBeta * b2 * alpha;
        double onQ = -s.S0 * a3 + toAlpha * 3 * a3 * alpha * alpha + toBeta * b2 * a3;
        double onOuter = 2 * toBeta * b2 * beta;
        Vector256<double> pairGamma = gChi - px * gEta;
        Vector256<double> pairDelta = -(eta * p + rho * gEta);
        Vector256<double> rollA = s.S1 * K2A - s.S2 * K1A;
        Vector256<double> rollB = s.S1 * K2B - s.S2 * K1B;
        for (int i = 0; i < 3; i++)
        {
            Vector256<double> basis = i == 0 ? X : i == 1 ? Y : Z;
            double qi = q[i], pi = p[i], ei = gEta[i];
            Vector256<double> aa = unit * basis + (onQ * qi) * q + (onOuter * outer[i]) * outer;
            aa += (toGamma * gradAlpha[i]) * gradBeta + (toGamma * gradBeta[i]) * gradAlpha;
            aa += (wDelta * gradAlpha[i]) * gradGamma + (wDelta * gradGamma[i]) * gradAlpha;
            aa += gradGamma[i] * pairGamma + pairGamma[i] * gradGamma;
            aa += gradDelta[i] * pairDelta + pairDelta[i] * gradDelta;
            aa -= (delta * pi) * gEta + (delta * ei) * p;
            Unsafe.Add(ref block, i) += aa;
            Vector256<double> ab = gradAlpha[i] * gEta - (eta * gradGamma[i] + gamma * ei) * X;
            ab -= (eta * gradDelta[i] + delta * ei) * q + (delta * eta) * basis;
            ab += (s3 * gradGamma[i]) * (qz * Y - qy * Z);
            ab += (i == 2 ? s3 * gamma : 0) * Y - (i == 1 ? s3 * gamma : 0) * Z;
            Unsafe.Add(ref block, 4 + i) += ab + rollA[i] * W;
            Unsafe.Add(ref block, 8 + i) += rollB[i] * W;
        }
        Unsafe.Add(ref block, 11) += rollB;
    }
}
