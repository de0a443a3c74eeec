using System.Text.Json;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Tests;

/// <summary>Turns a reference case into the library's own types.</summary>
internal static class StrutCaseModel
{
    internal static Strut ToStrut(this StrutCase c)
    {
        AngleSection section = c.Section();
        return new Strut(section, Steel.Custom("given", c.In("f_y"), c.In("E")), c.In("L"),
            new StrutEnd(new Planar(c.In("y_e1"), c.In("z_e1")), new EndSpring(c.Spring("k_in1"), c.Spring("k_out1"))),
            new StrutEnd(new Planar(c.In("y_e2"), c.In("z_e2")), new EndSpring(c.Spring("k_in2"), c.Spring("k_out2"))),
            [c.GivenBow(section)]);
    }

    private static Bow GivenBow(this StrutCase c, AngleSection section)
    {
        double amplitude = c.In("e0") * c.In("bow_sign");
        JsonElement direction = c.Input.GetProperty("bow_dir");
        return direction.ValueKind == JsonValueKind.Number
            ? Bow.AtAngle(direction.GetDouble(), amplitude)
            : direction.GetString() switch
            {
                "u" => Bow.AlongU(section, amplitude),
                "v" => Bow.AlongV(section, amplitude),
                "y" => Bow.AtAngle(0, amplitude),
                "z" => Bow.AtAngle(90, amplitude),
                var other => throw new InvalidDataException($"bow_dir {other}"),
            };
    }

    private static double Spring(this StrutCase c, string name)
    {
        JsonElement value = c.Input.GetProperty(name);
        return value.ValueKind == JsonValueKind.String ? double.PositiveInfinity : value.GetDouble();
    }
}
