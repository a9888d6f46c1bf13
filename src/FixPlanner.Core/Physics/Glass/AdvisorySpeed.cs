using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>The speed up to which a pane is believed to stay in, with a margin of two. Advice, never a certificate.</summary>
/// <param name="Advised">From the low end of the hold, rounded down to 5 km/h, and capped where nobody found the hold sound.</param>
/// <param name="IfTypical">From the middle of the hold, not rounded: only to show how much the unknown hold costs.</param>
/// <param name="CappedByOriginalTopSpeed">True when the original top speed of the car is the limit.</param>
public sealed record AdvisorySpeed(AirSpeed Advised, AirSpeed IfTypical, bool CappedByOriginalTopSpeed)
{
    /// <summary>Load at the advised speed may be this many times larger before the low end of the hold is reached.</summary>
    public const double SafetyFactor = 2;

    /// <summary>Works out the advice.</summary>
    /// <param name="pane">The pane.</param>
    /// <param name="hold">What is believed of its edge.</param>
    /// <param name="coefficientAcross">High end of the pressure coefficient inside minus outside, above zero.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <param name="originalTopSpeed">Of the car as built; null if not known.</param>
    /// <returns>The advice.</returns>
    /// <validity>Windows shut. Above the car's original top speed nothing is advised unless a look found the hold sound.</validity>
    /// <uncertainty>The hold: between its low and high end the speed changes by a factor of 1.8 and more.</uncertainty>
    /// <source key="own-derivation" place="edge load against hold">V = sqrt(2 r / (SF gamma b dCp f rho)) - w</source>
    /// <exception cref="ArgumentOutOfRangeException">Coefficient not above zero.</exception>
    public static AdvisorySpeed Of(Pane pane, GlassHold hold, double coefficientAcross, LoadAir air, RoadSpeed? originalTopSpeed)
    {
        double advised = Limit(pane, hold.Low, coefficientAcross, air).KilometresPerHour;
        bool capped = originalTopSpeed is { } top && !hold.FoundSound && advised > top.KilometresPerHour;
        double rounded = 5 * Math.Floor((capped ? originalTopSpeed!.Value.KilometresPerHour : advised) / 5 * (1 + 1e-12));
        return new(AirSpeed.FromKilometresPerHour(rounded), Limit(pane, hold.Middle, coefficientAcross, air), capped);
    }

    /// <summary>Speed at which the peak edge load times the safety factor reaches a hold.</summary>
    /// <param name="pane">The pane.</param>
    /// <param name="hold">Hold, zero or more.</param>
    /// <param name="coefficientAcross">Pressure coefficient inside minus outside, above zero.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <returns>Speed, not rounded.</returns>
    /// <validity>As <see cref="Of"/>.</validity>
    /// <uncertainty>As <see cref="Of"/>.</uncertainty>
    /// <source key="own-derivation" place="edge load against hold">V = sqrt(2 r / (SF gamma b dCp f rho)) - w</source>
    /// <exception cref="ArgumentOutOfRangeException">Coefficient not above zero.</exception>
    public static AirSpeed Limit(Pane pane, LineLoad hold, double coefficientAcross, LoadAir air)
    {
        double peakPa = hold.NewtonsPerMetre
            / (SafetyFactor * pane.PeakEdgeFactor * pane.ShortSide.Metres * Valid.Positive(coefficientAcross, "(a coefficient)"));
        return LoadAir.SpeedAt(PressureDifference.FromPascals(peakPa), air.Density, air.Gust, air.PassingFactor);
    }
}
