namespace StrutLessons.Nonlinear;

/// <summary>
/// What acts at one end of the rod: two rotation springs, the rigid arm to the load point, and the rigid arm to the joint's hinge.
/// Local variables: 0–2 are q = r' at the end, 3–5 are the displacements u, v, w of the end section.
/// </summary>
internal sealed class RodEnd
{
    private readonly double side, arm, springIn, springOut, hold, startIn, startOut;
    private readonly double[] tangent0 = new double[3], load = new double[3];

    /// <summary>Gradient and second derivatives (rows) of the energy of springs and hinge at the last call.</summary>
    internal readonly double[] Force = new double[6], Stiffness = new double[36];

    /// <summary>Gradient and second derivatives of this end's part of the shortening at the last call.</summary>
    internal readonly double[] ShorteningForce = new double[6], ShorteningCurvature = new double[9];

    /// <param name="strut">The strut.</param>
    /// <param name="end">This end.</param>
    /// <param name="first">True at x = 0.</param>
    /// <param name="slope0">Slope of the bow at this end.</param>
    internal RodEnd(ReferenceStrut strut, ReferenceEnd end, bool first, Planar slope0)
    {
        side = first ? 1 : -1;
        arm = end.Arm;
        double bending = strut.Steel.ElasticModulus * strut.Section.Iu / strut.Length;
        // A fixed rotation is a spring on the tangent's angle, a million times stiffer than the strut. Fixing the slope v' instead would
        // let axial strain turn the tangent of a bowed strut.
        springIn = Math.Min(end.InPlaneSpring, 1e6 * bending);
        springOut = Math.Min(end.OutOfPlaneSpring, 1e6 * bending);
        hold = 12e6 * bending / (strut.Length * strut.Length);
        (startIn, startOut) = (Math.Atan(slope0.Y), Math.Atan(slope0.Z));
        double length = Math.Sqrt(1 + slope0.Dot(slope0));
        (tangent0[0], tangent0[1], tangent0[2]) = (1 / length, slope0.Y / length, slope0.Z / length);
        Planar fromShearCentre = strut.Section.Centroid - strut.Section.ShearCentre + end.LoadPoint;
        // Shortening of this end: side·(u − Y t_y − Z t_z) − arm·(t·t0). The last part is the arm's own loss of length along x.
        load[0] = -arm * tangent0[0];
        load[1] = -side * fromShearCentre.Y - arm * tangent0[1];
        load[2] = -side * fromShearCentre.Z - arm * tangent0[2];
    }

    /// <summary>True if the end section itself is held sideways; false if the hinge at the end of an arm is held.</summary>
    internal bool HeldDirectly => arm == 0;

    /// <summary>This end's part of the shortening between the load points, mm, up to a constant.</summary>
    internal double Shortening(ReadOnlySpan<double> state)
    {
        double inverse = 1 / Math.Sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]);
        return side * state[3] + inverse * (load[0] * state[0] + load[1] * state[1] + load[2] * state[2]);
    }

    internal void Evaluate(ReadOnlySpan<double> state)
    {
        Array.Clear(Force);
        Array.Clear(Stiffness);
        Array.Clear(ShorteningForce);
        Array.Clear(ShorteningCurvature);
        ShorteningForce[3] = side;
        AddProjection(load[0], load[1], load[2], state, ShorteningForce, ShorteningCurvature);
        AddSpring(springIn, startIn, 1, state);
        AddSpring(springOut, startOut, 2, state);
        if (!HeldDirectly)
        {
            AddHinge(1, state);
            AddHinge(2, state);
        }
    }

    /// <summary>½ k (θ − θ0)², θ = atan2(q_c, q_x): the angle of the tangent in one plane.</summary>
    private void AddSpring(double k, double start, int c, ReadOnlySpan<double> state)
    {
        double x = state[0], y = state[c], square = x * x + y * y, angle = Math.Atan2(y, x) - start;
        double dx = -y / square, dy = x / square, xx = 2 * x * y / (square * square), xy = (y * y - x * x) / (square * square);
        Force[0] += k * angle * dx;
        Force[c] += k * angle * dy;
        Stiffness[0] += k * (dx * dx + angle * xx);
        Stiffness[c] += k * (dx * dy + angle * xy);
        Stiffness[6 * c] += k * (dx * dy + angle * xy);
        Stiffness[7 * c] += k * (dy * dy - angle * xx);
    }

    /// <summary>Holds the hinge sideways: ½ k g² with g = v − side·arm·(t_y − t0_y), likewise for w.</summary>
    private void AddHinge(int c, ReadOnlySpan<double> state)
    {
        double inverse = 1 / Math.Sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]);
        double gap = state[3 + c] - side * arm * (state[c] * inverse - tangent0[c]);
        Span<double> gradient = stackalloc double[6], curvature = stackalloc double[9];
        gradient.Clear();
        curvature.Clear();
        gradient[3 + c] = 1;
        double factor = -side * arm;
        AddProjection(0, c == 1 ? factor : 0, c == 2 ? factor : 0, state, gradient, curvature);
        for (int i = 0; i < 6; i++)
        {
            Force[i] += hold * gap * gradient[i];
            for (int k = 0; k < 6; k++)
            {
                Stiffness[6 * i + k] += hold * (gradient[i] * gradient[k] + (i < 3 && k < 3 ? gap * curvature[3 * i + k] : 0));
            }
        }
    }

    /// <summary>Adds gradient and second derivatives of c·t, t = q/|q|.</summary>
    private static void AddProjection(
        double cx, double cy, double cz, ReadOnlySpan<double> state, Span<double> gradient, Span<double> curvature)
    {
        ReadOnlySpan<double> c = [cx, cy, cz];
        double alpha = 1 / Math.Sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]), a3 = alpha * alpha * alpha;
        double cq = cx * state[0] + cy * state[1] + cz * state[2];
        for (int i = 0; i < 3; i++)
        {
            gradient[i] += alpha * c[i] - a3 * cq * state[i];
            for (int k = 0; k < 3; k++)
            {
                double unit = i == k ? -a3 * cq : 0;
                curvature[3 * i + k] +=
                    unit - a3 * (c[i] * state[k] + c[k] * state[i]) + 3 * a3 * alpha * alpha * cq * state[i] * state[k];
            }
        }
    }
}
