using FixPlanner.Core.Physics.Noise;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of noise.csv.</summary>
internal static class NoiseChecks
{
    private static readonly AirSpeed Sound = AirSpeed.FromMetresPerSecond(343);

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M6-01"] = row => BarShedding.Of(BarSection.Round, Length.FromMetres(row["d_m"]), AirSpeed.FromMetresPerSecond(row["V_mps"])).Likely.Hertz,
        ["M6-02"] = Bottle,
        ["M6-03"] = Bottle,
        ["M6-04"] = SecondMode,
        ["M6-06"] = Cavity,
        ["M6-07"] = Cavity,
        ["M6-08"] = Cavity,
        ["M6-09"] = Cavity,
        ["M6-10"] = row => Louder(row["ratio"], LevelBySpeed.SwirlsOnSurface),
        ["M6-11"] = row => Louder(row["ratio"], LevelBySpeed.InCabin.Likely),

        // Volume and opening are not printed: an ordinary saloon with one window down stands in.
        ["M6-12"] = _ => Resonance.OfCabin(Area.FromSquareMetres(0.20), Volume.FromCubicMetres(2.8), Sound).Likely.Hertz,
        ["M6-16"] = row => PaneModes.HingedParameter(row["a_over_b"]),
        ["M6-22"] = Plate,
        ["M6-23"] = Plate,
        ["C-13"] = row => HelmholtzResonance.Pitch(
            Area.FromSquareMetres(row["A_m2"]), Volume.FromCubicMetres(row["V_m3"]), Length.FromMetres(row["t_m"]), HelmholtzResonance.HoleInPanel, Sound).Hertz,
        ["C-14"] = Plate,
    };

    private static double Bottle(CheckRow row)
    {
        double radius = row["neck_d_m"] / 2;
        return HelmholtzResonance.Pitch(
            Area.FromSquareMetres(Math.PI * radius * radius),
            Volume.FromCubicMetres(row["V_m3"]),
            Length.FromMetres(row["neck_L_m"]),
            double.Parse(row.Word("end_corr").TrimEnd('r')),
            AirSpeed.FromMetresPerSecond(row["c_mps"])).Hertz;
    }

    private static double SecondMode(CheckRow row)
    {
        // The opening is not printed; the first mode gives it.
        AirSpeed speed = AirSpeed.FromMetresPerSecond(row["V_mps"]);
        Length opening = Length.FromMetres(CavityModes.Pitch(1, Length.FromMetres(1), speed, Sound).Hertz / row["f1_Hz"]);
        return CavityModes.Pitch(2, opening, speed, Sound).Hertz;
    }

    private static double Cavity(CheckRow row) => CavityModes.Pitch(
        (int)row["n"],
        Length.FromMetres(row["L_m"]),
        AirSpeed.FromMetresPerSecond(row["V_mps"]),
        AirSpeed.FromMetresPerSecond(row["V_mps"] / row["Mach"])).Hertz;

    private static double Louder(double ratio, double perTenfold) =>
        LevelBySpeed.Change(AirSpeed.FromMetresPerSecond(20), AirSpeed.FromMetresPerSecond(20 * ratio), perTenfold).Decibels;

    private static double Plate(CheckRow row) =>
        PaneModes.Hertz(PaneModes.HingedParameter(row["a_m"] / row["b_m"]), row["a_m"], row["t_m"], row["E_Pa"], row["nu"], row["rho_kgm3"]);
}
