using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>What the cooling air costs in drag: it is picked up at road speed and leaves slower.</summary>
public static class CoolingDrag
{
    /// <summary>Drag area of the cooling stream.</summary>
    /// <param name="face">A_f: area of the core.</param>
    /// <param name="faceSpeedShare">v/V: speed in the face over the road speed, 0 to 0.6.</param>
    /// <param name="exitSpeedShare">v_e/V: speed of the leaving air over the road speed, 0 to 1; 0 when it is lost in the bay.</param>
    /// <param name="exitAngle">Angle of the leaving air from the direction of travel, rearward; 90 degrees when it leaves downward.</param>
    /// <returns>The drag area that the stream costs.</returns>
    /// <validity>Momentum of the stream alone. How it disturbs the flow outside is not in it and may be as large, either way.</validity>
    /// <uncertainty>30 %, mostly from v/V.</uncertainty>
    /// <source key="momentum-balance" place="own derivation; agrees with Katz p. 538: most cars 0.03 to 0.05 in Cd">dCdA = 2 A_f (v/V)(1 - (v_e/V) cos)</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static DragArea Of(Area face, double faceSpeedShare, double exitSpeedShare, Angle exitAngle)
    {
        Valid.Within(faceSpeedShare, 0, 0.6, "(a ratio)");
        Valid.Within(exitSpeedShare, 0, 1, "(a ratio)");
        Valid.Within(exitAngle.Degrees, 0, 180, "degrees", nameof(exitAngle));
        return DragArea.FromSquareMetres(2 * face.SquareMetres * faceSpeedShare * (1 - (exitSpeedShare * Math.Cos(exitAngle.Radians))));
    }

    /// <summary>What blanking takes off the drag, without the fan.</summary>
    /// <param name="open">The way of the air before.</param>
    /// <param name="blankedShare">Share of the inlet that is blanked, 0 to 0.95.</param>
    /// <param name="speed">Air past the car, 5 to 70 m/s.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Change of drag area; minus is less. Its price in heat stands in the margin.</returns>
    /// <validity>Leaving air taken as lost in the bay, which makes the gain an upper estimate.</validity>
    /// <uncertainty>30 %.</uncertainty>
    /// <source key="momentum-balance" place="own derivation">difference of two streams</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static DragAreaChange OfBlanking(CoolingPath open, double blankedShare, AirSpeed speed, AirDensity density)
    {
        double Area(CoolingPath path)
        {
            CoolingPath still = path with { FanPressure = default, FanFreeFlow = default };
            double share = still.FaceSpeed(speed, density).MetresPerSecond / Valid.Within(speed.MetresPerSecond, 5, 70, "m/s", nameof(speed));
            return Of(path.CoreFace, share, 0, Angle.FromDegrees(90)).SquareMetres;
        }

        return DragAreaChange.FromSquareMetres(Area(open with { BlankedShare = blankedShare }) - Area(open));
    }
}
