namespace FixPlanner.Simulation;

/// <summary>Draws that the simulation needs, from one seed.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    public bool Happens(double share) => random.NextDouble() < share;

    public double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    public int Whole(int low, int high) => random.Next(low, high + 1);

    public T OneOf<T>(IReadOnlyList<T> items) => items[random.Next(items.Count)];

    /// <summary>A number in proportion to the weights.</summary>
    public int Weighted(IReadOnlyList<double> weights)
    {
        double left = random.NextDouble() * weights.Sum();
        for (int i = 0; i < weights.Count - 1; i++)
        {
            left -= weights[i];
            if (left < 0)
            {
                return i;
            }
        }

        return weights.Count - 1;
    }

    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
