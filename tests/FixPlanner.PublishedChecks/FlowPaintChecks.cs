using FixPlanner.Core.Physics.FlowPaint;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of flow-paint.csv.</summary>
internal static class FlowPaintChecks
{
    private const double StandardPa = 101_325;
    private const double NitrogenKgMol = 0.0280134;
    private const double NitrogenVolume = 18.5;

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M7-01"] = InAir,
        ["M7-02"] = InAir,
        ["M7-03"] = InAir,
        ["M7-08"] = row => VapourDiffusion.Between(row["T_K"], row["p_Pa"], row["M_A_gmol"] / 1000, row["Vdiff_A"], NitrogenKgMol, NitrogenVolume),
        ["M7-10"] = row => PlateTransfer.MeanLaminar(row["Re"], row["Pr_or_Sc"]),
        ["M7-12"] = row => PlateTransfer.MeanLaminarAnyPrandtl(row["Re"], row["Pr_or_Sc"]),
        ["M7-24"] = row => Recedes(Carrier.Isopropanol, Liquids.Isopropanol, row) / Recedes(Carrier.WhiteSpirit, Liquids.Decane, row),
        ["M7-25"] = row => Boils(Liquids.Decane, row["p_Pa"]),
        ["M7-26"] = row => Boils(Liquids.Isopropanol, row["p_Pa"]),
        ["M7-27"] = row => Boils(Liquids.Dodecane, row["p_Pa"]),
        ["M7-28"] = row => FilmEvaporation.AdiabaticFilm(Carrier.Water, Day(row["T_degC"], row["RH_frac"])).DegreesCelsius,
        ["C-15"] = row => FilmEvaporation.FluxKgM2S(Carrier.WhiteSpirit, Day(row["T_degC"]), AirSpeed.FromMetresPerSecond(row["V_mps"]), Length.FromMetres(row["x_m"])),
        ["C-16"] = row => FilmSetting.Time(
            Carrier.WhiteSpirit, Day(row["T_degC"]), AirSpeed.FromMetresPerSecond(row["V_mps"]), Length.FromMetres(row["x_m"]), Length.FromMetres(row["h0_m"])).Seconds,
    };

    private static PaintWeather Day(double celsius, double humidity = 0.5) =>
        new(Temperature.FromDegreesCelsius(celsius), humidity, Pressure.FromPascals(StandardPa));

    private static double InAir(CheckRow row) => VapourDiffusion.InAir(row["T_K"], row["p_Pa"], row["M_A_gmol"] / 1000, row["Vdiff_A"]);

    private static double Recedes(Carrier carrier, LiquidConstants liquid, CheckRow row) =>
        FilmEvaporation.FluxKgM2S(carrier, Day(row["T_degC"]), AirSpeed.FromMetresPerSecond(row["V_mps"]), Length.FromMetres(1))
            / liquid.DensityKgM3(row["T_degC"] + 273.15);

    private static double Boils(LiquidConstants liquid, double pressurePa)
    {
        double low = 250;
        double high = 600;
        while (high - low > 1e-6)
        {
            double middle = (low + high) / 2;
            (low, high) = liquid.VapourPressurePa(middle) < pressurePa ? (middle, high) : (low, middle);
        }

        return low;
    }
}
