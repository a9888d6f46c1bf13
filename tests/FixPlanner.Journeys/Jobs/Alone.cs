namespace FixPlanner.Journeys.Jobs;

/// <summary>Tests that measure time run while no other test does.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
