using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>What panels added behind a square tail can take off the drag, as a share of it. Minus is less drag.</summary>
public static class TailAddition
{
    private const double BestDepth = 0.13;
    private const double SteepestTaper = 15;

    /// <summary>Upright boards behind the edges (a cavity).</summary>
    /// <param name="depthShare">Depth over the smaller side of the tail, 0 to 0.5.</param>
    /// <returns>Change of drag as a share, worst to best in numerical order.</returns>
    /// <validity>Square back with clean edges. On soft edges the boards also give the leaving edge that was missing.</validity>
    /// <uncertainty>Half of the figure either way: one second-hand value at one depth; the way up to it is a straight line of our own, level beyond.</uncertainty>
    /// <source key="hucho" place="sect. 8.5.4.5, second-hand">5 % at a depth of 0.13</source>
    /// <exception cref="ArgumentOutOfRangeException">Depth outside its range.</exception>
    public static Triangle Cavity(double depthShare)
    {
        Valid.Within(depthShare, 0, 0.5, "(a share)");
        double reach = Math.Min(depthShare / BestDepth, 1);
        return new(-0.075 * reach, -0.05 * reach, -0.025 * reach);
    }

    /// <summary>Boards that lean inward (a short boat-tail).</summary>
    /// <param name="lean">Angle inward from the direction of travel, 0 to 25 degrees.</param>
    /// <returns>Change of drag as a share; above 15 degrees the flow leaves them and the gain is gone.</returns>
    /// <validity>Square back, boards of about a fifth of the tail's height. A share of the car's own drag is carried over, not the model's number.</validity>
    /// <uncertainty>Measured on a model trailer of high drag (saving 0.06 to 0.08 in Cd at 9 to 10 degrees); its own coefficient, 0.7 to 1.0, is from memory.</uncertainty>
    /// <source key="hsu-hammache-browand" place="abstract">0.06 to 0.08 over 0.7 to 1.0</source>
    /// <exception cref="ArgumentOutOfRangeException">Angle outside its range.</exception>
    public static Triangle LeaningBoards(Angle lean)
    {
        double degrees = Valid.Within(lean.Degrees, 0, 25, "degrees", nameof(lean));
        if (degrees > SteepestTaper)
        {
            return new(-0.05, 0, 0.10);
        }

        const double best = 9.5;
        double reach = degrees <= best ? degrees / best : 1 - ((degrees - best) / (2 * (SteepestTaper - best)));
        return new(-0.11 * reach, -0.075 * reach, -0.03 * reach);
    }
}
