using System.CommandLine;
using System.Text.Json;
using FixPlanner.Commands;

namespace FixPlanner.Tests.Commands;

public sealed class CalcCommandTests
{
    [Fact]
    public void Calc_WithoutModel_ListsModelsWithInputsUnitsAndRanges()
    {
        Result result = Run("calc");
        Assert.Equal(0, result.Code);
        Assert.Contains("dynamic-pressure: ", result.Output);
        Assert.Contains("--speed  0..400 km/h; needed", result.Output);
    }

    [Fact]
    public void Calc_WithoutModelAsJson_ListsTheSameModels()
    {
        using JsonDocument json = JsonDocument.Parse(Run("calc", "--format", "json").Output);
        Assert.Contains(json.RootElement.GetProperty("models").EnumerateArray(), model => model.GetProperty("model").GetString() == "dynamic-pressure");
    }

    [Fact]
    public void Calc_ModelWithHelp_TellsWhatItsInputsMean() => Assert.Contains("speed of the car in still air", Run("calc", "dynamic-pressure", "--help").Output);

    [Theory]
    [InlineData("--speed", "100 km/h")]
    [InlineData("--speed", "100", "km/h")]
    [InlineData("--speed=100 km/h")]
    [InlineData("--speed-kmh", "100")]
    [InlineData("--speed_kmh", "100")]
    [InlineData("--speed", "62.13711922 mph")]
    [InlineData("--speed", "27.7777777778 m/s")]
    public void Calc_SpeedInAnyOfItsWays_GivesTheSamePressure(params string[] speed)
    {
        using JsonDocument json = JsonDocument.Parse(Run(["calc", "dynamic-pressure", .. speed, "--air-density", "1.2 kg/m3", "--format", "json"]).Output);
        Assert.Equal(0.5 * 1.2 * Math.Pow(100 / 3.6, 2), json.RootElement.GetProperty("outputs").GetProperty("dynamic_pressure_pa").GetDouble(), 1e-4);
    }

    [Fact]
    public void Calc_AsJson_HasWhatItsReadersRelyOn()
    {
        using JsonDocument json = JsonDocument.Parse(Run("calc", "dynamic-pressure", "--speed", "300 km/h", "--format", "json").Output);
        JsonElement root = json.RootElement;
        Assert.Equal(300, root.GetProperty("inputs").GetProperty("speed_kmh").GetDouble());
        Assert.Equal(250, root.GetProperty("valid_range").GetProperty("speed_kmh").GetProperty("high").GetDouble());
        Assert.Contains("30 to 250 km/h", root.GetProperty("warnings")[0].GetString());
        Assert.NotEmpty(root.GetProperty("source").GetString()!);
        Assert.Contains("air_density_kg_per_m3", root.GetProperty("assumed").EnumerateArray().Select(name => name.GetString()));
        JsonElement range = root.GetProperty("ranges").GetProperty("dynamic_pressure_pa");
        Assert.True(range.GetProperty("low").GetDouble() < range.GetProperty("likely").GetDouble());
    }

    [Fact]
    public void Calc_ImpossibleValue_IsRefusedWithRangeAndUnit()
    {
        Result result = Run("calc", "dynamic-pressure", "--speed", "900 km/h");
        Assert.Equal(1, result.Code);
        Assert.Empty(result.Output);
        Assert.Contains("0 to 400 km/h", result.Error);
    }

    [Theory]
    [InlineData(1, "m/s, km/h, mph, kn", "calc", "dynamic-pressure", "--speed", "100")]
    [InlineData(1, "speed_kmh is not given", "calc", "dynamic-pressure")]
    [InlineData(2, "did you mean dynamic-pressure?", "calc", "dynamic-presure", "--speed", "9 m/s")]
    [InlineData(2, "did you mean --speed?", "calc", "dynamic-pressure", "--sped", "9 m/s")]
    [InlineData(2, "given twice", "calc", "dynamic-pressure", "--speed", "9 m/s", "--speed-kmh", "9")]
    [InlineData(2, "no value", "calc", "dynamic-pressure", "--speed")]
    [InlineData(2, "name a model", "calc", "--speed", "--sweep", "speed=1..2")]
    [InlineData(2, "name=from..to", "calc", "dynamic-pressure", "--sweep", "speed")]
    [InlineData(1, "nothing between", "calc", "dynamic-pressure", "--sweep", "speed=9m/s")]
    [InlineData(1, "0 to 400 km/h", "calc", "dynamic-pressure", "--sweep", "speed=60..900km/h")]
    public void Calc_WrongWords_SaysWhatIsWrong(int code, string said, params string[] words)
    {
        Result result = Run(words);
        Assert.Equal(code, result.Code);
        Assert.Contains(said, result.Error);
        Assert.Empty(result.Output);
    }

    [Fact]
    public void Calc_Sweep_PrintsTableAndPlot()
    {
        Result result = Run("calc", "dynamic-pressure", "--sweep", "speed=60..200km/h", "--air-density", "1.2 kg/m3");
        Assert.Equal(0, result.Code);
        Assert.Contains("       200", result.Output);
        Assert.Contains("1852", result.Output); // 0.6 * 55.56²
        Assert.Contains("|***", result.Output.Replace(" ", string.Empty));
        Assert.All(result.Output.Split('\n').Where(line => line.Contains('|') || line.Contains('+')), line => Assert.True(line.Length <= 80));
    }

    [Fact]
    public void Calc_SweepOfAModelWithManyAnswers_StaysWithin80Columns()
    {
        Result result = Run("calc", "drag-saving", "--drag-area-change", "-0.05 m2", "--drag-area", "0.8 m2", "--sweep", "speed=60..160km/h");
        Assert.Equal(0, result.Code);
        Assert.Contains("(3) fuel_change_l_per_100km", result.Output);
        string[] table = [.. result.Output.Split('\n').TakeWhile(line => !line.StartsWith("Source", StringComparison.Ordinal))];
        Assert.All(table, line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Calc_SweepAsJson_HasEveryPoint()
    {
        using JsonDocument json = JsonDocument.Parse(Run("calc", "dynamic-pressure", "--sweep", "speed=60..200km/h", "--format", "json").Output);
        JsonElement[] points = [.. json.RootElement.GetProperty("points").EnumerateArray()];
        Assert.Equal(60, points[0].GetProperty("speed_kmh").GetDouble(), 1e-9);
        Assert.Equal(200, points[^1].GetProperty("speed_kmh").GetDouble(), 1e-9);
    }

    [Fact]
    public void Calc_RangeForAnInput_NamesWhatWouldNarrowTheAnswer() =>
        Assert.Contains("find out --air-density", Run("calc", "dynamic-pressure", "--speed", "100 km/h").Output);

    private static Result Run(params string[] words)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        RootCommand root = new() { CalcCommand.Build() };
        int code = root.Parse(words).Invoke(new InvocationConfiguration { Output = output, Error = error });
        return new(code, output.ToString(), error.ToString());
    }

    private sealed record Result(int Code, string Output, string Error);
}
