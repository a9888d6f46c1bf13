using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

/// <summary>Networks made by chance: one to twelve compartments, every law, areas over five decades, heat, fans and wind.</summary>
internal static class RandomNetwork
{
    public static (VentNetwork Network, AirOnCar Air) Draw(Random chance)
    {
        int rooms = chance.Next(1, 13);
        Compartment[] compartments = [.. Enumerable.Range(0, rooms).Select(i =>
            new Compartment($"room{i}", Temperature.FromDegreesCelsius(chance.Next(4) == 0 ? -20 + (170 * chance.NextDouble()) : 20)))];
        List<Opening> openings = [];
        for (int i = 0; i < rooms; i++)
        {
            // Joined to the outside or to an earlier room, so that no room is closed.
            string from = i == 0 || chance.Next(2) == 0 ? Compartment.Outside : $"room{chance.Next(i)}";
            openings.Add(Way($"tree{i}", from, $"room{i}", chance));
        }

        for (int k = chance.Next(2 * rooms); k > 0; k--)
        {
            int a = chance.Next(-1, rooms), b = chance.Next(rooms);
            if (a != b)
            {
                openings.Add(Way($"extra{k}", a < 0 ? Compartment.Outside : $"room{a}", $"room{b}", chance));
            }
        }

        AirOnCar air = new(
            RoadSpeed.FromMetresPerSecond(chance.Next(10) == 0 ? 0 : 70 * chance.NextDouble()),
            AirDensity.FromKilogramsPerCubicMetre(0.9 + (0.6 * chance.NextDouble())),
            Temperature.FromDegreesCelsius(-20 + (65 * chance.NextDouble())));
        return (new(compartments, openings), air with { CrossWind = AirSpeed.FromMetresPerSecond(chance.Next(3) == 0 ? 10 * chance.NextDouble() : 0) });
    }

    private static Opening Way(string id, string from, string to, Random chance)
    {
        double area = Math.Pow(10, -5 + (4.5 * chance.NextDouble()));
        Orifice orifice = new(Area.FromSquareMetres(area), 0.2 + (0.8 * chance.NextDouble()));
        FlowLaw law = chance.Next(6) switch
        {
            0 => new Crack(VolumeFlow.FromCubicMetresPerSecond(area), 0.5 + (0.5 * chance.NextDouble())),
            1 => new Blower(orifice, PressureDifference.FromPascals(20 + (300 * chance.NextDouble())), VolumeFlow.FromCubicMetresPerSecond(0.01 + (0.5 * chance.NextDouble()))),
            2 => new Doorway(Length.FromMetres(0.05 + chance.NextDouble()), Length.FromMetres(0.05 + chance.NextDouble())),
            _ => orifice,
        };
        return new Opening(id, from, to, law, Length.FromMetres(2 * chance.NextDouble()))
        {
            PressureCoefficient = -1.8 + (2.8 * chance.NextDouble()),
            ChangePerDegreeOfYaw = 0.02 * (chance.NextDouble() - 0.5),
        };
    }
}
