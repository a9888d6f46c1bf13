using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Lift;

/// <summary>The models of lift as the catalogue lists them.</summary>
public static class LiftModels
{
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Unloading(), FromRise()];

    private static PhysicsModel Unloading() => new()
    {
        Name = "axle-unloading",
        Formula = "u = q A C_L / (m g)",
        Title = "Load that the air takes off the axles",
        What = "How light the axles get at a speed, in a gust on the day given, and from which speed on the rear asks for caution.",
        Inputs =
        [
            CommonInputs.Speed,
            ModelInput.WithDefault("gust_ms", UnitKind.Speed, "m/s", (0, 30), (0, 12), Triangle.Certain(0), "speed that a gust adds; 6 m/s on an ordinary windy day"),
            CommonInputs.Density,
            CommonInputs.FrontalArea,
            CommonInputs.FrontAxle,
            CommonInputs.RearAxle,
            ModelInput.WithDefault("front_lift_coefficient", UnitKind.Ratio, string.Empty, (-2, 2), (-0.3, 0.6), LiftCoefficients.Front, "front lift, up positive (from memory): 0.35 for a blunt nose without air dam"),
            ModelInput.WithDefault("rear_lift_coefficient", UnitKind.Ratio, string.Empty, (-2, 2), (-0.3, 0.6), LiftCoefficients.Rear, "rear lift, up positive (from memory): high for fastbacks and notchbacks"),
        ],
        Outputs =
        [
            ModelOutput.Of("rear_unloading_percent", UnitKind.Ratio, "%", "share of the rear axle load that the air carries"),
            ModelOutput.Of("front_unloading_percent", UnitKind.Ratio, "%", "share of the front axle load that the air carries"),
            ModelOutput.Of("rear_lift_n", UnitKind.Force, "N", "rear lift"),
            ModelOutput.Of("front_lift_n", UnitKind.Force, "N", "front lift"),
            ModelOutput.Of("caution_speed_kmh", UnitKind.Speed, "km/h", "speed past the air at which the rear loses a tenth; none when it is pressed down"),
            ModelOutput.Word("verdict", "quiet, caution, hold this speed, or stop"),
        ],
        Source = "Hucho ch. 4 (definitions, from memory); coefficients from memory; limits own engineering choice",
        Validity = "steady straight driving; side wind raises lift further",
        Uncertainty = "the coefficients of a car that nobody measured are guesses: measure the rise of the body (lift-from-ride-height)",
        Compute = Compute,
    };

    private static ModelAnswer Compute(ModelValues values)
    {
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]);
        Area frontal = Area.FromSquareMetres(values["frontal_area_m2"]);
        Mass frontAxle = Mass.FromKilograms(values["front_axle_kg"]);
        Mass rearAxle = Mass.FromKilograms(values["rear_axle_kg"]);
        double frontLift = values["front_lift_coefficient"];
        double rearLift = values["rear_lift_coefficient"];
        PressureDifference q = DynamicPressure.Of(density, AirSpeed.FromMetresPerSecond((values["speed_kmh"] / 3.6) + values["gust_ms"]));
        double front = AxleUnloading.Share(frontal, frontLift, frontAxle, q);
        double rear = AxleUnloading.Share(frontal, rearLift, rearAxle, q);
        LiftVerdict verdict = LiftLimits.Judge(front, rear);
        return ModelAnswer.Of(
            ("rear_unloading_percent", 100 * rear),
            ("front_unloading_percent", 100 * front),
            ("rear_lift_n", q.Pascals * frontal.SquareMetres * rearLift),
            ("front_lift_n", q.Pascals * frontal.SquareMetres * frontLift),
            ("caution_speed_kmh", AxleUnloading.SpeedAt(frontal, rearLift, rearAxle, LiftLimits.CautionShare, density)?.KilometresPerHour ?? double.NaN))
            .Saying("verdict", Word(verdict))
            .Warning(rear - front > LiftLimits.StabilityGap ? "the tail gets light before the nose: straight running suffers" : null);
    }

    private static string Word(LiftVerdict verdict) => verdict switch
    {
        LiftVerdict.Quiet => "quiet",
        LiftVerdict.Caution => "caution",
        LiftVerdict.HoldSpeed => "hold this speed",
        _ => "stop",
    };

    private static PhysicsModel FromRise() => new()
    {
        Name = "lift-from-ride-height",
        Title = "Lift from the rise of the body",
        What = "The owner's way to a lift coefficient: how far the body rises over an axle at a steady speed.",
        Inputs =
        [
            ModelInput.Required("rise_mm", UnitKind.Length, "mm", (-100, 100), (-20, 20), "rise of the body over the axle, both sides and both ways averaged"),
            ModelInput.Required("axle_rate_n_per_mm", UnitKind.ForcePerLength, "N/mm", (2, 500), (20, 100), "rate of both springs of the axle at the wheels: lay known weights over the axle and measure"),
            CommonInputs.FrontalArea, CommonInputs.Speed, CommonInputs.Density,
        ],
        Outputs = [ModelOutput.Of("lift_coefficient", UnitKind.Ratio, string.Empty, "lift coefficient of that axle; none at a standstill")],
        Source = "own derivation",
        Validity = "springs without much friction; power and slope as at the zero reading",
        Uncertainty = "10 % of the spring rate and 1 mm of the rise",
        Compute = values =>
        {
            PressureDifference q = DynamicPressure.Of(AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]), AirSpeed.FromKilometresPerHour(values["speed_kmh"]));
            double coefficient = q.Pascals > 0
                ? AxleUnloading.CoefficientFromRise(Length.FromMillimetres(values["rise_mm"]), Stiffness.FromNewtonsPerMillimetre(values["axle_rate_n_per_mm"]), Area.FromSquareMetres(values["frontal_area_m2"]), q)
                : double.NaN;
            return ModelAnswer.Of(("lift_coefficient", coefficient));
        },
    };
}
