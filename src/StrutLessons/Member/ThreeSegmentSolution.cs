namespace StrutLessons.Member;

/// <summary>The three segments under one load: movements of the bolts and the deflected line, out of the plane of the gussets. Immutable.</summary>
public sealed class ThreeSegmentSolution : IWorked
{
    private readonly PlaneShape[] shapes;

    internal ThreeSegmentSolution(ThreeSegmentStrut model, double load)
    {
        Model = model;
        Load = load;
        int count = model.Planes.Count;
        var axes = new AxisFunctions<Lane1>[count];
        var bows = new BowFunctions<Lane1>[count];
        double length = model.BarLength, bowMoment = 0;
        for (int i = 0; i < count; i++)
        {
            PlaneBar plane = model.Planes[i];
            axes[i] = new(new Lane1(load / (Math.PI * Math.PI * plane.BendingStiffness / (length * length))));
            bows[i] = new(axes[i]);
            // End moment of the clamped, bowed bar, as in EndRotations.
            bowMoment -= plane.Direction * 2 * Math.PI / (length * length) * plane.BendingStiffness * plane.Bow * bows[i].Moment.Value;
        }

        var right = new Four<Lane1>(new(0), new(-load * model.Eccentricity1 - bowMoment), new(0), new(load * model.Eccentricity2 + bowMoment));
        Four<Lane1> x = model.Whole(load).Factor().Solve(right);
        (DeflectionBolt1, SlopeBolt1, DeflectionBolt2, SlopeBolt2) = (x.Y1.Value, x.Z1.Value, x.Y2.Value, x.Z2.Value);
        double chord = (DeflectionBolt2 - DeflectionBolt1) / length;
        shapes = new PlaneShape[count];
        for (int i = 0; i < count; i++)
        {
            double part = model.Planes[i].Direction;
            var ends = new PlaneRotations<Lane1>(
                new(part * 0.5 * (SlopeBolt1 - SlopeBolt2)), new(part * (0.5 * (SlopeBolt1 + SlopeBolt2) - chord)), new(part * chord));
            shapes[i] = new(axes[i], bows[i], ends, length, model.Planes[i].Bow, part * DeflectionBolt1);
        }
    }

    /// <summary>The model.</summary>
    public ThreeSegmentStrut Model { get; }

    /// <summary>N, compression positive, N.</summary>
    public double Load { get; }

    /// <summary>Deflection of the first bolt of end 1, mm.</summary>
    public double DeflectionBolt1 { get; }

    /// <summary>Slope there, rad.</summary>
    public double SlopeBolt1 { get; }

    /// <summary>Deflection of the first bolt of end 2, mm.</summary>
    public double DeflectionBolt2 { get; }

    /// <summary>Slope there, rad.</summary>
    public double SlopeBolt2 { get; }

    /// <summary>Length from weld to weld, mm.</summary>
    public double Length => Model.Gusset1.Length + Model.BarLength + Model.Gusset2.Length;

    /// <summary>Additional deflection out of the plane of the gussets, mm.</summary>
    /// <param name="x">Place from the weld of end 1, mm.</param>
    /// <exception cref="InputException">Outside the three segments.</exception>
    public double Deflection(double x)
    {
        double slack = 1e-9 * Length;
        Guard.Within(x, -slack, Length + slack, "place x", "mm", "x runs from the weld of end 1 to the weld of end 2.");
        double first = Model.Gusset1.Length, second = first + Model.BarLength;
        if (x < first)
        {
            return InGusset(Model.Gusset1, Math.Max(x, 0), DeflectionBolt1, SlopeBolt1);
        }

        if (x > second)
        {
            return InGusset(Model.Gusset2, Math.Max(Length - x, 0), DeflectionBolt2, -SlopeBolt2);
        }

        double eta = Math.Clamp(2 * (x - first) / Model.BarLength - 1, -1, 1), w = 0;
        for (int i = 0; i < shapes.Length; i++)
        {
            w += Model.Planes[i].Direction * shapes[i].Deflection(eta);
        }

        return w;
    }

    /// <summary>Critical load, movements of the bolts, middle.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string theory = "stability functions of three column segments (Livesley and Chandler, 1956, from memory)";
        return
        [
            new("Load", "N", "", "", Load / 1e3, "kN", "given"),
            new("Critical load of gusset, angle, gusset", "N_{cr}", @"\det K(N) = 0", "", Model.CriticalLoad / 1e3, "kN", theory),
            new("Deflection of the first bolt of end 1", "w_1", "K u = f", "", DeflectionBolt1, "mm", theory),
            new("Slope of the first bolt of end 1", @"\theta_1", "K u = f", "", SlopeBolt1 * 1e3, "mrad", theory),
            new("Deflection of the first bolt of end 2", "w_2", "K u = f", "", DeflectionBolt2, "mm", theory),
            new("Slope of the first bolt of end 2", @"\theta_2", "K u = f", "", SlopeBolt2 * 1e3, "mrad", theory),
            new("Deflection in the middle of the bar", "w_m", "", "", Deflection(Model.Gusset1.Length + Model.BarLength / 2), "mm", theory),
        ];
    }

    /// <summary>Clamped at the weld: w = A (1 − cos ks) + B (ks − sin ks), through deflection and slope of the bolt.</summary>
    private double InGusset(GussetSegment gusset, double s, double deflection, double slope)
    {
        double k = Math.Sqrt(Load / gusset.BendingStiffness), kg = k * gusset.Length;
        if (kg < 1e-2)
        {
            // The cubic of an unloaded strip; the load's share is below (kg)²/30.
            double r = s / gusset.Length;
            return r * r * ((3 - 2 * r) * deflection + (r - 1) * slope * gusset.Length);
        }

        double a11 = 1 - Math.Cos(kg), a12 = kg - Math.Sin(kg), a21 = k * Math.Sin(kg), a22 = k * (1 - Math.Cos(kg));
        double determinant = a11 * a22 - a12 * a21;
        double a = (deflection * a22 - a12 * slope) / determinant, b = (a11 * slope - a21 * deflection) / determinant;
        return a * (1 - Math.Cos(k * s)) + b * (k * s - Math.Sin(k * s));
    }
}
