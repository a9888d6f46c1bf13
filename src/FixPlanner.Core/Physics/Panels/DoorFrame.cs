using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>The top frame of a door, pulled out by the suction over the side glass while the cabin pressure pushes from inside.</summary>
public static class DoorFrame
{
    /// <summary>Force on side glass and frame together, outward positive.</summary>
    /// <param name="pressureCoefficientAcross">Inside minus outside coefficient; 0.3 to 1.5, more to leeward in a side wind.</param>
    /// <param name="area">Of glass and frame.</param>
    /// <param name="air">Speed, gust and density.</param>
    /// <returns>Force.</returns>
    /// <validity>Window shut.</validity>
    /// <uncertainty>Suction behind the pillar from memory, -1.5 to -0.5: a factor of two.</uncertainty>
    /// <source key="own-derivation" place="pressure difference times area">F = dCp q A</source>
    public static Force PullOut(double pressureCoefficientAcross, Area area, LoadAir air) =>
        PanelLoad.Outward(pressureCoefficientAcross, 0, area, air);

    /// <summary>Bending moment of the frame where it leaves the door at the waist.</summary>
    /// <param name="pull">Force on glass and frame.</param>
    /// <param name="frameHeight">From the waist to the top.</param>
    /// <returns>Moment, outward positive.</returns>
    /// <validity>The pull acts at mid height; the glass passes its share on to the frame, none to the waist seals: an upper bound.</validity>
    /// <uncertainty>The glass channels take up to half.</uncertainty>
    /// <source key="own-derivation" place="cantilever">M = F h / 2</source>
    public static Moment AtTheWaist(Force pull, Length frameHeight) => Moment.FromNewtonMetres(0.5 * pull.Newtons * frameHeight.Metres);

    /// <summary>How far the top of the frame moves out.</summary>
    /// <param name="pull">Force on glass and frame.</param>
    /// <param name="topStiffness">Force at the top corner for each metre of give, measured with a spring balance; above zero.</param>
    /// <returns>Movement.</returns>
    /// <validity>An even load on a cantilever moves its end 3/8 as far as the same force at the end.</validity>
    /// <uncertainty>That of the measured stiffness and of the pull.</uncertainty>
    /// <source key="from-memory" place="beam tables: F h³/8EI against F h³/3EI">d = 0.375 F / k</source>
    /// <exception cref="ArgumentOutOfRangeException">Stiffness not above zero.</exception>
    public static Length TopGap(Force pull, Stiffness topStiffness) =>
        Length.FromMetres(0.375 * pull.Newtons / Valid.Positive(topStiffness.NewtonsPerMetre, "N/m", nameof(topStiffness)));

    /// <summary>Speed at which suction lifts the door off its seal all round.</summary>
    /// <param name="sealForce">Force with which the seal presses on each metre, from a strip of paper and a spring balance; zero or more.</param>
    /// <param name="sealLength">Length of seal that carries the load.</param>
    /// <param name="area">Door area inside the seal, above zero.</param>
    /// <param name="pressureCoefficientAcross">Inside minus outside coefficient, above zero.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <returns>Speed. The frame's corner opens before it: an upper bound.</returns>
    /// <validity>Stiff door; the latch carries nothing outward at the seal.</validity>
    /// <uncertainty>Seal force and pressure each within a third: 25 % on the speed, and the corner goes first.</uncertainty>
    /// <source key="own-derivation" place="suction force against seal force">V = sqrt(2 F' L / (A rho dCp)) - w</source>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static AirSpeed SealLiftsAt(LineLoad sealForce, Length sealLength, Area area, double pressureCoefficientAcross, LoadAir air)
    {
        double held = Valid.NotNegative(sealForce.NewtonsPerMetre, "N/m", nameof(sealForce)) * sealLength.Metres;
        double pulled = Valid.Positive(area.SquareMetres, "m2", nameof(area)) * Valid.Positive(pressureCoefficientAcross, "(a coefficient)");
        return LoadAir.SpeedAt(PressureDifference.FromPascals(held / pulled), air.Density, air.Gust, air.PassingFactor);
    }

    /// <summary>Speed at which the top of the frame has moved out by as much as the seal is pressed in when parked.</summary>
    /// <param name="sealGive">How far the parked door presses the seal in, zero or more.</param>
    /// <param name="topStiffness">Measured at the top corner.</param>
    /// <param name="area">Of glass and frame, above zero.</param>
    /// <param name="pressureCoefficientAcross">Inside minus outside coefficient, above zero.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <returns>Speed at which a gap opens at the top.</returns>
    /// <validity>The seal's own push, which helps the gap to open, left out; old rubber does not follow.</validity>
    /// <uncertainty>30 %; hinges and latch with play make it sooner.</uncertainty>
    /// <source key="own-derivation" place="movement of the frame set to the seal's give">q = k d / (0.375 dCp A)</source>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static AirSpeed TopOpensAt(Length sealGive, Stiffness topStiffness, Area area, double pressureCoefficientAcross, LoadAir air)
    {
        double held = topStiffness.NewtonsPerMetre * Valid.NotNegative(sealGive.Metres, "m", nameof(sealGive));
        double pulled = 0.375 * Valid.Positive(area.SquareMetres, "m2", nameof(area)) * Valid.Positive(pressureCoefficientAcross, "(a coefficient)");
        return LoadAir.SpeedAt(PressureDifference.FromPascals(held / pulled), air.Density, air.Gust, air.PassingFactor);
    }
}
