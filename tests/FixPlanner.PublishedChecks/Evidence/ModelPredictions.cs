using FixPlanner.Core.Physics.Cooling;
using FixPlanner.Core.Physics.Noise;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks.Evidence;

/// <summary>Ranges that come from a physics model and not from the rule pack: the model at every corner of what was not stated.</summary>
internal static class ModelPredictions
{
    private static readonly AirSpeed Speed = AirSpeed.FromKilometresPerHour(100);
    private static readonly AirDensity Air = AirDensity.FromKilogramsPerCubicMetre(1.2);
    private static readonly AirSpeed Sound = AirSpeed.FromMetresPerSecond(340);

    public static Interval Of(EvidenceRow row) => row.PredictedBy switch
    {
        "cabin-pitch" => CabinPitch(),
        "cooling-drag" => Interval.Of([.. SealedAreas().Select(square => 100 * square / row.Base.Low / FrontalArea.High), .. SealedAreas().Select(square => 100 * square / row.Base.Low / FrontalArea.Low)]),
        "cooling-drag-coefficient" => Interval.Of([.. SealedAreas().Select(square => -square / FrontalArea.High), .. SealedAreas().Select(square => -square / FrontalArea.Low)]),
        "leaning-boards" => LeaningBoards(),
        "roof-box" => RoofBox(row.Body == "SUV" ? new(0.85, 1.1) : new(0.60, 0.75)),
        _ => throw new InvalidDataException($"{row.Id}: no model is called {row.PredictedBy}"),
    };

    private static Interval FrontalArea { get; } = new(1.6, 2.1);

    private static Interval CabinPitch()
    {
        Resonance[] corners = [Cabin(0.10, 4), Cabin(0.25, 2.2)];
        return Interval.Of(corners.Min(corner => corner.Low.Hertz), corners.Max(corner => corner.High.Hertz));
    }

    private static Resonance Cabin(double openingM2, double cabinM3) =>
        Resonance.OfCabin(Area.FromSquareMetres(openingM2), Volume.FromCubicMetres(cabinM3), Sound);

    // Nearly all of the inlet sealed, at the ends of what the cooling model assumes; the loss of a fully shut grille has no figure.
    private static IEnumerable<double> SealedAreas() =>
        from pressure in new[] { 0.4, 0.7 }
        from loss in new[] { (Core: 4.0, Exit: 2.0), (Core: 7.0, Exit: 5.0) }
        from face in new[] { 0.13, 0.20 }
        let open = new CoolingPath
        {
            CoreFace = Area.FromSquareMetres(face),
            OpenShare = 0.5,
            PressureCoefficientDifference = pressure,
            CoreLoss = loss.Core,
            ExitLoss = loss.Exit,
        }
        select CoolingDrag.OfBlanking(open, 0.95, Speed, Air).SquareMetres;

    // A closed box by what boxes are: 0.6 to 0.9 m wide, 0.3 to 0.45 m tall, from a faired nose (0.4) to a blunt one (0.9), in the suction over a roof.
    // The test describes neither box nor car. What the box does to the flow behind it is not in the model.
    private static Interval RoofBox(Interval carSquareMetres)
    {
        DragAreaChange Box(double coefficient, double wide, double tall, double pressure) =>
            ProtrudingDrag.Of(coefficient, Area.FromSquareMetres(wide * tall), pressure, Length.FromMetres(tall), Length.FromMillimetres(30));
        double least = Box(0.4, 0.6, 0.3, -0.1).SquareMetres, most = Box(0.9, 0.9, 0.45, -0.5).SquareMetres;
        return new(100 * least / carSquareMetres.High, 100 * most / carSquareMetres.Low);
    }

    private static Interval LeaningBoards()
    {
        Triangle share = TailAddition.LeaningBoards(Angle.FromDegrees(9.5));
        return Interval.Of(100 * share.Low, 100 * share.High);
    }
}
