namespace FixPlanner.Core.Planning.Worth;

/// <summary>
/// The worth of trying one fix before it is made, at a fixed price: the case that can be followed by hand.
/// The trial says 'better' with the stated chances when the cause is there and when it is not.
/// </summary>
/// <param name="Value">Expected points gained by the trial: zero or more.</param>
/// <param name="Bound">What knowing the truth would be worth.</param>
/// <param name="ChanceOfBetter">Chance that the trial says 'better'.</param>
/// <param name="BeliefAfterBetter">Belief in the cause when it does.</param>
/// <param name="BeliefAfterNot">Belief in the cause when it does not.</param>
internal sealed record OneFixTrial(double Value, double Bound, double ChanceOfBetter, double BeliefAfterBetter, double BeliefAfterNot)
{
    /// <summary>Works it out.</summary>
    /// <param name="belief">Chance that the cause is there, 0 to 1.</param>
    /// <param name="gain">Points of the fix when it is.</param>
    /// <param name="price">Points that its money and time would bring elsewhere.</param>
    /// <param name="rightWhenThere">Chance that the trial says 'better' when the cause is there.</param>
    /// <param name="rightWhenNot">Chance that it does not when the cause is not there.</param>
    public static OneFixTrial Of(double belief, double gain, double price, double rightWhenThere, double rightWhenNot)
    {
        double better = (belief * rightWhenThere) + ((1 - belief) * (1 - rightWhenNot));
        double afterBetter = better > 0 ? belief * rightWhenThere / better : belief;
        double afterNot = better < 1 ? belief * (1 - rightWhenThere) / (1 - better) : belief;
        double today = Math.Max((belief * gain) - price, 0);
        double value = (better * Math.Max((afterBetter * gain) - price, 0)) + ((1 - better) * Math.Max((afterNot * gain) - price, 0)) - today;
        return new(Math.Max(0, value), (belief * Math.Max(gain - price, 0)) - today, better, afterBetter, afterNot);
    }
}
