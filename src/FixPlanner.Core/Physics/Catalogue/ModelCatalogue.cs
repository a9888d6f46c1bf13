using FixPlanner.Core.Physics.Air;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>Every physics model, one list for each folder of models, in the order in which they are shown.</summary>
public static class ModelCatalogue
{
    /// <summary>All models.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } =
    [
        .. AirModels.All,
    ];

    /// <summary>A model by its name.</summary>
    /// <param name="name">kebab-case.</param>
    /// <returns>The model, or null.</returns>
    public static PhysicsModel? Find(string name) => All.FirstOrDefault(model => model.Name == name);
}
