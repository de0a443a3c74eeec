namespace StrutLessons.Joints;

/// <summary>A joint by hand formula and by plate analysis of the same geometry. Immutable.</summary>
public sealed record JointComparison : IWorked
{
    internal JointComparison(JointHinge hand, JointByPlates plate)
    {
        Hand = hand;
        Plate = plate;
        Parts = [.. hand.Contributions.Zip(plate.Contributions, (h, p) => new PartComparison(h.Name, h, p))];
    }

    /// <summary>By hand; its notes say where a formula is outside its range.</summary>
    public JointHinge Hand { get; }

    /// <summary>By plate analysis.</summary>
    public JointByPlates Plate { get; }

    /// <summary>Part by part, in the order of the series.</summary>
    public IReadOnlyList<PartComparison> Parts { get; }

    /// <summary>Stiffness by hand over stiffness by plates, whether or not the bolts can transfer a moment: above 1 the hand formula is too stiff.</summary>
    public double StiffnessRatio => Plate.Hinge.Compliance / Hand.Compliance;

    /// <summary>s_h by hand over s_h by plates.</summary>
    public double HingeDistanceRatio => Hand.ElasticCentre / Plate.Hinge.ElasticCentre;

    /// <summary>The parts, the whole, the place of the hinge: by hand, by plates, ratio.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        var steps = new List<WorkedStep>();
        for (int i = 0; i < Parts.Count; i++)
        {
            PartComparison p = Parts[i];
            steps.Add(new($"Compliance of the {p.Name} by hand", $"f_{{{i + 1},h}}", "", "", p.Hand.Compliance * 1e9, "mrad/kNm", p.Hand.Source));
            steps.Add(new($"Compliance of the {p.Name} by plates", $"f_{{{i + 1},p}}", "", "", p.Plate.Compliance * 1e9, "mrad/kNm", p.Plate.Source));
        }

        const string ratio = "ratio of both ways; above 1 the hand formula is too stiff";
        steps.Add(new("The whole joint by hand", "f_h", "", "", Hand.Compliance * 1e9, "mrad/kNm", "springs in series"));
        steps.Add(new("The whole joint by plates", "f_p", "", "", Plate.Hinge.Compliance * 1e9, "mrad/kNm", "springs in series"));
        steps.Add(new("Stiffness by hand over stiffness by plates", "c_h/c_p", @"\frac{f_p}{f_h}",
            $@"\frac{{{Tex.Number(Plate.Hinge.Compliance * 1e9)}}}{{{Tex.Number(Hand.Compliance * 1e9)}}}", StiffnessRatio, "", ratio));
        steps.Add(new("Place of the hinge, hand over plates", "s_{h,h}/s_{h,p}", @"\frac{s_{h,h}}{s_{h,p}}",
            $@"\frac{{{Tex.Number(Hand.ElasticCentre)}}}{{{Tex.Number(Plate.Hinge.ElasticCentre)}}}", HingeDistanceRatio, "", "ratio of both ways"));
        return steps;
    }
}
