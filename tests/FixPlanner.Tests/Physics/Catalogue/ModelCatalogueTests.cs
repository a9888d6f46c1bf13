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

    private static void AssertName(string name, Unit unit)
    {
        Assert.Matches("^[a-z0-9]+(_[a-z0-9]+)*$", name);
        Assert.True(unit.KeySuffix.Length == 0 || name.EndsWith("_" + unit.KeySuffix, StringComparison.Ordinal), $"{name} must end in _{unit.KeySuffix}");
    }
}
