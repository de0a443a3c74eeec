namespace StrutLessons.Nonlinear;

/// <summary>The reference rod without yielding and without residual stress, loaded to given loads: exact large displacements and twist.</summary>
public static class ElasticRod
{
    /// <summary>Places per element where corner stress is looked at: both ends and three between.</summary>
    private const int Looks = 4;

    /// <summary>States at given loads, in the given order; start with small ones.</summary>
    /// <param name="strut">The strut; yield strength and residual stress are ignored.</param>
    /// <param name="loads">Compressive loads in rising order, N.</param>
    /// <param name="elements">Elements along the strut; even.</param>
    /// <param name="twist">False holds the roll at zero.</param>
    /// <exception cref="InputException">A load is not positive, loads do not rise, or no stable equilibrium exists at a load.</exception>
    public static IReadOnlyList<ElasticState> StatesAt(ReferenceStrut strut, IReadOnlyList<double> loads, int elements = 32, bool twist = true)
    {
        ArgumentNullException.ThrowIfNull(strut);
        ArgumentNullException.ThrowIfNull(loads);
        (RodModel model, PathFollower follower) = Start(strut, elements, twist);
        var states = new List<ElasticState>(loads.Count);
        foreach (double load in loads)
        {
            Guard.Positive(load, "load", "N", "Compression is positive.");
            if (load <= follower.Last.Load)
            {
                throw Guard.Fail(load, "load", "N", $"greater than the one before ({Guard.Text(follower.Last.Load)} N)", "Sort the loads.");
            }
            if (!Reach(follower, load, (load - follower.Last.Load) / 4))
            {
                throw Guard.Fail(load, "load", "N", "one that the elastic strut can carry in stable equilibrium", "Lower it.");
            }
            states.Add(Read(model, follower.Last));
        }
        return states;
    }

    /// <summary>The smallest load at which an elastic corner stress reaches the yield strength; null if the strut becomes unstable before.</summary>
    /// <param name="strut">The strut; residual stress is ignored.</param>
    /// <param name="elements">Elements along the strut; even.</param>
    /// <param name="twist">False holds the roll at zero.</param>
    public static ElasticState? FirstYield(ReferenceStrut strut, int elements = 32, bool twist = true)
    {
        ArgumentNullException.ThrowIfNull(strut);
        (RodModel model, PathFollower follower) = Start(strut, elements, twist);
        double yield = strut.Steel.YieldStrength, step = 0.05 * follower.ReferenceLoad, smallest = 1e-6 * follower.ReferenceLoad;
        ElasticState last = Read(model, follower.Last);
        while (true)
        {
            if (!follower.TryLoad(last.Load + step))
            {
                step *= 0.4;
                if (step < smallest)
                {
                    return null;
                }
                continue;
            }
            ElasticState next = Read(model, follower.Found);
            double gap = next.LargestStress / yield - 1;
            if (Math.Abs(gap) < 1e-9)
            {
                return next;
            }
            if (gap < 0)
            {
                follower.Accept();
                // The stress grows faster than the load: the secant overshoots a little at most.
                double secant = (yield - next.LargestStress) * step / (next.LargestStress - last.LargestStress);
                last = next;
                step = Math.Clamp(secant, smallest / 10, 2 * step);
            }
            else
            {
                step *= Math.Clamp((yield - last.LargestStress) / (next.LargestStress - last.LargestStress), 0.05, 0.999);
            }
        }
    }

    private static (RodModel Model, PathFollower Follower) Start(ReferenceStrut strut, int elements, bool twist)
    {
        ReferenceSteel steel = strut.Steel;
        var elastic = new ReferenceStrut(
            strut.Section, new ReferenceSteel(steel.ElasticModulus, steel.ShearModulus, double.PositiveInfinity), strut.Length, strut.Bow, 0, strut.End1, strut.End2);
        var model = new RodModel(elastic, new RodMesh(elements, 4, 8, 1), twist, true);
        return (model, new PathFollower(model));
    }

    private static bool Reach(PathFollower follower, double load, double step)
    {
        double smallest = step * 1e-4;
        while (follower.Last.Load < load)
        {
            double next = follower.Last.Load + step >= load * (1 - 1e-9) ? load : follower.Last.Load + step;
            if (follower.TryLoad(next))
            {
                follower.Accept();
            }
            else if ((step *= 0.4) < smallest)
            {
                return false;
            }
        }
        return true;
    }

    private static ElasticState Read(RodModel model, PathState state)
    {
        ReferenceSection section = model.Strut.Section;
        double modulus = model.Strut.Steel.ElasticModulus, compressionAt = 0, tensionAt = 0;
        double compression = double.NegativeInfinity, tension = double.NegativeInfinity;
        for (int i = 0; i <= Looks * model.Elements; i++)
        {
            int element = Math.Min(i / Looks, model.Elements - 1);
            RodPlace place = model.Place(element, i / (double)Looks - element, state.D);
            foreach (Planar corner in section.Corners)
            {
                double stress = modulus * place.Strain.At(corner - section.ShearCentre, model.Wagner);
                if (-stress > compression)
                {
                    (compression, compressionAt) = (-stress, place.X);
                }
                if (stress > tension)
                {
                    (tension, tensionAt) = (stress, place.X);
                }
            }
        }
        RodPlace middle = model.Place(model.Elements / 2, 0, state.D);
        return new ElasticState(state.Load, middle.ShearCentre, middle.Centroid, middle.Roll, compression, compressionAt, tension, tensionAt);
    }
}
