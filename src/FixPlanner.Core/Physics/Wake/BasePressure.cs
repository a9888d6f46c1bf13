using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Wake;

/// <summary>What a manometer on the tail says about drag.</summary>
public static class BasePressure
{
    /// <summary>Change of drag area that a change of pressure on the tail speaks for.</summary>
    /// <param name="coefficientChange">Mean base pressure coefficient after minus before; above zero = recovered.</param>
    /// <param name="baseArea">Area of the tail that lies in the wake, zero or more.</param>
    /// <returns>Change of drag area; below zero = less drag.</returns>
    /// <validity>The mean of at least four taps spread over the base. What the part itself drags, and what it changes elsewhere, is not in it.</validity>
    /// <uncertainty>Taps that read 0.01 apart from day to day make 0.016 m2 on a square back: as much as most fixes.</uncertainty>
    /// <source key="from-memory" place="Hucho, chapter 4">dCdA = -dCpb Ab</source>
    /// <exception cref="ArgumentOutOfRangeException">Area below zero.</exception>
    public static DragAreaChange DragAreaChange(double coefficientChange, Area baseArea) =>
        Quantities.DragAreaChange.FromSquareMetres(-coefficientChange * Valid.NotNegative(baseArea.SquareMetres, "m2", nameof(baseArea)));

    /// <summary>Share of the drag that the suction on the tail makes.</summary>
    /// <param name="baseCoefficient">Mean base pressure coefficient, usually below zero.</param>
    /// <param name="baseArea">Area of the tail in the wake.</param>
    /// <param name="dragArea">Of the whole car, above zero.</param>
    /// <returns>Share, 0 to 1 for a usual car.</returns>
    /// <validity>As the change of drag area.</validity>
    /// <uncertainty>Base coefficient -0.25 to -0.05 unless measured: a factor of two.</uncertainty>
    /// <source key="from-memory" place="Hucho, chapter 4">-Cpb Ab / CdA</source>
    /// <exception cref="ArgumentOutOfRangeException">Drag area not above zero, or base area below zero.</exception>
    public static double ShareOfDrag(double baseCoefficient, Area baseArea, DragArea dragArea) =>
        -baseCoefficient * Valid.NotNegative(baseArea.SquareMetres, "m2", nameof(baseArea)) / Valid.Positive(dragArea.SquareMetres, "m2", nameof(dragArea));

    /// <summary>Pressure coefficient from a manometer reading.</summary>
    /// <param name="reading">Tap minus the reference of still air.</param>
    /// <param name="speed">Of the air, above zero.</param>
    /// <param name="density">Of the air.</param>
    /// <returns>Cp.</returns>
    /// <validity>Reference port that really reads still air: a damped bottle in the cabin does not.</validity>
    /// <uncertainty>3 % of speed is 6 % of Cp; 2 Pa of reading at 80 km/h is 0.007.</uncertainty>
    /// <source key="definition" place="pressure coefficient">Cp = (p - p0) / q</source>
    /// <exception cref="ArgumentOutOfRangeException">Speed not above zero.</exception>
    public static double Coefficient(PressureDifference reading, AirSpeed speed, AirDensity density)
    {
        double metresPerSecond = Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed));
        return reading.Pascals / (0.5 * density.KilogramsPerCubicMetre * metresPerSecond * metresPerSecond);
    }
}
