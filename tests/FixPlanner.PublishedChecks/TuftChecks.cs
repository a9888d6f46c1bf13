using FixPlanner.Core.Physics.Tufts;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of tufts.csv.</summary>
internal static class TuftChecks
{
    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M8-01"] = row => Statistics(row).Mean.Degrees,
        ["M8-02"] = row => Statistics(row).Mean.Degrees,
        ["M8-03"] = row => Statistics(row).Variance,
        ["M8-04"] = row => Statistics(row).StandardDeviationRadians,
        ["M8-06"] = row => Statistics(row).AngularDeviationRadians,
        ["M8-08"] = row => Statistics(row).RayleighChance,
        ["M8-09"] = row => Statistics(row).RayleighZ,
        ["M8-10"] = row => Statistics(row).RayleighChance,
        ["M8-14"] = row => Statistics(row).ResultantLength,
        ["C-17"] = row => HangingTuft.SlowestReadable(
            new("row", "as in the row", LineLoad.FromNewtonsPerMetre(row["w_Npm"]), Length.FromMetres(row["d_m"])),
            AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"])).MetresPerSecond,
    };

    private static CircularStatistics Statistics(CheckRow row) => CircularStatistics.Of(row.Inputs.ContainsKey("angles_deg")
        ? [.. row.Numbers("angles_deg").Select(Angle.FromDegrees)]
        : [.. row.Numbers("angles_rad").Select(Angle.FromRadians)]);
}
