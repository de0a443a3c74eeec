using System.Text.Json;
using StrutLessons.Nonlinear;

namespace StrutLessons.Tests.Cases;

/// <summary>
/// The reference cases in nonlinear.json: an independent fibre rod, itself compared with 20-node bricks.
/// Their z points away from the gusset; this class turns everything into the library's axes.
/// </summary>
public sealed record NonlinearCase(string Id, ReferenceStrut Strut, JsonElement Data)
{
    public static IReadOnlyList<NonlinearCase> All { get; } = Load();

    public static NonlinearCase Get(string id) => All.Single(c => c.Id == id);

    public double PeakLoad => Result("N_u");

    public double Shortening => Result("shortening_P");

    public double Twist => -Result("twist_mid_rad");

    public Planar ShearCentreMid => new(Result("vS_mid"), -Result("wS_mid"));

    public Planar CentroidMid => new(Result("vC_mid"), -Result("wC_mid"));

    public double YieldedFraction => Result("yielded_fibre_fraction");

    public double LargestPlasticStrain => Result("max_plastic_strain");

    public double PeakWithoutTwist => Data.GetProperty("variants_32el_24x3").GetProperty("N_u_no_twist").GetDouble();

    public double PeakWithoutWagner => Data.GetProperty("variants_32el_24x3").GetProperty("N_u_twist_but_no_wagner").GetDouble();

    public double FirstYield => Data.GetProperty("elastic_first_yield_bow_L300").GetProperty("N").GetDouble();

    public double FirstYieldWithTwist => Data.GetProperty("elastic_first_yield_bow_L300").GetProperty("N_with_twist").GetDouble();

    public double CriticalFlexural => Data.GetProperty("elastic_first_yield_bow_L300").GetProperty("Ncr_flexural").GetDouble();

    public override string ToString() => Id;

    private double Result(string name) => Data.GetProperty("result").GetProperty(name).GetDouble();

    private static List<NonlinearCase> Load()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Cases", "nonlinear.json");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file));
        return [.. document.RootElement.GetProperty("cases").EnumerateArray().Select(c => Read(c.Clone()))];
    }

    private static NonlinearCase Read(JsonElement c)
    {
        double Number(string name) => c.GetProperty(name).GetDouble();
        var steel = new ReferenceSteel(Number("E"), Number("G"), Number("fy"), Number("hardening"));
        ReferenceSection section = ReferenceSection.Angle(Number("b_connected"), Number("b_outstanding"), Number("t"));
        var point = new Planar(Number("ecc_y"), -Number("ecc_z"));
        JsonElement direction = c.GetProperty("bow_dir");
        Planar bow = Number("bow_amplitude") * new Planar(direction[0].GetDouble(), -direction[1].GetDouble());
        ReferenceEnd End(int i) => new(point, Stiffness(c.GetProperty("k_in")[i]), Stiffness(c.GetProperty("k_out")[i]));
        var strut = new ReferenceStrut(section, steel, Number("L"), bow, Number("residual_peak"), End(0), End(1));
        return new NonlinearCase(c.GetProperty("id").GetString()!, strut, c);
    }

    internal static double Stiffness(JsonElement value) => value.ValueKind == JsonValueKind.String ? double.PositiveInfinity : value.GetDouble();
}
