using FixPlanner.Core.Knowledge;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>The closed lists as they stand in files. The lists under terms/ explain them and are held against these.</summary>
internal static class Words
{
    public static readonly IReadOnlyDictionary<string, bool> YesNo = new Dictionary<string, bool> { ["yes"] = true, ["no"] = false };

    public static readonly IReadOnlyDictionary<string, MechanismKind> CauseKinds = new Dictionary<string, MechanismKind>
    {
        ["flow"] = MechanismKind.Flow,
        ["structure under air load"] = MechanismKind.StructureUnderAirLoad,
        ["benign"] = MechanismKind.Benign,
        ["not air"] = MechanismKind.NotAir,
        ["evidence fault"] = MechanismKind.EvidenceFault,
    };

    public static readonly IReadOnlyDictionary<string, (bool For, Strength Strength)> Strengths = new Dictionary<string, (bool, Strength)>
    {
        ["strongly for"] = (true, Strength.Strong),
        ["for"] = (true, Strength.Medium),
        ["weakly for"] = (true, Strength.Weak),
        ["weakly against"] = (false, Strength.Weak),
        ["against"] = (false, Strength.Medium),
        ["strongly against"] = (false, Strength.Strong),
    };

    public static readonly IReadOnlyDictionary<string, Strength> StrengthNames = new Dictionary<string, Strength>
    {
        ["strong"] = Strength.Strong,
        ["medium"] = Strength.Medium,
        ["weak"] = Strength.Weak,
    };

    public static readonly IReadOnlyDictionary<string, GridShape> GridShapes = new Dictionary<string, GridShape>
    {
        ["lies"] = GridShape.Lies,
        ["wags"] = GridShape.Wags,
        ["lands"] = GridShape.Lands,
        ["leaves"] = GridShape.Leaves,
        ["off"] = GridShape.Off,
        ["reversed"] = GridShape.Reversed,
    };

    public static readonly IReadOnlyDictionary<string, EffectOn> Quantities = new Dictionary<string, EffectOn>
    {
        ["drag"] = EffectOn.Drag,
        ["front_lift"] = EffectOn.FrontLift,
        ["rear_lift"] = EffectOn.RearLift,
        ["noise"] = EffectOn.Noise,
        ["cabin_air"] = EffectOn.CabinAir,
        ["cooling"] = EffectOn.Cooling,
        ["dirt"] = EffectOn.Dirt,
        ["crosswind"] = EffectOn.Crosswind,
        ["glass_load"] = EffectOn.GlassLoad,
        ["glass_hold"] = EffectOn.GlassHold,
        ["brakes"] = EffectOn.Brakes,
        ["throb"] = EffectOn.Throb,
    };

    public static readonly IReadOnlyDictionary<string, FixAction> Actions = new Dictionary<string, FixAction>
    {
        ["cures"] = FixAction.Cures,
        ["reduces"] = FixAction.Reduces,
        ["masks"] = FixAction.Masks,
    };

    public static readonly IReadOnlyDictionary<string, Skill> Skills = new Dictionary<string, Skill>
    {
        ["anyone"] = Skill.Anyone,
        ["handy"] = Skill.Handy,
        ["experienced"] = Skill.Experienced,
        ["professional"] = Skill.Professional,
    };

    public static readonly IReadOnlyDictionary<string, Reversible> Reversible = new Dictionary<string, Reversible>
    {
        ["fully"] = Core.Knowledge.Reversible.Fully,
        ["mostly"] = Core.Knowledge.Reversible.Mostly,
        ["partly"] = Core.Knowledge.Reversible.Partly,
        ["no"] = Core.Knowledge.Reversible.No,
        ["not applicable"] = Core.Knowledge.Reversible.NotApplicable,
    };

    public static readonly IReadOnlyDictionary<string, ConflictKind> Conflicts = new Dictionary<string, ConflictKind>
    {
        ["excludes"] = ConflictKind.Excludes,
        ["adds up"] = ConflictKind.AddsUp,
        ["order"] = ConflictKind.Order,
        ["watch"] = ConflictKind.Watch,
    };

    public static readonly IReadOnlyDictionary<string, GateLevel> Levels = new Dictionary<string, GateLevel>
    {
        ["stop"] = GateLevel.Stop,
        ["fix first"] = GateLevel.FixFirst,
        ["caution"] = GateLevel.Caution,
    };

    public static readonly IReadOnlyDictionary<string, string> DecidedBy = SameWords("car", "plan", "job");

    public static readonly IReadOnlyDictionary<string, LookWhen> When = new Dictionary<string, LookWhen>
    {
        ["parked"] = LookWhen.Parked,
        ["drive"] = LookWhen.Drive,
        ["film"] = LookWhen.Film,
        ["after wet drive"] = LookWhen.AfterWetDrive,
        ["workshop"] = LookWhen.Workshop,
    };

