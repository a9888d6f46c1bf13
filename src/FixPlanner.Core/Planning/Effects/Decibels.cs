namespace FixPlanner.Core.Planning.Effects;

/// <summary>Between decibels and energies relative to a reference.</summary>
/// <source key="from-memory" place="definition of the level of a power quantity">L = 10 log10(E / E0)</source>
internal static class Decibels
{
    /// <summary>Decibels per unit of natural logarithm of an energy ratio.</summary>
    public const double PerNeper = 4.3429448190325183;

    /// <summary>Fraction of the energy that goes away when the level drops by so many dB.</summary>
    public static double Removed(double decibels) => 1 - Math.Pow(10, -decibels / 10);

    /// <summary>Energy added, relative to the reference 1, when the level there rises by so many dB.</summary>
    public static double Added(double decibels) => Math.Pow(10, decibels / 10) - 1;

    /// <summary>Drop of level from one energy to another, in dB; plus is quieter.</summary>
    public static double Drop(double before, double after) => PerNeper * Math.Log(before / after);
}
