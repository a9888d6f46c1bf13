using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of air.csv.</summary>
internal static class AirChecks
{
    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = Table();

    private static Dictionary<string, Func<CheckRow, double>> Table()
    {
        Dictionary<string, Func<CheckRow, double>> table = new()
        {
            ["M1-01"] = row => Density(row["T_degC"], row["p_Pa"], row["RH_frac"]),
            ["M1-05"] = row => MoistAir.DensityByWeighingFormula(
                Temperature.FromDegreesCelsius(row["T_degC"]), Pressure.FromPascals(row["p_Pa"]), row["RH_frac"]).KilogramsPerCubicMetre,
            ["M1-08"] = row => Sound(row["Z_m"]),
            ["M1-09"] = row => At(row["Z_m"]).Temperature.Kelvins,
            ["M1-11"] = row => At(row["Z_m"]).Density.KilogramsPerCubicMetre,
            ["M1-12"] = row => AirProperties.Viscosity(At(row["Z_m"]).Temperature).PascalSeconds,
            ["M1-13"] = row => At(row["Z_m"]).Pressure.Pascals,
            ["M1-15"] = row => At(row["Z_m"]).Pressure.Pascals,
            ["M1-17"] = row => SaturationVapour.Pressure(Temperature.FromKelvins(row["T_K"])).Pascals,
            ["M1-18"] = row => Density(row["T_K"] - 273.15, row["p_Pa"], row["RH_frac"]),
            ["M1-20"] = row => 1 - (Density(row["T_degC"] + row["dT_K"], row["p_Pa"], row["RH_frac"]) / Density(row["T_degC"], row["p_Pa"], row["RH_frac"])),
            ["M1-21"] = row => (Density(row["T_degC"], row["p_Pa"] + row["dp_Pa"], row["RH_frac"]) / Density(row["T_degC"], row["p_Pa"], row["RH_frac"])) - 1,
            ["M1-22"] = row => AirProperties.Viscosity(Temperature.FromKelvins(row["T_K"])).PascalSeconds,
            ["C-01"] = row => Density(row["T_degC"], row["p_Pa"], row["RH_frac"]),
        };
        foreach (int metres in new[] { 0, 1000, 2000, 3000, 4000 })
        {
            table[$"SA-T{metres}"] = row => At(row["Z_m"]).Temperature.Kelvins;
            table[$"SA-D{metres}"] = row => At(row["Z_m"]).Density.KilogramsPerCubicMetre;
            table[$"SA-S{metres}"] = row => Sound(row["Z_m"]);
            if (metres != 1000)
            {
                table[$"SA-P{metres}"] = row => At(row["Z_m"]).Pressure.Pascals;
            }
        }

        return table;
    }

    private static double Density(double celsius, double pascals, double humidity) =>
        MoistAir.Density(Temperature.FromDegreesCelsius(celsius), Pressure.FromPascals(pascals), humidity).KilogramsPerCubicMetre;

    private static StandardAtmosphere At(double metres) => StandardAtmosphere.At(Length.FromMetres(metres));

    private static double Sound(double metres) => AirProperties.SpeedOfSound(At(metres).Temperature).MetresPerSecond;
}
