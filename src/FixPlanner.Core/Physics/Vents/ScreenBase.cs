using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// A vent that runs along the base of the windscreen meets a pressure that is high in the middle and falls towards the
/// pillars. Where the pressure behind it lies between the two, one part takes in while another lets out.
/// </summary>
public static class ScreenBase
{
    // Mean of y² over the outer third, 2/3 to 1: it ties the curve to the coefficient of that third.
    private const double MeanOfOuterThird = 19.0 / 27;

    /// <summary>Pressure coefficient along the base of the windscreen.</summary>
    /// <param name="place">-1 at the left pillar, 0 in the middle, 1 at the right pillar.</param>
    /// <param name="middle">Coefficient in the middle.</param>
    /// <param name="outerThird">Mean coefficient of the outer third.</param>
    /// <returns>Cp at that place.</returns>
    /// <validity>Straight ahead, no wind from the side. A raised or leaking bonnet edge can turn the picture round: give what the taps read.</validity>
    /// <uncertainty>The two coefficients are from memory within 0.15 to 0.2; the parabola between them is a choice.</uncertainty>
    /// <source key="from-memory" place="tunnel plots of saloons: high in the middle, falling off to the pillars">Cp = Cm - (Cm - Cs) y² / 0.704</source>
    /// <exception cref="ArgumentOutOfRangeException">Place outside -1 to 1.</exception>
    public static double PressureCoefficient(double place, double middle, double outerThird) =>
        middle - ((middle - outerThird) * Math.Pow(Valid.Within(place, -1, 1, "(a place)"), 2) / MeanOfOuterThird);

    /// <summary>Cuts one vent of a network into pieces along the width and solves for the flow in each.</summary>
    /// <param name="network">The network; the vent must lead in from the outside.</param>
    /// <param name="air">Speed, wind and air.</param>
    /// <param name="vent">The vent that runs along the base of the windscreen.</param>
    /// <param name="middle">Coefficient in the middle.</param>
    /// <param name="outerThird">Mean coefficient of the outer third.</param>
    /// <param name="pieces">Number of pieces, 3 to 99; an odd number has one in the middle.</param>
    /// <returns>The pieces from left to right.</returns>
    /// <validity>One pressure behind the whole vent: a box without partitions. With partitions, give each its own compartment.</validity>
    /// <uncertainty>The place where it turns is where two guessed pressures meet: look with tufts before believing it.</uncertainty>
    /// <source key="own-derivation" place="network with the vent cut into pieces">As the vent network</source>
    /// <exception cref="ArgumentOutOfRangeException">Number of pieces outside its range.</exception>
    /// <exception cref="ArgumentException">No such opening, or one that does not lead in from the outside.</exception>
    public static IReadOnlyList<ScreenBaseStation> Along(VentNetwork network, AirOnCar air, string vent, double middle, double outerThird, int pieces = 15)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pieces, 99);
        Opening whole = network.Named(vent);
        if (whole.From != Compartment.Outside)
        {
            throw new ArgumentException($"opening {vent} does not lead in from the outside", nameof(vent));
        }

        double[] places = Places(pieces);
        IEnumerable<Opening> cut = places.Select((place, i) =>
            Opening.FromOutside($"{vent} piece {i}", whole.To, whole.Law.Scaled(1.0 / pieces), PressureCoefficient(place, middle, outerThird), whole.Height));
        VentNetwork strip = new(network.Compartments, network.Openings.Where(opening => opening.Id != vent).Concat(cut));
        VentSolution solution = VentSolver.Solve(strip, air);
        return [.. places.Select((place, i) =>
            new ScreenBaseStation(place, PressureCoefficient(place, middle, outerThird), solution.Flow($"{vent} piece {i}")))];
    }

    /// <summary>How sure the direction of each piece is.</summary>
    /// <param name="network">The network with its ranges.</param>
    /// <param name="air">Speed, wind and air.</param>
    /// <param name="vent">The vent that runs along the base of the windscreen.</param>
    /// <param name="middle">Range of the coefficient in the middle.</param>
    /// <param name="outerThird">Range of the mean coefficient of the outer third.</param>
    /// <param name="pieces">Number of pieces, 3 to 99.</param>
    /// <returns>For each piece from left to right: its place, and the share of draws in which it takes in.</returns>
    /// <validity>As <see cref="Along"/>; the two coefficients drawn independently of each other.</validity>
    /// <uncertainty>2,000 draws: a share is good to about 0.02.</uncertainty>
    /// <source key="own-derivation" place="seeded draws of the solved network">Share of draws by sign of the flow</source>
    /// <exception cref="ArgumentException">No such opening, or one that does not lead in from the outside.</exception>
    public static IReadOnlyList<(double Place, double ShareIn)> Certainty(
        UncertainNetwork network, AirOnCar air, string vent, Triangle middle, Triangle outerThird, int pieces = 15)
    {
        ArgumentNullException.ThrowIfNull(network);
        UncertainOpening whole = network.Openings[network.Likely.PlaceOf(vent)];
        if (whole.Likely.From != Compartment.Outside)
        {
            throw new ArgumentException($"opening {vent} does not lead in from the outside", nameof(vent));
        }

        // The pieces stand at the end, share the size of the whole vent, and take their pressure from the two coefficients.
        double[] places = Places(pieces);
        UncertainOpening[] rest = [.. network.Openings.Where(o => o != whole)];
        UncertainOpening[] all = [.. rest, .. places.Select((_, i) => whole with { Likely = Opening.FromOutside($"{vent} piece {i}", whole.Likely.To, whole.Likely.Law.Scaled(1.0 / pieces), 0, whole.Likely.Height) })];
        SpeedSweep strip = new(new(network.Likely.Compartments, all.Select(o => o.Likely)), air);
        UncertainInput[] inputs =
        [
            new("screen base, middle", Uncertain.Triangular(middle)),
            new("screen base, outer third", Uncertain.Triangular(outerThird)),
            .. network.Inputs,
        ];
        int at = 2 + (3 * network.Likely.PlaceOf(vent)), before = 3 * rest.Length;
        int[] takesIn = new int[pieces];
        double[] drawn = new double[3 * all.Length];
        MonteCarlo.Propagate(inputs, 0, (values, _) =>
        {
            values[2..at].CopyTo(drawn);
            values[(at + 3)..].CopyTo(drawn.AsSpan(at - 2));
            for (int i = 0; i < pieces; i++)
            {
                drawn[before + (3 * i)] = PressureCoefficient(places[i], values[0], values[1]);
                values.Slice(at + 1, 2).CopyTo(drawn.AsSpan(before + (3 * i) + 1));
            }

            strip.Redraw(all, drawn);
            strip.SolveAt(air.Speed.MetresPerSecond);
            for (int i = 0; i < pieces; i++)
            {
                takesIn[i] += strip.Flow(rest.Length + i) > 0 ? 1 : 0;
            }
        });
        return [.. places.Select((place, i) => (place, (double)takesIn[i] / MonteCarlo.DrawCount))];
    }

    private static double[] Places(int pieces) => [.. Enumerable.Range(0, pieces).Select(i => (((2.0 * i) + 1) / pieces) - 1)];
}
