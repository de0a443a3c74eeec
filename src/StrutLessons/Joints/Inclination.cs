namespace StrutLessons.Joints;

/// <summary>The rule for a strut that meets the girder at an angle, with its derivation.</summary>
internal static class Inclination
{
    /// <summary>sin²α, exactly 1 for a square gusset.</summary>
    internal static double Factor(Gusset gusset) => gusset.IsSquare ? 1 : Math.Pow(Math.Sin(gusset.Inclination), 2);

    /// <summary>sin α, exactly 1 for a square gusset.</summary>
    internal static double Sine(Gusset gusset) => gusset.IsSquare ? 1 : Math.Sin(gusset.Inclination);

    /// <summary>Why the girder's compliances count with sin²α: one sine for the moment, one for the rotation.</summary>
    internal static IEnumerable<WorkedStep> Steps(Gusset gusset)
    {
        if (gusset.IsSquare)
        {
            yield break;
        }

        string alpha = Tex.Number(gusset.InclinationDegrees) + @"^\circ";
        double sine = Sine(gusset);
        const string source = "components of a moment and of a small rotation as vectors; the part M cos α bends the flanges in plan and is left out";
        yield return new("Of a moment M of the strut, this part turns the girder about its axis", @"M_x/M", @"\sin\alpha", $@"\sin {alpha}", sine, "", source);
        yield return new("Of a twist φ of the girder, this part turns the strut in its own plane", @"\theta/\varphi", @"\sin\alpha", $@"\sin {alpha}", sine, "", source);
        yield return new("So a compliance f of the girder counts for the strut with", @"\theta/(f M)", @"\sin^2\alpha", $@"\sin^2 {alpha}", Factor(gusset), "", source);
    }
}
