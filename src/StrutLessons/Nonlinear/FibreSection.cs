using System.Numerics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// The section as fibres about the shear centre S. Strain of a fibre at (Y, Z): ε = e − Y k1 − Z k2 + (Y² + Z²) τ²/2.
/// The last term is the whole Wagner effect: a fibre away from the axis becomes a helix and lengthens.
/// Stress is tension positive.
/// </summary>
internal sealed class FibreSection
{
    private readonly double[] y, z, r, area, residual;
    private readonly double modulus, hardening, yield, torsional;
    private readonly double a0, aY, aZ, aR, aYY, aYZ, aZZ, aYR, aZR, aRR, residualR;

    internal FibreSection(ReferenceStrut strut, RodMesh mesh, bool wagner)
    {
        ReferenceSection section = strut.Section;
        (modulus, hardening, yield) = (strut.Steel.ElasticModulus, strut.Steel.HardeningModulus, strut.Steel.YieldStrength);
        torsional = strut.Steel.ShearModulus * section.TorsionConstant;
        List<(Planar Point, double Area)> points = Points(section, mesh);
        Count = points.Count;
        int lanes = Vector<double>.Count;
        Padded = (Count + lanes - 1) / lanes * lanes;
        (y, z, r, area) = (new double[Padded], new double[Padded], new double[Padded], new double[Padded]);
        for (int i = 0; i < Count; i++)
        {
            Planar p = points[i].Point - section.ShearCentre;
            (y[i], z[i], area[i]) = (p.Y, p.Z, points[i].Area);
            r[i] = wagner ? p.Dot(p) : 0;
        }
        residual = BalancedResidual(section, points, strut.ResidualPeak, Padded);
        for (int i = 0; i < Count; i++)
        {
            double a = area[i];
            a0 += a;
            aY += a * y[i];
            aZ += a * z[i];
            aR += a * r[i];
            aYY += a * y[i] * y[i];
            aYZ += a * y[i] * z[i];
            aZZ += a * z[i] * z[i];
            aYR += a * y[i] * r[i];
            aZR += a * z[i] * r[i];
            aRR += a * r[i] * r[i];
            residualR += a * r[i] * residual[i];
        }
    }

    /// <summary>Number of fibres.</summary>
    internal int Count { get; }

    /// <summary>Fibres rounded up to whole vectors; the extra ones have no area.</summary>
    internal int Padded { get; }

    /// <summary>Position of a fibre from the shear centre, mm.</summary>
    internal Planar Position(int fibre) => new(y[fibre], z[fibre]);

    internal double Area(int fibre) => area[fibre];

    internal double Residual(int fibre) => residual[fibre];

    internal double TotalArea => a0;

