using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>Displacements at mid-length and corner stresses of a linearised solution, at the nodes and the middles of the elements.</summary>
internal sealed class RollReader
{
    private readonly RollModel model;
    private readonly FlexureModel flexure;
    private readonly double[] plainV, plainW, rolledV, rolledW, ends;

    internal RollReader(RollModel model)
    {
        this.model = model;
        flexure = model.Flexure;
        int places = 2 * flexure.Elements + 1;
        (plainV, plainW, rolledV, rolledW) = (new double[places], new double[places], new double[places], new double[places]);
        ends = new double[2 * flexure.Elements];
    }

    internal ElasticState Read(double load, bool roll)
    {
        double[] d = roll ? model.Solution : flexure.Solution;
        int elements = flexure.Elements, middle = elements / 2 * FlexureModel.PerNode;
        var axis = new Planar(d[middle], d[middle + 2]);
        double phi = d[middle + 4];
        var centroid = new Planar(axis.Y - phi * flexure.Arm.Z, axis.Z + phi * flexure.Arm.Y);
        Curvatures(flexure.Solution, 0, plainV);
        Curvatures(flexure.Solution, 2, plainW);
        Curvatures(d, 0, rolledV);
        Curvatures(d, 2, rolledW);
        ReferenceSection section = flexure.Strut.Section;
        double compression = double.NegativeInfinity, tension = compression, compressionAt = 0, tensionAt = 0;
        for (int place = 0; place <= 2 * elements; place++)
        {
            double x = 0.5 * place * flexure.Element.Length, turn = roll ? RollAt(place) : 0;
            Planar bow = flexure.BowCurvature(x);
            // k1 = v'' + φ p2, k2 = w'' − φ p1: the rolled section sees the bent axis from a turned position.
            var k = new Planar(rolledV[place] + turn * (plainW[place] + bow.Z), rolledW[place] - turn * (plainV[place] + bow.Y));
            foreach (Planar corner in section.Corners)
            {
                double stress = load / section.Area + flexure.Young * k.Dot(corner - section.Centroid);
                if (stress > compression)
                {
                    (compression, compressionAt) = (stress, x);
                }
                if (-stress > tension)
                {
                    (tension, tensionAt) = (-stress, x);
                }
            }
        }
        return new ElasticState(load, axis, centroid, phi, compression, compressionAt, tension, tensionAt);
    }

    /// <summary>
    /// Curvatures at nodes and middles (index in half elements). Inside an element the interpolated curvature is a straight line: it misses l²/12 of the
    /// fourth derivative at the ends and has l²/24 of it too much in the middle. The jump of the third derivative between elements gives the fourth.
    /// </summary>
    private void Curvatures(double[] d, int field, double[] into)
    {
        int elements = flexure.Elements;
        double l = flexure.Element.Length;
        Vector256<double> atStart = HermiteElement.SecondAt(0, l), atEnd = HermiteElement.SecondAt(1, l);
        for (int e = 0; e < elements; e++)
        {
            Vector256<double> values = FlexureModel.Field(d, e, field);
            (ends[2 * e], ends[2 * e + 1]) = (Vector256.Dot(atStart, values), Vector256.Dot(atEnd, values));
        }
        for (int node = 0; node <= elements; node++)
        {
            double left = node > 0 ? ends[2 * node - 1] : ends[0], right = node < elements ? ends[2 * node] : left;
            into[2 * node] = 0.5 * (left + right) + FourthTimesSquare(node) / 12;
        }
        for (int e = 0; e < elements; e++)
        {
            into[2 * e + 1] = 0.5 * (ends[2 * e] + ends[2 * e + 1]) - (FourthTimesSquare(e) + FourthTimesSquare(e + 1)) / 48;
        }
    }

    /// <summary>Fourth derivative times l² at a node; at the ends that of the nearest inner node.</summary>
    private double FourthTimesSquare(int node)
    {
        int inner = Math.Clamp(node, 1, flexure.Elements - 1);
        return ends[2 * inner + 1] - ends[2 * inner] - (ends[2 * inner - 1] - ends[2 * inner - 2]);
    }

    /// <summary>Roll at a place in half elements; it is held at both ends.</summary>
    private double RollAt(int place) => place == 2 * flexure.Elements
        ? 0
        : Vector256.Dot(HermiteElement.ValueAt(place % 2 / 2.0, flexure.Element.Length), FlexureModel.Field(model.Solution, place / 2, 4));
}
