namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// One place in the order of summing out: which tables meet there, and where the entry of each is found for every state.
/// The shape hangs on what was asked only, not on the numbers, so it serves every answer of a question.
/// </summary>
internal sealed class Bucket
{
    private readonly int[][] factorAt;
    private readonly int[][] childAt;

    /// <summary>Lays out a place.</summary>
    /// <param name="variable">The cause that is summed out here.</param>
    /// <param name="factors">Tables that start here.</param>
    /// <param name="children">Places whose sums arrive here.</param>
    /// <param name="at">The bucket of a place.</param>
    /// <param name="place">Place of each cause in the order.</param>
    public Bucket(int variable, IReadOnlyList<Factor> factors, IReadOnlyList<int> children, Func<int, Bucket> at, int[] place)
    {
        (Factors, Children) = (factors, children);
        Scope = [variable, .. factors.SelectMany(f => f.Scope).Concat(children.SelectMany(c => at(c).Scope.Skip(1))).Where(v => v != variable).Distinct().OrderBy(v => place[v])];
        Parent = Scope.Length > 1 ? place[Scope[1]] : -1;
        factorAt = [.. factors.Select(f => Spread(Scope, f.Scope))];
        childAt = [.. children.Select(c => Spread(Scope, at(c).Scope.AsSpan(1)))];
    }

    /// <summary>Cause numbers: the one summed out here first, then in the order of summing out.</summary>
    public int[] Scope { get; }

    /// <summary>Place that the sum goes to, or -1.</summary>
    public int Parent { get; }

    /// <summary>Tables that start here.</summary>
    public IReadOnlyList<Factor> Factors { get; }

    /// <summary>Places whose sums arrive here.</summary>
    public IReadOnlyList<int> Children { get; }

    /// <summary>For each state of the parent, the state of the others here.</summary>
    /// <param name="parent">The bucket that the sum goes to.</param>
    /// <returns>The states.</returns>
    public int[] From(Bucket parent) => Spread(parent.Scope, Scope.AsSpan(1));

    /// <summary>Fills the product of everything that meets here, and its sum over the cause, scaled to a largest entry of 1.</summary>
    /// <param name="prior">Chance of the cause before anything was answered.</param>
    /// <param name="messageOf">The sum that came from a place.</param>
    /// <param name="tableOf">The table to use for each factor; null means its own.</param>
    /// <param name="product">One entry a state.</param>
    /// <param name="message">One entry for each state of the others.</param>
    /// <returns>Natural logarithm of the scale.</returns>
    public double SumOut(double prior, Func<int, double[]> messageOf, Func<Factor, double[]>? tableOf, double[] product, double[] message)
    {
        for (int s = 0; s < product.Length; s++)
        {
            product[s] = (s & 1) == 1 ? prior : 1 - prior;
        }

        for (int f = 0; f < factorAt.Length; f++)
        {
            Multiply(product, tableOf is null ? Factors[f].Table : tableOf(Factors[f]), factorAt[f]);
        }

        for (int c = 0; c < childAt.Length; c++)
        {
            Multiply(product, messageOf(Children[c]), childAt[c]);
        }

        double most = 0;
        for (int s = 0; s < message.Length; s++)
        {
            message[s] = product[2 * s] + product[(2 * s) + 1];
            most = Math.Max(most, message[s]);
        }

        // Scaling keeps long walk-rounds from underflowing.
        for (int s = 0; s < message.Length; s++)
        {
            message[s] /= most;
        }

        return Math.Log(most);
    }

    /// <summary>The joint chance of the scope given everything, up to one factor, from that of the parent.</summary>
    /// <param name="product">The product here.</param>
    /// <param name="message">Its sum.</param>
    /// <param name="parent">The joint chance of the parent's scope; null without a parent.</param>
    /// <param name="fromParent">For each state of the parent, the state of the others here.</param>
    /// <param name="joint">Filled.</param>
    /// <param name="around">Room for as many entries as the message.</param>
    /// <returns>Chance of the cause.</returns>
    public static double Join(double[] product, double[] message, double[]? parent, int[] fromParent, double[] joint, double[] around)
    {
        int others = message.Length;
        Array.Fill(around, parent is null ? 1 : 0, 0, others);
        if (parent is not null)
        {
            for (int s = 0; s < fromParent.Length; s++)
            {
                around[fromParent[s]] += parent[s];
            }
        }

        double there = 0, gone = 0;
        for (int s = 0; s < others; s++)
        {
            // A message is zero only where the joint is zero too.
            double factor = parent is null ? 1 : message[s] == 0 ? 0 : around[s] / message[s];
            gone += joint[2 * s] = product[2 * s] * factor;
            there += joint[(2 * s) + 1] = product[(2 * s) + 1] * factor;
        }

        return there / (there + gone);
    }

    private static void Multiply(double[] product, double[] table, int[] at)
    {
        for (int s = 0; s < product.Length; s++)
        {
            product[s] *= table[at[s]];
        }
    }

    // For each state of the wide scope, the state of the narrow one.
    private static int[] Spread(int[] wide, ReadOnlySpan<int> narrow)
    {
        int[] at = new int[1 << wide.Length];
        for (int k = 0, filled = 1; k < wide.Length; k++, filled <<= 1)
        {
            int position = narrow.IndexOf(wide[k]);
            int bit = position < 0 ? 0 : 1 << position;
            for (int s = 0; s < filled; s++)
            {
                at[s | filled] = at[s] | bit;
            }
        }

        return at;
    }
}
