using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>How sure the direction of a vent is, when pressures and sizes are known only within ranges.</summary>
/// <param name="Verdict">The verdict at the likely values.</param>
/// <param name="ShareAlwaysIn">Share of draws in which it takes in over the whole band.</param>
/// <param name="ShareAlwaysOut">Share of draws in which it lets out over the whole band.</param>
/// <param name="ShareTurns">Share of draws in which it turns.</param>
/// <param name="TurningSpeedMetresPerSecond">First speed of turning over the draws that turn, m/s; null when none does.</param>
/// <param name="MattersMost">The input that it would help most to know better; null when nothing is uncertain.</param>
public sealed record VentCertainty(
    VentVerdict Verdict, double ShareAlwaysIn, double ShareAlwaysOut, double ShareTurns, Spread? TurningSpeedMetresPerSecond, string? MattersMost)
{
    private const int CoarseSteps = 10;

    /// <summary>The same in km/h.</summary>
    public Spread? TurningSpeed => TurningSpeedMetresPerSecond?.Scaled(3.6);

    /// <summary>Share of draws that agree with the verdict.</summary>
    public double ShareThatAgree => Verdict.Direction switch
    {
        VentDirection.AlwaysIn => ShareAlwaysIn,
        VentDirection.AlwaysOut => ShareAlwaysOut,
        VentDirection.Turns => ShareTurns,
        _ => 1,
    };

    /// <summary>Draws pressures and sizes and looks which way the vent blows in each draw.</summary>
    /// <param name="network">The network with its ranges.</param>
    /// <param name="air">The day; its speed is not used.</param>
    /// <param name="vent">The opening.</param>
    /// <param name="fastest">Top of the band of speeds.</param>
    /// <returns>The verdict and how sure it is.</returns>
    /// <validity>Pressures and sizes drawn independently of each other; the speed band in ten steps, so that two turns closer than that are missed.</validity>
    /// <uncertainty>2,000 draws: a share is good to about 0.02.</uncertainty>
    /// <source key="own-derivation" place="seeded draws of the solved network">Share of draws by sign of m(V)</source>
    public static VentCertainty Of(UncertainNetwork network, AirOnCar air, string vent, RoadSpeed fastest) => All(network, air, [vent], fastest)[0];

    /// <summary>The same for several vents from the same draws.</summary>
    internal static IReadOnlyList<VentCertainty> All(UncertainNetwork network, AirOnCar air, IReadOnlyList<string> vents, RoadSpeed fastest)
    {
        int[] places = [.. vents.Select(network.Likely.PlaceOf)], alwaysIn = new int[places.Length], turning = new int[places.Length];
        int steps = HasOneDriver(network.Likely, air) ? 1 : CoarseSteps;
        SpeedSweep sweep = new(network.Likely, air);
        Propagated drawn = MonteCarlo.Propagate(network.Inputs, 2 * places.Length, (values, outputs) =>
        {
            sweep.Redraw(network.Openings, values);
            Span<double> atTop = outputs[..places.Length], turns = outputs[places.Length..];
            VentScan.FirstTurns(sweep, places, fastest, steps, atTop, turns);
            for (int v = 0; v < places.Length; v++)
            {
                bool turned = !double.IsNaN(turns[v]);
                turning[v] += turned ? 1 : 0;
                alwaysIn[v] += !turned && atTop[v] > 0 ? 1 : 0;
            }
        });
        double all = MonteCarlo.DrawCount;
        return [.. vents.Select((vent, v) => new VentCertainty(
            VentScan.Of(network.Likely, air, vent, fastest), alwaysIn[v] / all, (all - alwaysIn[v] - turning[v]) / all, turning[v] / all,
            drawn.Outputs[places.Length + v].Spread, drawn.Outputs[v].MattersMost))];
    }

    /// <summary>Body pressures and square-root openings alone: then the direction is the same at every speed.</summary>
    private static bool HasOneDriver(VentNetwork network, AirOnCar air) =>
        air.CrossWind == default && air.HeadWind == default
        && network.Openings.All(opening => opening.Law is Orifice)
        && network.Compartments.All(room => room.Temperature == air.Temperature);
}
