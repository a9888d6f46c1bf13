using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Physics.Crosswind;
using FixPlanner.Core.Physics.FrontalArea;
using FixPlanner.Core.Physics.Lift;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of frontal-area.csv and crosswind-and-lift.csv.</summary>
internal static class FrontalAreaAndWindChecks
{
    public static IReadOnlyDictionary<string, Func<CheckRow, double>> FrontalArea { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M3-05"] = row => AreaRules.ByWidthAndHeight(Length.FromMetres(row["W_m"]), Length.FromMetres(row["H_m"]), AreaRules.UsualFill).Value.SquareMetres,
        ["M3-07"] = row => AreaRules.FromMass(Mass.FromKilograms(row["m_kg"])).Value.SquareMetres,
    };

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> CrosswindAndLift { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M11-02"] = _ => WindThresholds.HighWindGust.MetresPerSecond,
        ["M11-06"] = row => SpeedBudget.Of(Mass.FromKilograms(900), RoadSpeed.FromMetresPerSecond(row["V1_mps"]), RoadSpeed.FromMetresPerSecond(row["V2_mps"])).LoadRatio,
        ["C-19"] = row => AxleUnloading.Share(
            Area.FromSquareMetres(row["A_m2"]), row["CLr"], Mass.FromKilograms(row["m_axle_kg"]),
            DynamicPressure.Of(AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"]), AirSpeed.FromMetresPerSecond(row["V_mps"]))),
        ["C-20"] = row => SideLoad.Of(
            ApparentWind.Of(RoadSpeed.FromMetresPerSecond(row["V_mps"]), default, AirSpeed.FromMetresPerSecond(row["W_mps"])),
            AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"]), Area.FromSquareMetres(row["A_m2"]), Length.FromMetres(2.4), row["Cy_per_deg"], 0).Force.Newtons,
    };
}
