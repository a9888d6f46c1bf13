using FixPlanner.Core.Physics.Cooling;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of cooling.csv.</summary>
internal static class CoolingChecks
{
    private static readonly AirDensity Air = AirDensity.FromKilogramsPerCubicMetre(1.2041);
    private static readonly AirSpeed Motorway = AirSpeed.FromKilometresPerHour(110);
    private static readonly CoolingPath Plain = new() { CoreFace = Area.FromSquareMetres(0.16), OpenShare = 0.5, CoreLossFallsWithSpeed = false };

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M10-01"] = row => ExchangerEffectiveness.Of(StreamArrangement.CrossLargerMixed, row["NTU"], row["Cr"]),
        ["M10-02"] = OilCooler,
        ["M10-04"] = row => ExchangerEffectiveness.Of(StreamArrangement.Counter, row["NTU"], row["Cr"]),
        ["M10-06"] = _ => OrdinaryCore(),
        ["C-18"] = row => (Plain with
        {
            PressureCoefficientDifference = row["dCp"],
            CoreLoss = row["K_core"],
            OpenShare = row["open_frac"],
            ExitLoss = row["K_exit"],
        }).FaceSpeed(Motorway, Air).MetresPerSecond / Motorway.MetresPerSecond,
    };

    private static double OilCooler(CheckRow row)
    {
        double hot = row["mh_kgs"] * row["cph"];
        double cold = row["mc_kgs"] * row["cpc"];
        double smaller = Math.Min(hot, cold);
        double effectiveness = ExchangerEffectiveness.Of(StreamArrangement.CrossLargerMixed, row["U_Wm2K"] * row["A_m2"] / smaller, smaller / Math.Max(hot, cold));
        return effectiveness * smaller * (row["Thi_degC"] - row["Tci_degC"]);
    }

    private static double OrdinaryCore() => new Radiator
    {
        ConductanceAtSixMetresPerSecond = Conductance.FromWattsPerKelvin(1150),
        CoolantFlow = MassFlow.FromKilogramsPerSecond(0.9),
    }.Heat(Plain.FaceSpeed(Motorway, Air), Plain.CoreFace, Air, Temperature.FromDegreesCelsius(90), Temperature.FromDegreesCelsius(20)).Effectiveness;
}
