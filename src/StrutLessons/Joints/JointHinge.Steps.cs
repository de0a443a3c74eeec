namespace StrutLessons.Joints;

public sealed partial record JointHinge : IWorked
{
    /// <summary>The parts, their sum, the spring and where it sits; stiffness in kNm/rad, compliance in mrad/kNm.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        // 1 rad/(N mm) = 1e9 mrad/kNm, 1 N mm/rad = 1e-6 kNm/rad.
        var steps = new List<WorkedStep>();
        for (int i = 0; i < Contributions.Count; i++)
        {
            JointContribution c = Contributions[i];
            steps.Add(new($"Compliance of the {c.Name}", $"f_{{{i + 1}}}", "", "", c.Compliance * 1e9, "mrad/kNm", c.Source));
            steps.Add(new($"The {c.Name} turns about a point this far from the first bolt", $"d_{{{i + 1}}}", "", "", c.HingeDistance, "mm", c.Source));
        }

        string List(Func<JointContribution, string> term) => string.Join(" + ", Contributions.Select(term));
        steps.Add(new("Parts in series: compliances add, stiffnesses do not", "f", @"\sum f_i",
            List(c => Tex.Number(c.Compliance * 1e9)), Compliance * 1e9, "mrad/kNm", "springs in series"));
        steps.Add(new("Elastic centre: a moment turns the whole joint about this point", "s_h", @"\frac{\sum f_i d_i}{\sum f_i}",
            $@"\frac{{{List(c => $@"{Tex.Number(c.Compliance * 1e9)} \cdot {Tex.Number(c.HingeDistance)}")}}}{{{Tex.Number(Compliance * 1e9)}}}",
            ElasticCentre, "mm", "springs in series"));
        steps.Add(BoltCount == 1
            ? new("One bolt is a pin: no spring out of the plane", "c", "", "", 0, "kNm/rad", "definition")
            : new("Spring out of the plane of the gusset", "c", @"\frac{1}{f}", $@"\frac{{1000}}{{{Tex.Number(Compliance * 1e9)}}}",
                OutOfPlaneStiffness * 1e-6, "kNm/rad", "definition"));
        steps.Add(new("Rigid arm from the first bolt to the hinge, as used", "s_h", "", "", HingeDistance, "mm", "choice of the spring's place"));
        steps.Add(new(InPlaneStiffness > 0 ? "Two or more bolts: rigid in the plane of the gusset" : "Free to turn in the plane of the gusset",
            "c_y", "", "", InPlaneStiffness, "kNm/rad", "common practice"));
        if (ImposedRotationPerNewton != 0)
        {
            steps.Add(new("Rotation that the compression itself imposes", @"\theta_0/N", "", "", ImposedRotationPerNewton * 1e6, "mrad/kN", "see the joint's own steps"));
        }

        return steps;
    }
}
