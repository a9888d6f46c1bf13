using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Runs;

namespace FixPlanner.PublishedChecks;

/// <summary>What the measurement room computes for each row of measurement.csv.</summary>
internal static class MeasurementChecks
{
    private static readonly string[] Sleep = ["ST-220", "ST-221", "ST-222", "ST-223"];

    public static double Compute(CheckRow row) => row.Id switch
    {
        "CD-009" => 1 / MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 0.75),
        "CD-061" or "CD-062" or "CD-063" => new RunConditions(Temperature.FromDegreesCelsius(row["T_degC"]), Pressure.FromPascals(row["p_Pa"])).Density!.Value.KilogramsPerCubicMetre,
        "CD-064" => (Car(row["m_kg"], row["rotating"], 0.01, 0.8, 1.2).EffectiveMass - Mass.FromKilograms(row["m_kg"])).Kilograms,
        ['C', 'D', ..] => Coast(row),
        "ST-100" => SampleSummary.Of(row.Numbers("y")).Mean,
        "ST-101" => SampleSummary.Of(row.Numbers("y")).StandardDeviation,
        "ST-103" => -Groups(row).T,
        "ST-104" => Groups(row).DegreesOfFreedom,
        "ST-105" => Math.Abs(new MeanDifference(row["mean"], row["sd"] / Math.Sqrt(row["n"]), row["n"] - 1).T),
        "ST-230" or "ST-231" => StudentT.Power(row["delta"] / (row["sd"] * Math.Sqrt(2 / row["n"])), (2 * row["n"]) - 2, 0.05, bothSides: false),
        "ST-240" or "ST-241" or "ST-242" or "ST-243" => StudentT.NoncentralityFor(0.80, row["df"], 0.05),
        "ST-250" or "ST-253" => Update(row).Mean,
        "ST-251" => Update(row).Spread * Update(row).Spread,
        "ST-252" => Update(row).Spread,
        "ST-260" => Blocks(row, ValueComparison.DriftFreeDifference),
        "ST-261" => Blocks(row, ValueComparison.HalfDrift),
        "ST-270" => MeanDifference.Welch(row.Numbers("y1"), row.Numbers("y2")).Estimate,
        "ST-271" => MeanDifference.Welch(row.Numbers("y1"), row.Numbers("y2")).StandardError,
        _ when Sleep.Contains(row.Id) => SleepData(row),
        _ when row.Inputs.ContainsKey("share") => StudentT.Quantile(row["share"], row["df"]),
        ['S', 'T', ..] => StudentT.Quantile(0.975, row["n"] - 1) / Math.Sqrt(row["n"]),
        ['N', 'I', ..] => NistChecks.Compute(row),
        "FM-001" or "FM-003" => Convert.ToInt32(NmeaRunReader.Checksum(row.Word("body")), 16),
        "FM-004" => row["knots"] * SpeedUnit.Knots.MetresPerSecond * 3.6,
        "FM-005" => NmeaRunReader.Degrees(row.Word("text"), "N"),
        "FM-008" => TrackSpeed.Distance(0, 0, 0, row["lon_deg"]),
        "OM-001" => PressureGauge.FromWater(row["mm"]).Pascals,
        "OM-002" => 1 / PressureGauge.CoefficientStep(PressureDifference.FromPascals(1), AirSpeed.FromKilometresPerHour(row["V_kmh"]), AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"])),
        "OM-004" => PressureGauge.CoefficientStep(PressureGauge.FromWater(row["mm"]), AirSpeed.FromKilometresPerHour(row["V_kmh"]), AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"])),
        _ => double.NaN,
    };

    private static double Coast(CheckRow row)
    {
        RoadSpeed hundred = RoadSpeed.FromKilometresPerHour(100);
        RoadSpeed forty = RoadSpeed.FromKilometresPerHour(40);
        switch (row.Id)
        {
            case "CD-051":
                return Car(row).TimeBetween(hundred, forty).Seconds;
            case "CD-052":
                return Car(row).DistanceBetween(hundred, forty).Metres;
            case "CD-053":
                return Car(row).SpeedAfter(hundred, Duration.FromSeconds(20)).KilometresPerHour;
            case "CD-054":
                CoastingCar less = Car(row) with { DragArea = DragArea.FromSquareMetres(row["CdA_m2"] - row["less_m2"]) };
                return (less.TimeBetween(hundred, forty) - Car(row).TimeBetween(hundred, forty)).Seconds;
            default:
                // Road load A + C V² on an inertia: the same curve with a = A/m and b = C/m, V in km/h.
                return new CoastCurve(row["A_N"] / row["m_kg"], row["C_N_per_kmh2"] * 3.6 * 3.6 / row["m_kg"]).TimeBetween(70 / 3.6, 60 / 3.6);
        }
    }

    private static CoastingCar Car(CheckRow row) => Car(row["m_kg"], row["rotating"], row["Crr"], row["CdA_m2"], row["rho_kgm3"]);

    private static CoastingCar Car(double mass, double rotating, double rolling, double area, double density) =>
        new(Mass.FromKilograms(mass), rotating, DragArea.FromSquareMetres(area), rolling, 0, AirDensity.FromKilogramsPerCubicMetre(density));

    private static MeanDifference Groups(CheckRow row) =>
        MeanDifference.Welch(new((int)row["n1"], row["mean1"], row["sd1"]), new SampleSummary((int)row["n2"], row["mean2"], row["sd2"]));

    private static BeliefUpdate Update(CheckRow row) => BeliefUpdate.Of(row["prior_mean"], row["prior_sd"], row["mean"], row["se"]);

    private static double Blocks(CheckRow row, Func<double, double, double, double, double> rule)
    {
        double[] y = row.Numbers("y");
        return rule(y[0], y[1], y[2], y[3]);
    }

    private static double SleepData(CheckRow row)
    {
        double[] first = row.Numbers("y1");
        double[] second = row.Numbers("y2");
        MeanDifference welch = MeanDifference.Welch(second, first);
        return row.Id switch
        {
            "ST-220" => welch.T,
            "ST-221" => welch.DegreesOfFreedom,
            "ST-222" => welch.PValue,
            _ => MeanDifference.Paired([.. first.Zip(second, (a, b) => a - b)]).T,
        };
    }
}
