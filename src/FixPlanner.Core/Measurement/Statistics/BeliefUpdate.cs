namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>What was believed of an effect, what was measured, and what is believed after it. One unit throughout.</summary>
/// <param name="PriorMean">Mean before the measurement.</param>
/// <param name="PriorSpread">Standard deviation before the measurement; above zero.</param>
/// <param name="Measured">The measured change.</param>
/// <param name="MeasuredError">Standard error used: widened where few pairs were run.</param>
/// <param name="Mean">Mean after the measurement.</param>
/// <param name="Spread">Standard deviation after the measurement.</param>
/// <param name="Disagree">True when belief and measurement lie further apart than both errors explain.</param>
public sealed record BeliefUpdate(double PriorMean, double PriorSpread, double Measured, double MeasuredError, double Mean, double Spread, bool Disagree)
{
    /// <summary>Chance, after the measurement, that the effect is below zero.</summary>
    public double ChanceBelowZero => MathNet.Numerics.Distributions.Normal.CDF(0, 1, -Mean / Spread);

    /// <summary>Joins belief and measurement, both taken as normal.</summary>
    /// <param name="priorMean">Mean of the belief.</param>
    /// <param name="priorSpread">Standard deviation of the belief; above zero.</param>
    /// <param name="measured">The measured change.</param>
    /// <param name="standardError">Its standard error; above zero.</param>
    /// <param name="degreesOfFreedom">Of that standard error; infinite when it is known.</param>
    /// <returns>The belief after the measurement.</returns>
    /// <validity>Few pairs give an error that is itself uncertain: it is widened by t(0.975) / 1.96.</validity>
    /// <source key="bayes-rules-notes" place="ch. 5, normal-normal model">precision-weighted mean</source>
    /// <exception cref="ArgumentOutOfRangeException">A spread is not above zero.</exception>
    public static BeliefUpdate Of(double priorMean, double priorSpread, double measured, double standardError, double degreesOfFreedom = double.PositiveInfinity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(priorSpread);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardError);
        double error = double.IsFinite(degreesOfFreedom)
            ? standardError * StudentT.Quantile(0.975, degreesOfFreedom) / 1.959963984540054
            : standardError;
        double priorWeight = 1 / (priorSpread * priorSpread);
        double measuredWeight = 1 / (error * error);
        double mean = ((priorMean * priorWeight) + (measured * measuredWeight)) / (priorWeight + measuredWeight);
        bool disagree = Math.Abs(measured - priorMean) > 2 * Math.Sqrt((priorSpread * priorSpread) + (error * error));
        return new(priorMean, priorSpread, measured, error, mean, Math.Sqrt(1 / (priorWeight + measuredWeight)), disagree);
    }
}
