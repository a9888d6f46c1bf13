using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Whether air of the engine bay reaches the cabin, and by which way.</summary>
/// <param name="ShareOfCabinAir">Share of the air entering the cabin that comes out of the bay inside the car, 0 to 1.</param>
/// <param name="InnerFlow">Flow from the bay straight into the cabin through bulkhead holes; below zero when it runs the other way.</param>
/// <param name="ReturnsAtTheIntake">True when bay air leaves close to an intake that draws in: it may come back in from outside.</param>
public sealed record FumesPath(double ShareOfCabinAir, MassFlow InnerFlow, bool ReturnsAtTheIntake)
{
    /// <summary>Traces the way.</summary>
    /// <param name="solution">Flows of the network, with compartments named bay and cabin.</param>
    /// <param name="bayOutletNearIntake">An opening of the bay within about 0.3 m of the cabin's intake, such as the bonnet's rear gap; null if there is none.</param>
    /// <param name="intake">The cabin's intake; null if there is none.</param>
    /// <returns>The path.</returns>
    /// <validity>As <see cref="AirOrigin"/>. How much of the outside stream comes back in is not computed: nobody measured it.</validity>
    /// <uncertainty>Direction from the pressures, about as sure as they are; the share within a factor of three.</uncertainty>
    /// <source key="own-derivation" place="network flows; the 0.3 m from memory">Bay to cabin through the bulkhead, and around by the screen base</source>
    /// <exception cref="ArgumentException">No bay, no cabin or no such opening.</exception>
    public static FumesPath Trace(VentSolution solution, string? bayOutletNearIntake, string? intake)
    {
        double share = AirOrigin.ShareFrom(solution, Compartment.Bay)[Compartment.Cabin];
        double inner = 0;
        foreach (Opening opening in solution.Network.Openings)
        {
            int sign = (opening.From, opening.To) switch
            {
                (Compartment.Bay, Compartment.Cabin) => 1,
                (Compartment.Cabin, Compartment.Bay) => -1,
                _ => 0,
            };
            inner += sign * solution.Flow(opening.Id).KilogramsPerSecond;
        }

        bool returns = bayOutletNearIntake is not null && intake is not null
            && Into(solution, bayOutletNearIntake) < 0 && Into(solution, intake) > 0;
        return new(share, MassFlow.FromKilogramsPerSecond(inner), returns);
    }

    /// <summary>Flow from the outside into the car through an outer opening, kg/s.</summary>
    private static double Into(VentSolution solution, string id)
    {
        Opening opening = solution.Network.Named(id);
        double flow = solution.Flow(id).KilogramsPerSecond;
        return opening.From == Compartment.Outside ? flow : -flow;
    }
}
