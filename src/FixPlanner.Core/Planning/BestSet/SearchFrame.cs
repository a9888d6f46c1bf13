namespace FixPlanner.Core.Planning.BestSet;

/// <summary>The state of one node of the search: what is in, what is still open, what is left of terms, noise, money and time.</summary>
internal sealed class SearchFrame(int items, int terms, int sources)
{
    public const byte Open = 0;
    public const byte In = 1;
    public const byte Out = 2;

    public readonly byte[] State = new byte[items];
    public readonly int[] Active = new int[items];
    public readonly double[] Left = new double[terms];
    public readonly double[] Power = new double[sources];
    public int ActiveCount;
    public double Additive;
    public double Noise;
    public double Load;
    public double Money;
    public double Time;
    public double Value;

    public void CopyFrom(SearchFrame other, int itemCount, int termCount, int sourceCount)
    {
        Array.Copy(other.State, State, itemCount);
        Array.Copy(other.Active, Active, other.ActiveCount);
        Array.Copy(other.Left, Left, termCount);
        Array.Copy(other.Power, Power, sourceCount);
        ActiveCount = other.ActiveCount;
        Additive = other.Additive;
        Noise = other.Noise;
        Load = other.Load;
        Money = other.Money;
        Time = other.Time;
        Value = other.Value;
    }
}
