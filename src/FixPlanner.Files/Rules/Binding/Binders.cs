using FixPlanner.Files.Rules.Cases;
using FixPlanner.Files.Rules.Layers;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Binds one file by what it holds.</summary>
internal static class Binders
{
    public static BoundRules Bind(RuleFile file, BindContext context)
    {
        FileBinder binder = new(file, context);
        if (file.Kind == RuleFileKind.Unknown)
        {
            binder.Problems.Add(Messages.FileOutOfPlace(file.File, file.Path));
            return binder.Bound;
        }

        if (file.Document is null)
        {
            return binder.Bound;
        }

        if (file.Document.Root is not { } root)
        {
            binder.Problems.Add(Messages.EmptyRuleFile(file.File));
            return binder.Bound;
        }

        if (MapReader.Of(root, Thing(file.Kind), binder.Problems) is { } map)
        {
            Bind(map, file.Kind, binder);
            map.Done();
        }

        return binder.Bound;
    }

    private static void Bind(MapReader map, RuleFileKind kind, FileBinder binder)
    {
        Action<MapReader, FileBinder> bind = kind switch
        {
            RuleFileKind.Pack => ScalesBinder.BindHead,
            RuleFileKind.Sources => SourceBinder.Bind,
            RuleFileKind.Scales => ScalesBinder.BindScales,
            RuleFileKind.TestDay => TestDayBinder.Bind,
            RuleFileKind.Disappointments => ListsBinder.BindDisappointments,
            RuleFileKind.Terms => ListsBinder.BindTerms,
            RuleFileKind.Facts => FactBinder.BindFacts,
            RuleFileKind.Templates => FactBinder.BindTemplates,
            RuleFileKind.Zone => ZoneBinder.Bind,
            RuleFileKind.Observations => ObservationBinder.Bind,
            RuleFileKind.Mechanism => MechanismBinder.Bind,
            RuleFileKind.Fix => FixBinder.Bind,
            RuleFileKind.Gate => GateBinder.Bind,
            RuleFileKind.Cases => CaseBinder.Bind,
            _ => (_, _) => { },
        };
        bind(map, binder);
    }

    private static string Thing(RuleFileKind kind) => kind switch
    {
        RuleFileKind.Mechanism => "the cause",
        RuleFileKind.Fix => "the fix",
        RuleFileKind.Gate => "the gate",
        RuleFileKind.Zone => "the zone",
        _ => "the file",
    };
}
