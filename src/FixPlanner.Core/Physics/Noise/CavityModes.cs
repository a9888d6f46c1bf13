using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>
/// The layer of air that spans an opening swings: a swirl crosses it, strikes the far edge, and the pressure of that strike starts the next.
/// A whole number of swirls fits across, so the pitch comes in steps (modes).
/// </summary>
public static class CavityModes
{
    private const double Lag = 0.25;
    private const double SwirlSpeedShare = 0.57;
    private const double HeatRatioTerm = 0.2;

    /// <summary>Pitch of one mode at one speed.</summary>
    /// <param name="mode">n: swirls across the opening, from 1 to 6.</param>
    /// <param name="length">L: opening along the flow, 1 mm to 1.5 m.</param>
    /// <param name="speed">U: air past the opening; above zero, below the speed of sound.</param>
    /// <param name="soundSpeed">c: speed of sound on the day, 250 to 380 m/s.</param>
    /// <returns>The pitch.</returns>
    /// <validity>Sharp edges, smooth oncoming air. A real tone needs both; otherwise the mode is there but weak.</validity>
    /// <uncertainty>First mode 10 to 20 %, higher modes about 5 to 12 %.</uncertainty>
    /// <source key="rossiter-1964" place="constants as in open cavity-mode codes">f = (U / L)(n - 0.25) / (M / sqrt(1 + 0.2 M2) + 1 / 0.57), with the Heller-Bliss term</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Frequency Pitch(int mode, Length length, AirSpeed speed, AirSpeed soundSpeed)
    {
        double lengthM = CheckedLength(mode, length, soundSpeed);
        Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed));
        double speedMs = Valid.Within(speed.MetresPerSecond, 0, soundSpeed.MetresPerSecond, "m/s", nameof(speed));
        return Frequency.FromHertz(Hertz(mode, lengthM, speedMs, soundSpeed.MetresPerSecond));
    }

    /// <summary>The speed at which a mode reaches a given pitch.</summary>
    /// <param name="mode">n: swirls across the opening, from 1 to 6.</param>
    /// <param name="length">L: opening along the flow, 1 mm to 1.5 m.</param>
    /// <param name="pitch">The pitch to be met; above zero.</param>
    /// <param name="soundSpeed">c: speed of sound on the day, 250 to 380 m/s.</param>
    /// <returns>The speed, or nothing when the mode does not reach that pitch below the speed of sound.</returns>
    /// <validity>As for the pitch.</validity>
    /// <uncertainty>As for the pitch.</uncertainty>
    /// <source key="rossiter-1964" place="turned round by bisection">the pitch rises steadily with the speed</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static AirSpeed? SpeedFor(int mode, Length length, Frequency pitch, AirSpeed soundSpeed)
    {
        double lengthM = CheckedLength(mode, length, soundSpeed);
        double targetHz = Valid.Positive(pitch.Hertz, "Hz", nameof(pitch));
        double soundMs = soundSpeed.MetresPerSecond;
        double low = 0;
        double high = soundMs;
        if (Hertz(mode, lengthM, high, soundMs) < targetHz)
        {
            return null;
        }

        while (high - low > 1e-9 * soundMs)
        {
            double middle = (low + high) / 2;
            (low, high) = Hertz(mode, lengthM, middle, soundMs) < targetHz ? (middle, high) : (low, middle);
        }

        return AirSpeed.FromMetresPerSecond((low + high) / 2);
    }

    private static double CheckedLength(int mode, Length length, AirSpeed soundSpeed)
    {
        Valid.Within(mode, 1, 6, "swirls");
        Valid.Within(soundSpeed.MetresPerSecond, 250, 380, "m/s", nameof(soundSpeed));
        return Valid.Within(length.Metres, 1e-3, 1.5, "m", nameof(length));
    }

    private static double Hertz(int mode, double lengthM, double speedMs, double soundMs)
    {
        double mach = speedMs / soundMs;
        return speedMs / lengthM * (mode - Lag) / ((mach / Math.Sqrt(1 + (HeatRatioTerm * mach * mach))) + (1 / SwirlSpeedShare));
    }
}
