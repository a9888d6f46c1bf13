using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>
/// The vent network of one car as it is and with work done, with what was solved of it over the draws. An answer that does not touch the ways of
/// the air leaves all of it standing: networks are kept by the facts they are made from, solutions by network and air.
/// </summary>
internal sealed class CarNetworks
{
    // A solution is 0.2 MB: enough for the lines of one plan, and no more.
    private const int MostSolutions = 16;

    private static readonly Kept<OldCarFacts, CarNetworks> Cars = new(2);

    private readonly Kept<string, UncertainNetwork> worked = new(MostSolutions);
    private readonly Kept<(UncertainNetwork, AirOnCar, int), SolvedDraws> solved = new(MostSolutions);
    private readonly Kept<(UncertainNetwork, PaneInNetwork, double, int), GlassAtSpeed> glass = new(MostSolutions);
    private readonly Kept<(UncertainNetwork, Triangle, int), PropagatedOutput> freshAir = new(MostSolutions);
    private readonly Kept<(string, int), Triangle?> ram = new(MostSolutions);
    private readonly Kept<double, IReadOnlyList<VentAnswer>> answers = new(4);

    private CarNetworks(OldCarFacts facts) => Now = OldCarVents.Build(facts);

    /// <summary>An ordinary day at 80 km/h, a speed that everybody drives: shares and air changes are told for it.</summary>
    public static AirOnCar UsualAir { get; } = new(RoadSpeed.FromKilometresPerHour(80), AirDensity.FromKilogramsPerCubicMetre(1.2), Temperature.FromDegreesCelsius(20));

    /// <summary>The network of the car as it is.</summary>
    public UncertainNetwork Now { get; }

    /// <summary>Draws of its inputs.</summary>
    public InputDraws Draws { get; } = new();

    /// <summary>The networks of a car.</summary>
    public static CarNetworks Of(OldCarFacts facts) => Cars.Of(facts, () => new(facts));

    /// <summary>The network with work done on these ways; that of the car as it is when there are none.</summary>
    public UncertainNetwork With(IReadOnlyList<AirWay> ways) => ways.Count == 0 ? Now : worked.Of(Key(ways), () => AirWays.With(Now, ways));

    /// <summary>The network with, on each way, the one fix that closes it most.</summary>
    public UncertainNetwork Best(IReadOnlyList<AirWay> ways) => worked.Of($"most {Key(ways)}", () => AirWays.Best(Now, ways));

    /// <summary>A network of this car solved in every draw, or in the first ones.</summary>
    public SolvedDraws Solved(UncertainNetwork network, AirOnCar air, int draws = MonteCarlo.DrawCount) => solved.Of((network, air, draws), () => SolvedDraws.Of(network, air, Draws, draws));

    /// <summary>Pull on the rear glass in a gust on the cold day, as the car is and with another network.</summary>
    public GlassAtSpeed Glass(UncertainNetwork after, PaneInNetwork pane, double kmh, int draws = MonteCarlo.DrawCount) => glass.Of((after, pane, kmh, draws), () =>
    {
        AirOnCar air = AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(kmh) };
        return SealingAndGlass.Compare(Solved(Now, air, draws), Solved(after, air, draws), pane, new LoadAir(default));
    });

    /// <summary>Change of the air changes of the cabin in an hour with another network, in <see cref="UsualAir"/>.</summary>
    public PropagatedOutput FreshAir(UncertainNetwork after, Triangle cabinCubicMetres, int draws = MonteCarlo.DrawCount) => freshAir.Of((after, cabinCubicMetres, draws), () =>
    {
        (SolvedDraws old, SolvedDraws now) = (Solved(Now, UsualAir, draws), Solved(after, UsualAir, draws));
        DrawnInput volume = DrawnInput.Of(new("cabin_volume_m3", Uncertain.Triangular(cabinCubicMetres)));
        double[] change = SolvedDraws.Each(draw => 3600 * (now.Entering(draw, Compartment.Cabin) - old.Entering(draw, Compartment.Cabin)) / volume.Values[draw], draws);
        return DrawnOutput.Summed(draws < MonteCarlo.DrawCount ? [] : [volume, .. old.Inputs.Concat(now.Inputs).Distinct()], change);
    });

    /// <summary>What work leaves of the pressure that drives air from the inlet into the engine bay, over that before; null where nothing drives it in.</summary>
    public Triangle? RamLeft(IReadOnlyList<AirWay> ways, int draws = MonteCarlo.DrawCount) => ram.Of((Key(ways), draws), () =>
    {
        (SolvedDraws old, SolvedDraws now) = (Solved(Now, UsualAir, draws), Solved(With(ways), UsualAir, draws));
        double[] inlet = old.Inputs[3 * Now.Likely.PlaceOf(OldCarVents.BayIn)].Values;
        double Drives(SolvedDraws solved, int draw) => inlet[draw] - solved.Coefficient(draw, Compartment.Bay, default);
        double[] left = SolvedDraws.Each(draw => Drives(old, draw) > 0.05 ? Math.Clamp(Drives(now, draw) / Drives(old, draw), 0, 3) : double.NaN, draws);
        return DrawnOutput.Summed([], left).Spread is { } s ? new Triangle(s.Low, s.Likely, s.High) : null;
    });

    /// <summary>Air changes of the cabin in an hour as the car is, in <see cref="UsualAir"/>.</summary>
    public Spread AirChanges(Triangle cabinCubicMetres, int draws = MonteCarlo.DrawCount)
    {
        SolvedDraws now = Solved(Now, UsualAir, draws);
        DrawnInput volume = DrawnInput.Of(new("cabin_volume_m3", Uncertain.Triangular(cabinCubicMetres)));
        return DrawnOutput.Range(SolvedDraws.Each(draw => 3600 * now.Entering(draw, Compartment.Cabin) / volume.Values[draw], draws));
    }

    /// <summary>For each vent which way it blows up to a speed.</summary>
    public IReadOnlyList<VentAnswer> Answers(CarVents car, double fastestKmh) => answers.Of(fastestKmh, () => VentAnswers.Of(car, fastestKmh));

    private static string Key(IReadOnlyList<AirWay> ways) =>
        string.Join(';', ways.Select(w => $"{w.Opening} {w.LeftShare.Low:R} {w.LeftShare.Likely:R} {w.LeftShare.High:R}"));
}
