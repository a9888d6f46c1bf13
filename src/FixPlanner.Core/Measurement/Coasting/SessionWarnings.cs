namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Every warning of the analysis, worded once. Each says what it means for the result.</summary>
internal static class SessionWarnings
{
    public const string DensityAssumed = "no temperature and pressure were noted for some runs: air of 1.2 kg/m3 is assumed; 3 degrees or 10 hPa between before and after is 1 % of drag";
    public const string OneWay = "only one direction was driven or named: grade does not cancel and a wind that turns looks like an effect";
    public const string DaysNotKnown = "the files carry no date and each holds one configuration: they are treated as different days, each pair with a rolling resistance of its own, which doubles the scatter; say so if they were one day";
    public const string DaysDiffer = "before and after were run on different days: no rolling resistance is shared, and what changed between the days is in the result";
    public const string RollingChanged = "the rolling resistance differs between before and after (tyres, pressures, brakes, load?): the drag result is not to be trusted until that is explained";
    public const string RollingNotShared = "the change touches the rolling resistance, so each pair keeps its own: the scatter is about twice as large";
    public const string NarrowBand = "the band of speeds is under 20 km/h wide: hardly any change can be shown";
    public const string MethodsDisagree = "the two-speed method and the curve fit differ by more than one standard error: look at the single runs";
    public const string DriftSuspected = "drift suspected: taking a steady drift out of the session moves the result by more than its error";
    public const string FewPairs = "fewer than four pairs each: the error is itself uncertain";
    public const string ColdTyres = "the resistance falls through the session: cold tyres at the start look like a gain of whatever was run later; drive 20 minutes first";

    public static string Blocks(string order, bool corrected) => $"order {order}: all of one configuration was run before the other, so drift (tyres, wind, fuel) and change cannot be told apart; "
        + (corrected ? "the wider interval with a straight drift taken out decides" : "with so few pairs even that cannot be taken out") + "; run A B B A";

    public static string Wind(double largest) => $"wind over the limit: {largest:0.0} m/s along the road or noted beside it, limit {SessionAnalysis.WindLimit:0} m/s; wait for the calm of the early morning";

    public static string Rolling(double rolling) => $"the rolling coefficient of {rolling:0.0000} lies outside 0.006 to 0.03: a dragging brake, soft tyres, a wrong mass or a speed in the wrong unit";

    public static string RollingUnlike(double rolling, double known) => $"the rolling coefficient of {rolling:0.0000} is far from the {known:0.0000} that is known of the tyres: a dragging brake, soft tyres, a wrong mass or a head wind";

    public static string Mass(double change) => $"the mass differs by {change:0} kg between before and after: it is taken into account, but only as well as it was weighed";

    public static string MassNotWeighed() => "the same mass is used before and after: a part of 5 kg is 0.7 % of the car";

    public static string Far(string pair) => $"pair {pair} lies far from the others: look for a gust, a lorry or a foot before believing either";

    public static string Brake(string pair) => $"pair {pair} rolls much harder than the others: feel the wheels, a brake may not let go";

    public static string OtherDays(string days) => $"days with only one configuration are not compared: {days}";
}
