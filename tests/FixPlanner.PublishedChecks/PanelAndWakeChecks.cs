using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Wake;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of panels-and-wake.csv: our own worked examples.</summary>
internal static class PanelAndWakeChecks
{
    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["F-02a"] = row => Bonnet(row).Newtons,
        ["F-02b"] = row => Bonnet(row).Newtons,
        ["F-02c"] = row => new HingedPanel(Area.FromSquareMetres(row["A_m2"]), Mass.FromKilograms(row["m_kg"]), row["weight_place"], row["load_place"])
            .LatchLoad(Bonnet(row)).Newtons,
        ["F-03b"] = _ => LoadAir.ColdDay.KilogramsPerCubicMetre,
        ["F-D1"] = row => (new LoadAir(AirSpeed.FromMetresPerSecond(row["V_mps"])) with { Gust = AirSpeed.FromMetresPerSecond(row["gust_mps"]) }).GustFactor,
        ["F-07"] = row => DoorFrame.SealLiftsAt(
            LineLoad.FromNewtonsPerMetre(row["F_Npm"]), Length.FromMetres(row["L_m"]), Area.FromSquareMetres(row["A_m2"]), row["dCp"], StillAir(0, row["rho_kgm3"])).MetresPerSecond,
        ["F-09"] = row => BasePressure.DragAreaChange(row["dCp"], Area.FromSquareMetres(row["A_m2"])).SquareMetres,
    };

    private static Force Bonnet(CheckRow row) =>
        PanelLoad.Outward(row["Cp_in"], row["Cp_out"], Area.FromSquareMetres(row["A_m2"]), StillAir(row["V_mps"], row["rho_kgm3"]));

    private static LoadAir StillAir(double metresPerSecond, double density) => new(AirSpeed.FromMetresPerSecond(metresPerSecond))
    {
        Density = AirDensity.FromKilogramsPerCubicMetre(density),
        Gust = AirSpeed.FromMetresPerSecond(0),
    };
}
