namespace StrutLessons.Standards;

/// <summary>One point of a rule's curve.</summary>
/// <param name="Length">System length, mm.</param>
/// <param name="RelativeSlenderness">λ̄_v on the system length.</param>
/// <param name="Nominal">Nominal resistance, N.</param>
/// <param name="Design">Design resistance, N.</param>
public readonly record struct StandardCurvePoint(double Length, double RelativeSlenderness, double Nominal, double Design);

/// <summary>A rule along the slenderness; the curve ends where the rule refuses.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Points">In the order of growing slenderness; empty if the rule refuses from the start.</param>
/// <param name="Refusal">Why the curve ends before the end of the range, or has no point; null if it does not end.</param>
public sealed record StandardCurve(StandardRule Rule, IReadOnlyList<StandardCurvePoint> Points, string? Refusal)
{
    /// <summary>Largest slenderness that the rule accepts; null if the curve is empty or runs through the whole range.</summary>
    public double? EndSlenderness => Refusal is not null && Points.Count > 0 ? Points[^1].RelativeSlenderness : null;

    /// <summary>The curve of a rule.</summary>
    internal static StandardCurve Of(RuleChoice rule, StandardStrut strut, double lengthPerSlenderness, IReadOnlyList<double> slendernesses)
    {
        var points = new List<StandardCurvePoint>(slendernesses.Count);
        StandardResult result = At(slendernesses[0]);
        foreach (double slenderness in slendernesses)
        {
            result = At(slenderness);
            if (result.InScope)
            {
                points.Add(Point(slenderness, result));
                continue;
            }

            if (points.Count > 0)
            {
                double end = LastAccepted(points[^1].RelativeSlenderness, slenderness);
                points.Add(Point(end, At(end)));
            }

            break;
        }

        return new(result.Rule, points, result.Refusal);

        StandardResult At(double slenderness) => rule.Apply(strut.WithLength(slenderness * lengthPerSlenderness));

        StandardCurvePoint Point(double slenderness, StandardResult r) =>
            new(slenderness * lengthPerSlenderness, slenderness, r.NominalResistance!.Value, r.DesignResistance!.Value);

        double LastAccepted(double accepted, double refused)
        {
            while (refused - accepted > 1e-9 * refused)
            {
                double middle = 0.5 * (accepted + refused);
                (accepted, refused) = At(middle).InScope ? (middle, refused) : (accepted, middle);
            }

            return accepted;
        }
    }
}