    /// <summary>
    /// Stress resultants and consistent tangent. Start from the elastic section in closed form, then take off what plastic strain removes;
    /// fibres without plastic strain cost one comparison.
    /// </summary>
    /// <param name="strain">(e, k1, k2, τ), initial values already taken off.</param>
    /// <param name="old">Plastic strains at the last accepted state, one per padded fibre.</param>
    /// <param name="now">Receives the plastic strains of this state.</param>
    internal SectionState Respond(in StrainMeasures strain, ReadOnlySpan<double> old, Span<double> now)
    {
        double half = 0.5 * strain.Tau * strain.Tau, flow = 1 / (modulus + hardening);
        var (e, k1, k2, h) = (new Vector<double>(strain.E), new Vector<double>(strain.K1), new Vector<double>(strain.K2), new Vector<double>(half));
        var (young, back) = (new Vector<double>(modulus), new Vector<double>(modulus + hardening));
        var (upper, lower) = (new Vector<double>(yield), new Vector<double>(-yield));
        Vector<double> p0 = default, pY = default, pZ = default, pR = default;
        Vector<double> g0 = default, gY = default, gZ = default, gR = default;
        Vector<double> gYY = default, gYZ = default, gZZ = default, gYR = default, gZR = default, gRR = default;
        for (int i = 0; i < Padded; i += Vector<double>.Count)
        {
            var (vy, vz, vr) = (new Vector<double>(y, i), new Vector<double>(z, i), new Vector<double>(r, i));
            var plastic = new Vector<double>(old[i..]);
            // Stress minus back stress if nothing flowed in this step.
            Vector<double> trial = young * (e - vy * k1 - vz * k2 + h * vr) + new Vector<double>(residual, i) - back * plastic;
            Vector<double> excess = trial - Vector.Min(Vector.Max(trial, lower), upper);
            if (excess == Vector<double>.Zero && plastic == Vector<double>.Zero)
            {
                Vector<double>.Zero.CopyTo(now[i..]);
                continue;
            }
            plastic += excess * flow;
            plastic.CopyTo(now[i..]);
            var va = new Vector<double>(area, i);
            Vector<double> ap = va * plastic;
            p0 += ap;
            pY += ap * vy;
            pZ += ap * vz;
            pR += ap * vr;
            Vector<double> active = Vector.ConditionalSelect(Vector.Equals(excess, Vector<double>.Zero), Vector<double>.Zero, va);
            Vector<double> ay = active * vy, az = active * vz, ar = active * vr;
            g0 += active;
            gY += ay;
            gZ += az;
            gR += ar;
            gYY += ay * vy;
            gYZ += ay * vz;
            gZZ += az * vz;
            gYR += ay * vr;
            gZR += az * vr;
            gRR += ar * vr;
        }
        // While a fibre flows its modulus is EH/(E + H): the share E/(E + H) is lost.
        double lost = modulus * flow, tau = strain.Tau;
        double sum0 = modulus * (a0 * strain.E - aY * strain.K1 - aZ * strain.K2 + aR * half - Vector.Sum(p0));
        double sumY = modulus * (aY * strain.E - aYY * strain.K1 - aYZ * strain.K2 + aYR * half - Vector.Sum(pY));
        double sumZ = modulus * (aZ * strain.E - aYZ * strain.K1 - aZZ * strain.K2 + aZR * half - Vector.Sum(pZ));
        double sumR = modulus * (aR * strain.E - aYR * strain.K1 - aZR * strain.K2 + aRR * half - Vector.Sum(pR)) + residualR;
        return new SectionState
        {
            S0 = sum0,
            S1 = -sumY,
            S2 = -sumZ,
            S3 = torsional * tau + tau * sumR,
            D00 = modulus * (a0 - lost * Vector.Sum(g0)),
            D01 = -modulus * (aY - lost * Vector.Sum(gY)),
            D02 = -modulus * (aZ - lost * Vector.Sum(gZ)),
            D03 = modulus * tau * (aR - lost * Vector.Sum(gR)),
            D11 = modulus * (aYY - lost * Vector.Sum(gYY)),
            D12 = modulus * (aYZ - lost * Vector.Sum(gYZ)),
            D13 = -modulus * tau * (aYR - lost * Vector.Sum(gYR)),
            D22 = modulus * (aZZ - lost * Vector.Sum(gZZ)),
            D23 = -modulus * tau * (aZR - lost * Vector.Sum(gZR)),
            D33 = modulus * tau * tau * (aRR - lost * Vector.Sum(gRR)) + torsional + sumR,
        };
    }

    /// <summary>2 × 2 Gauss points in every cell: all second moments of a rectangle come out exactly.</summary>
    private static List<(Planar Point, double Area)> Points(ReferenceSection section, RodMesh mesh)
    {
        double[] offsets = [-0.5 / Math.Sqrt(3), 0.5 / Math.Sqrt(3)];
        var points = new List<(Planar, double)>();
        foreach (SectionRectangle part in section.Rectangles)
        {
            (int ny, int nz) = part.Cells(mesh.CellsAlong, mesh.CellsThrough);
            double dy = part.Width / ny, dz = part.Height / nz;
            for (int i = 0; i < ny; i++)
            {
                for (int k = 0; k < nz; k++)
                {
                    foreach (double py in offsets)
                    {
                        foreach (double pz in offsets)
                        {
                            points.Add((new Planar(part.YMin + (i + 0.5 + py) * dy, part.ZMin + (k + 0.5 + pz) * dz), dy * dz / 4));
                        }
                    }
                }
            }
        }
        return points;
    }

    /// <summary>
    /// The residual pattern less its least-squares plane on the fibres in use, so that force and both moments vanish on this very grid.
    /// </summary>
    private static double[] BalancedResidual(ReferenceSection section, List<(Planar Point, double Area)> points, double peak, int padded)
    {
        double[] stress = new double[padded];
        if (peak == 0)
        {
            return stress;
        }
        double force = 0, momentY = 0, momentZ = 0;
        for (int i = 0; i < points.Count; i++)
        {
            (Planar point, double a) = points[i];
            Planar d = point - section.Centroid;
            stress[i] = peak * section.ResidualPattern(point);
            force += a * stress[i];
            momentY += a * stress[i] * d.Y;
            momentZ += a * stress[i] * d.Z;
        }
        double determinant = section.Iy * section.Iz - section.Iyz * section.Iyz;
        double slopeY = (section.Iy * momentY - section.Iyz * momentZ) / determinant;
        double slopeZ = (section.Iz * momentZ - section.Iyz * momentY) / determinant;
        for (int i = 0; i < points.Count; i++)
        {
            Planar d = points[i].Point - section.Centroid;
            stress[i] -= force / section.Area + slopeY * d.Y + slopeZ * d.Z;
        }
        return stress;
    }
}
