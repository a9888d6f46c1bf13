using CsCheck;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Catalogue;

/// <summary>House rules that every model of the catalogue keeps.</summary>
public sealed class ModelCatalogueTests
{
    public static TheoryData<string> Names => [.. ModelCatalogue.All.Select(model => model.Name)];

    [Fact]
    public void All_Names_AreUnique() => Assert.Equal(ModelCatalogue.All.Count, ModelCatalogue.All.Select(model => model.Name).Distinct().Count());

    [Theory]
    [MemberData(nameof(Names))]
    public void Model_Names_EndInTheirUnit(string name)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", model.Name);
        Assert.All(model.Inputs, input => AssertName(input.Name, input.Unit));
        Assert.All(model.Outputs.Where(output => output.Unit is not null), output => AssertName(output.Name, output.Unit!));
        Assert.Equal(model.Inputs.Count, model.Inputs.Select(input => input.Name).Distinct().Count());
        Assert.Equal(model.Outputs.Count, model.Outputs.Select(output => output.Name).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Model_RangesAndDefaults_AreInOrder(string name)
    {
        foreach (ModelInput input in ModelCatalogue.Find(name)!.Inputs)
        {
            Assert.True(input.Possible.Low <= input.Valid.Low && input.Valid.Low < input.Valid.High && input.Valid.High <= input.Possible.High, input.Name);
            Assert.True(input.Default is not { } range || (range.IsInOrder && input.Valid.Holds(range.Low) && input.Valid.Holds(range.High)), input.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Model_Texts_AreThere(string name)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        string[] texts = [model.Title, model.What, model.Source, model.Validity, model.Uncertainty,
            .. model.Inputs.Select(input => input.Meaning), .. model.Outputs.Select(output => output.Meaning)];
        Assert.All(texts, text => Assert.False(string.IsNullOrWhiteSpace(text)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Model_AtMiddleOfItsRanges_AnswersEveryOutputThatItNames(string name)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        ModelOutcome outcome = ModelRun.Of(model, model.Inputs.Where(input => input.IsRequired)
            .ToDictionary(input => input.Name, input => Triangle.Certain((input.Valid.Low + input.Valid.High) / 2)));
        Assert.Empty(outcome.Troubles);
        Assert.Equal(
            model.Outputs.Where(output => output.Unit is not null).Select(output => output.Name).Order(),
            outcome.Answer!.Numbers.Keys.Order());
        Assert.Equal(model.Outputs.Where(output => output.Unit is null).Select(output => output.Name).Order(), outcome.Answer.Words.Keys.Order());
    }

    // Whatever is possible by the declared ranges must be answered or refused in words, never by an exception.
    [Theory]
    [MemberData(nameof(Names))]
    public void Model_AnyPossibleValues_AnswersOrRefusesInWords(string name)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        Gen<double[]> shares = Gen.Double[0, 1].Array[model.Inputs.Count];
        shares.Sample(
            drawn =>
            {
                Dictionary<string, Triangle> values = model.Inputs.Zip(drawn).ToDictionary(pair => pair.First.Name, pair => Triangle.Certain(Within(pair.First, pair.Second)));
                ModelOutcome outcome = ModelRun.Of(model, values);
                return (outcome.Answer is null) == (outcome.Troubles.Count > 0) && outcome.Troubles.All(trouble => trouble.What.Length > 0);
            },
            iter: 60);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Model_EndsOfItsValidRanges_AnswersOrRefusesInWords(string name)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        foreach (ModelInput input in model.Inputs)
        {
            foreach (double end in new[] { input.Possible.Low, input.Valid.Low, input.Valid.High, input.Possible.High })
            {
                Dictionary<string, Triangle> values = model.Inputs.Where(other => !other.IsOptional)
                    .ToDictionary(other => other.Name, other => Triangle.Certain(other.Default?.Likely ?? ((other.Valid.Low + other.Valid.High) / 2)));
                values[input.Name] = Triangle.Certain(end);
                ModelOutcome outcome = ModelRun.Of(model, values);
                Assert.Equal(outcome.Answer is null, outcome.Troubles.Count > 0);
            }
        }
    }

    private static double Within(ModelInput input, double share)
    {
        double value = input.Possible.Low + (share * (input.Possible.High - input.Possible.Low));
        return input.Unit.Kind is UnitKind.Count or UnitKind.Year ? Math.Round(value) : value;
    }

    private static void AssertName(string name, Unit unit)
    {
        Assert.Matches("^[a-z0-9]+(_[a-z0-9]+)*$", name);
        Assert.True(unit.KeySuffix.Length == 0 || name.EndsWith("_" + unit.KeySuffix, StringComparison.Ordinal), $"{name} must end in _{unit.KeySuffix}");
    }
}
