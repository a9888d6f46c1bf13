using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>The pitch of a bar, tube or aerial that stands clear in the wind.</summary>
public static class BarShedding
{
    private const double NoSheddingGap = 0.35;
    private const double RegularGap = 0.5;
    private const double AirViscosity = 1.5e-5;

    /// <summary>Pitch of the swirls that leave a bar: shedding number times speed over width.</summary>
    /// <param name="section">Cut through the bar.</param>
    /// <param name="width">d: size of the bar across the flow, 1 mm to 0.5 m.</param>
    /// <param name="speed">U: air at the bar, which above the roof is up to a third faster than the road speed; above zero.</param>
    /// <param name="gapToSkin">Clear height under the bar; leave out when it stands far from the body.</param>
    /// <returns>The pitch with its range, or nothing when the bar lies within 0.35 widths of the skin.</returns>
    /// <validity>Round bars for U·d/ν from 300 to 200,000, others above about 1,000; outside it the answer is marked unsteady. Long bar, air square to it.</validity>
    /// <uncertainty>Shedding number within 5 to 12 %; the speed of the air at the bar dominates.</uncertainty>
    /// <source key="chassis-text" place="sect. 5.6.4.3, eq. 5.27">f = St U / d</source>
    /// <source key="bosch-1996" place="abstract, square bar near a wall">no regular shedding below a gap of 0.35 widths, regular above 0.5</source>
    /// <exception cref="ArgumentOutOfRangeException">Width or speed outside the range.</exception>
    public static Shedding Of(BarSection section, Length width, AirSpeed speed, Length? gapToSkin = null)
    {
        double widthM = Valid.Within(width.Metres, 1e-3, 0.5, "m", nameof(width));
        double speedMs = Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed));
        double gaps = gapToSkin is { } gap ? gap.Metres / widthM : double.PositiveInfinity;
        if (gaps < NoSheddingGap)
        {
            return Shedding.None;
        }

        double reynolds = speedMs * widthM / AirViscosity;
        bool regular = gaps >= RegularGap && reynolds >= LowestReynolds(section) && reynolds <= HighestReynolds(section);
        Triangle number = SheddingNumber(section);
        Triangle hertz = number.Scaled(speedMs / widthM);
        return new(
            regular ? SheddingKind.Tone : SheddingKind.Unsteady,
            Frequency.FromHertz(hertz.Low),
            Frequency.FromHertz(hertz.Likely),
            Frequency.FromHertz(hertz.High));
    }

    /// <summary>Shedding (Strouhal) number of a section, with its range.</summary>
    /// <param name="section">Cut through the bar.</param>
    /// <returns>St, without unit.</returns>
    /// <validity>Below the speed at which the layer on a round bar turns turbulent, which parts of a car do not reach.</validity>
    /// <uncertainty>The range given: spread between sources, and for angle sections between shapes.</uncertainty>
    /// <source key="wake-page" place="last paragraph">round 0.20, square 0.13</source>
    /// <source key="fage-1927" place="from memory">flat strip across the flow 0.145</source>
    /// <source key="okajima-1982" place="abstract; values from memory">strip along the flow 0.08 to 0.09, with a jump near a side ratio of 2 to 3</source>
    public static Triangle SheddingNumber(BarSection section) => section switch
    {
        BarSection.Round => new(0.18, 0.20, 0.21),
        BarSection.Square => new(0.12, 0.13, 0.135),
        BarSection.FlatAcrossFlow => new(0.14, 0.145, 0.15),
        BarSection.AngleOrH => new(0.12, 0.135, 0.15),
        BarSection.StripAlongFlow => new(0.08, 0.085, 0.09),
        _ => throw new ArgumentOutOfRangeException(nameof(section), section, "not a section"),
    };

    private static double LowestReynolds(BarSection section) => section == BarSection.Round ? 300 : 1000;

    // A section with sharp edges sheds at the same number however fast the air is.
    private static double HighestReynolds(BarSection section) => section == BarSection.Round ? 2e5 : double.PositiveInfinity;
}
