using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

/// <summary>Networks at the ends of what may be typed: a pinhole beside an open barn door, suction beside stagnation, all in one car.</summary>
public class ExtremeNetworksTests
{
    [Fact]
    public void Solve_TwentyThousandCarsAtTheEndsOfThePossible_AllBalance()
    {
        Random chance = new(5);
        int most = 0;
        for (int i = 0; i < 20_000; i++)
        {
            Dictionary<string, double> values = VentInputs.Car.ToDictionary(input => input.Name, input => Towards(input, chance));
            ModelValues car = new(VentInputs.Car, values);
            NodeEquations equations = new(VentInputs.Network(car), VentInputs.Air(car, 5 + (395 * chance.NextDouble()), 1.2));
            most = Math.Max(most, VentSolver.Balance(equations));
            Assert.InRange(equations.Evaluate(), 0, 1e-10);
        }

        Assert.InRange(most, 1, 100);
    }

    // The bay trades 0.1 g/s through pinholes beside a cabin that passes 90 kg/s: the small imbalance drowns in the sum over all openings.
    [Fact]
    public void Solve_PinholesBesideAnOpenCabin_SmallRoomBalancesToo()
    {
        (string Name, double Value)[] typed =
        [
            ("cabin_inlet_cm2", 5000), ("cabin_inlet_coefficient", -4), ("cabin_outlet_cm2", 0.01202), ("cabin_outlet_coefficient", -4),
            ("door_leak_cm2", 733.9), ("door_leak_coefficient", -3.983), ("tail_leak_cm2", 994.8), ("tail_leak_coefficient", 1),
            ("bay_inlet_cm2", 4984), ("bay_inlet_coefficient", -4), ("bay_outlet_cm2", 0.01), ("bay_outlet_coefficient", -3.846),
            ("bonnet_rear_gap_cm2", 0.01), ("bonnet_rear_gap_coefficient", -4), ("bulkhead_holes_cm2", 0.01),
            ("bay_temperature_c", -34.46), ("cabin_temperature_c", 33.37), ("outside_temperature_c", -40), ("cross_wind_ms", 0), ("intake_change_per_deg", -0.02), ("heater_fan", 0),
        ];
        ModelValues car = new(VentInputs.Car, typed.ToDictionary(pair => pair.Name, pair => pair.Value));

        VentSolution solution = VentSolver.Solve(VentInputs.Network(car), VentInputs.Air(car, 145.975, 1.2));

        double In(string opening) => solution.Flow(opening).KilogramsPerSecond;
        double net = In(OldCarVents.BayIn) + In(OldCarVents.BayOut) + In(OldCarVents.BonnetRearGap) - In(OldCarVents.Bulkhead);
        Assert.InRange(Math.Abs(net), 0, 1e-10 * In(OldCarVents.BayOut));
    }

    // Both roots of a tall opening lie close together when the pressure across it is large: their difference must not eat the digits.
    [Theory]
    [InlineData(1)]
    [InlineData(1000)]
    [InlineData(100_000)]
    public void Doorway_LargePressureAndLittleDifferenceOfWeight_FlowOfAPlainHole(double pascals)
    {
        Doorway way = new(Length.FromMetres(0.1), Length.FromMetres(0.9));
        (double flow, double slope, double gross) = way.Flow(pascals, 1.2, 1.2 + 1e-3);
        double plain = 0.78 * 0.1 * 0.9 * Math.Sqrt(2 * 1.2 * pascals);

        // The mean of sqrt(p + x) over x = -h..h is sqrt(p) (1 - u²/24 - u⁴/128 - ...) with u = h/p; h is 4.4 mPa.
        double u = 0.5 * 0.9 * 1e-3 * 9.80665 / pascals;
        double expected = plain * (1 - (u * u / 24) - (u * u * u * u / 128));
        Assert.Equal(1, flow / expected, 1e-12);
        Assert.Equal(1, slope / (flow / (2 * pascals)), 1e-4);
        Assert.Equal(flow, gross);
    }

    private static double Towards(ModelInput input, Random chance)
    {
        double share = chance.Next(3) switch
        {
            0 => 0,
            1 => chance.NextDouble(),
            _ => Math.Pow(10, -12 * chance.NextDouble()),
        };
        double value = input.Possible.Low + ((chance.Next(5) == 0 ? 1 - share : share) * (input.Possible.High - input.Possible.Low));
        return input.Choices.Count > 0 ? Math.Round(value) : value;
    }
}
