using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>What the air does on the slope from the roof end down to where it could land (tailgate edge, boot edge).</summary>
public static class TailSlant
{
    private const double LeastLengthShare = 0.1;

    // Simple body of the 1984 study: slant in degrees, drag coefficient. At 30 degrees the two branches.
    private static readonly (double Degrees, double Drag)[] SimpleBody =
        [(0, 0.250), (5, 0.231), (12.5, 0.230), (25, 0.285), (30, 0.378), (35, 0.257), (40, 0.255), (90, 0.250)];

    /// <summary>Class of a slant.</summary>
    /// <param name="slant">Angle of the line from roof end to landing edge, down from level: 0 to 90 degrees. On a notchback the line to the boot edge.</param>
    /// <param name="lengthShare">Length of the slant over the length of the car, 0 to 0.6.</param>
    /// <returns>The class.</returns>
    /// <validity>Slant at least a tenth of the car's length: a short lip is not a slant.</validity>
    /// <uncertainty>The borders shift by 2 to 4 degrees with the roof's curve, rounding and the layer. If tufts disagree, trust tufts.</uncertainty>
    /// <source key="ahmed-1984" place="drag against slant, from memory">attached below 12, side vortices to 30, unstable 28 to 32, separated above</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static SlantFlow Of(Angle slant, double lengthShare)
    {
        double degrees = Valid.Within(slant.Degrees, 0, 90, "degrees", nameof(slant));
        Valid.Within(lengthShare, 0, 0.6, "(a share)");
        if (lengthShare < LeastLengthShare)
        {
            return SlantFlow.TooShort;
        }

        return degrees switch
        {
            < 12 => SlantFlow.Attached,
            < 28 => SlantFlow.SideVortices,
            <= 32 => SlantFlow.Unstable,
            _ => SlantFlow.Separated,
        };
    }

    /// <summary>Drag coefficient of the simple body whose slant was varied: for the shape of the curve, never for a car's own value.</summary>
    /// <param name="slant">0 to 90 degrees.</param>
    /// <returns>Straight lines between the measured points; at 30 degrees the high branch (the low one is 0.260).</returns>
    /// <validity>Smooth body near the ground, long slant.</validity>
    /// <uncertainty>3 % on the points, from memory; between 28 and 32 degrees the flow jumps between branches.</uncertainty>
    /// <source key="ahmed-1984" place="drag against slant, from memory; 90 degrees taken as the blunt end">table</source>
    /// <exception cref="ArgumentOutOfRangeException">Angle outside its range.</exception>
    public static double SimpleBodyDragCoefficient(Angle slant)
    {
        double degrees = Valid.Within(slant.Degrees, 0, 90, "degrees", nameof(slant));
        int above = Array.FindIndex(SimpleBody, 1, point => point.Degrees >= degrees);
        (double lowDegrees, double lowDrag) = SimpleBody[above - 1];
        (double highDegrees, double highDrag) = SimpleBody[above];
        return lowDrag + ((highDrag - lowDrag) * (degrees - lowDegrees) / (highDegrees - lowDegrees));
    }

    /// <summary>True when a change may be advised that ends at this slant.</summary>
    /// <param name="slant">0 to 90 degrees.</param>
    /// <returns>False from 25 to 33 degrees: nobody is sent into or next to the unstable range.</returns>
    /// <validity>Long slants.</validity>
    /// <uncertainty>The margin of 3 degrees on the low side and 1 on the high side is our own.</uncertainty>
    /// <source key="own choice" place="never recommend landing at 28 to 32 degrees">a margin around the unstable range</source>
    /// <exception cref="ArgumentOutOfRangeException">Angle outside its range.</exception>
    public static bool MayBeAdvised(Angle slant) => Valid.Within(slant.Degrees, 0, 90, "degrees", nameof(slant)) is < 25 or > 33;
}

/// <summary>What the air does on a sloping tail.</summary>
public enum SlantFlow
{
    /// <summary>Too short to count: the air leaves at the roof end or follows a lip.</summary>
    TooShort,

    /// <summary>Follows it.</summary>
    Attached,

    /// <summary>Follows it, with a vortex along each side: drag and rear lift rise with the angle.</summary>
    SideVortices,

    /// <summary>Jumps between following and leaving.</summary>
    Unstable,

    /// <summary>Leaves at its upper edge.</summary>
    Separated,
}
