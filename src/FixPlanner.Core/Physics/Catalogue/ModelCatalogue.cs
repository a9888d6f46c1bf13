using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Physics.Cooling;
using FixPlanner.Core.Physics.Crosswind;
using FixPlanner.Core.Physics.FlowPaint;
using FixPlanner.Core.Physics.FrontalArea;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Lift;
using FixPlanner.Core.Physics.Noise;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Physics.Tufts;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Physics.Wake;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>Every physics model, one list for each folder of models, in the order in which they are shown.</summary>
public static class ModelCatalogue
{
    /// <summary>All models.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } =
    [
        .. AirModels.All,
        .. RoadLoadModels.All,
        .. FrontalAreaModels.All,
        .. CrosswindModels.All,
        .. LiftModels.All,
        .. VentModels.All,
        .. GlassModels.All,
        .. PanelModels.All,
        .. WakeModels.All,
        .. NoiseModels.All,
        .. FlowPaintModels.All,
        .. TuftModels.All,
        .. SeparationModels.All,
        .. CoolingModels.All,
    ];

    /// <summary>A model by its name.</summary>
    /// <param name="name">kebab-case.</param>
    /// <returns>The model, or null.</returns>
    public static PhysicsModel? Find(string name) => All.FirstOrDefault(model => model.Name == name);
}