    public static readonly IReadOnlyDictionary<string, Repeatability> Repeatability = new Dictionary<string, Repeatability>
    {
        ["low"] = Core.Knowledge.Repeatability.Low,
        ["medium"] = Core.Knowledge.Repeatability.Medium,
        ["high"] = Core.Knowledge.Repeatability.High,
    };

    public static readonly IReadOnlyDictionary<string, string> Confidence = SameWords("low", "medium", "high");

    public static readonly IReadOnlyDictionary<string, string> NoticedBy =
        SameWords("look", "feel", "sound", "smell", "measure", "gauge", "manometer", "tuft", "paint", "dirt", "water", "test", "check");

    public static readonly IReadOnlyDictionary<string, Maturity> Maturity = new Dictionary<string, Maturity>
    {
        ["draft"] = Core.Knowledge.Maturity.Draft,
        ["tried"] = Core.Knowledge.Maturity.Tried,
        ["trusted"] = Core.Knowledge.Maturity.Trusted,
    };

    public static readonly IReadOnlyDictionary<string, SourceGrade> Grades = new Dictionary<string, SourceGrade>
    {
        ["A"] = SourceGrade.A,
        ["B"] = SourceGrade.B,
        ["C"] = SourceGrade.C,
        ["D"] = SourceGrade.D,
    };

    public static readonly IReadOnlyDictionary<string, FactScope> Scopes = new Dictionary<string, FactScope>
    {
        ["vehicle"] = FactScope.Vehicle,
        ["state"] = FactScope.State,
        ["plan"] = FactScope.Plan,
        ["fix"] = FactScope.Fix,
    };

    public static readonly IReadOnlyDictionary<string, FactKind> FactKinds = new Dictionary<string, FactKind>
    {
        ["choice"] = FactKind.Choice,
        ["yes or no"] = FactKind.YesNo,
        ["number"] = FactKind.Number,
        ["year"] = FactKind.Year,
        ["date"] = FactKind.Date,
    };

    public static readonly IReadOnlyDictionary<string, GateFigures> GateFigures = new Dictionary<string, GateFigures>
    {
        ["rear glass"] = Core.Knowledge.GateFigures.RearGlass,
        ["bonnet"] = Core.Knowledge.GateFigures.Bonnet,
        ["doors"] = Core.Knowledge.GateFigures.Doors,
        ["tyres"] = Core.Knowledge.GateFigures.Tyres,
        ["brakes"] = Core.Knowledge.GateFigures.Brakes,
        ["lift"] = Core.Knowledge.GateFigures.Lift,
        ["side wind"] = Core.Knowledge.GateFigures.SideWind,
        ["cooling"] = Core.Knowledge.GateFigures.Cooling,
        ["fumes"] = Core.Knowledge.GateFigures.Fumes,
        ["flow paint"] = Core.Knowledge.GateFigures.FlowPaint,
        ["speed rise"] = Core.Knowledge.GateFigures.SpeedRise,
    };

    /// <summary>What a cause can hurt besides the quantities of effects.</summary>
    public static readonly IReadOnlyList<string> OtherHurts =
        ["stability", "safety", "heat", "water", "view", "leaks", "fog", "rust", "glass", "bonnet", "fumes", "evidence"];

    public static readonly IReadOnlyDictionary<string, string> Hurts = SameWords([.. Quantities.Keys, .. OtherHurts]);

    /// <summary>The lists under terms/ that explain a closed list, with its words.</summary>
    public static IReadOnlyDictionary<string, IEnumerable<string>> Explained { get; } = new Dictionary<string, IEnumerable<string>>
    {
        ["quantities"] = Quantities.Keys,
        ["kinds-of-cause"] = CauseKinds.Keys,
        ["strengths"] = Strengths.Keys,
        ["fix-actions"] = Actions.Keys,
        ["skills"] = Skills.Keys,
        ["reversible"] = Reversible.Keys,
        ["conflicts"] = Conflicts.Keys,
        ["gate-levels"] = Levels.Keys,
        ["decided-by"] = DecidedBy.Keys,
        ["gate-figures"] = GateFigures.Keys,
        ["when"] = When.Keys,
        ["repeatability"] = Repeatability.Keys,
        ["noticed-by"] = NoticedBy.Keys,
        ["maturity"] = Maturity.Keys,
        ["source-grades"] = Grades.Keys,
        ["facts-scopes"] = Scopes.Keys,
        ["hurts"] = OtherHurts,
    };

    private static Dictionary<string, string> SameWords(params string[] words) => words.ToDictionary(word => word);
}
