using System.Text;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Runs;
using FixPlanner.Tests.Measurement;

namespace FixPlanner.Tests.Files.Runs;

public sealed class RunFileReaderTests
{
    private static readonly List<CoastDownRun> Day = SimulatedDay.Drawn(3, SimulatedWeather.Calm, "ABBA", -0.06).Runs();

    private static RunFile Read(string text, RunReadingOptions? options = null, string name = "before.csv") =>
        RunFileReader.ReadBytes(name, Encoding.UTF8.GetBytes(text), options ?? RunReadingOptions.None);

    private static Problem Only(RunFile file, string code) => Assert.Single(file.Problems, problem => problem.Code == code);

    [Fact]
    public void ReadBytes_CsvOfTheContract_GivesTheRunsUnchanged()
    {
        RunFile file = Read(LogWriter.Csv(Day));
        Assert.Empty(file.Problems);
        Assert.Equal(Day.Count, file.Runs.Count);
        Assert.Equal(["out", "back", "out", "back", "out", "back", "out", "back"], file.Runs.Select(run => run.Direction));
        Assert.Equal("before before after after after after before before", string.Join(' ', file.Runs.Select(run => run.Configuration)));
        Assert.Equal(Day[0].Samples[7].Speed.MetresPerSecond, file.Runs[0].Samples[7].Speed.MetresPerSecond, 6);
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void ReadBytes_DecimalCommaWithOtherSeparator_GivesTheSame(char delimiter)
    {
        RunFile plain = Read(LogWriter.Csv(Day));
        RunFile comma = Read(LogWriter.Csv(Day, delimiter, decimalComma: true));
        Assert.Empty(comma.Problems);
        Assert.Equal(plain.Runs.SelectMany(run => run.Samples), comma.Runs.SelectMany(run => run.Samples));
    }

    [Theory]
    [InlineData("Time (s);Speed [mph]", "0;62.1371", "1;60")]
    [InlineData("Elapsed;GPS Speed (m/s)", "0;27.77778", "1;26.8")]
    [InlineData("time_s;velocity_kn", "0;53.99568", "1;52")]
    [InlineData("t;v\ns;km/h", "0;100", "1;98")]
    [InlineData("time_ms;speed_kmh", "0;100", "1000;98")]
    [InlineData("Time;Speed (km/h)", "10:59:59,5;100", "11:00:00,5;98")]
    [InlineData("Time;Speed (km/h)", "2025-05-03T05:00:00Z;100", "2025-05-03T05:00:01Z;98")]
    [InlineData("Time;Speed", "0;100 km/h", "1;98 km/h")]
    public void Points_ManyHeadersAndUnits_GiveHundredKilometresPerHourAndOneSecond(string header, string first, string second)
    {
        LimitedProblems problems = new("x.csv");
        List<LoggedPoint> points = CsvRunReader.Read($"# a note\n{header}\n{first}\n{second}\n", RunReadingOptions.None, problems).Points;
        Assert.Empty(problems.All());
        Assert.Equal(100 / 3.6, points[0].MetresPerSecond, 3);
        Assert.Equal(1, points[1].Seconds - points[0].Seconds, 6);
    }

    [Fact]
    public void ReadBytes_SpeedWithoutUnit_IsRefusedWithItsPlace()
    {
        RunFile file = Read("run,time_s,speed\n1,0,28\n1,1,27\n");
        Problem problem = Only(file, "FP4004");
        Assert.Equal((1, 12), (problem.Place.Line, problem.Place.Column));
        Assert.Contains("28", problem.What, StringComparison.Ordinal);
        Assert.Empty(file.Runs);
        Assert.NotEmpty(Read("run,time_s,speed\n1,0,28\n1,1,27\n", new() { SpeedUnit = SpeedUnit.MetresPerSecondUnit }).Runs);
    }

    [Fact]
    public void ReadBytes_UnitAgainstTheHeader_IsRefused() =>
        Only(Read(LogWriter.Csv(Day), new() { SpeedUnit = SpeedUnit.MilesPerHour }), "FP4011");

    [Fact]
    public void ReadBytes_MappedColumns_AreTaken()
    {
        string text = LogWriter.Csv(Day).Replace("time_s,speed_kmh", "Zeitmarke [s],Tempo [km/h]", StringComparison.Ordinal);
        Only(Read(text), "FP4003");
        RunFile file = Read(text, new() { Columns = new Dictionary<string, string> { ["time"] = "Zeitmarke [s]", ["speed"] = "Tempo [km/h]" } });
        Assert.Empty(file.Problems);
        Assert.Equal(Day.Count, file.Runs.Count);
        Only(Read(text, new() { Columns = new Dictionary<string, string> { ["time"] = "Uhr" } }), "FP4025");
    }

    [Fact]
    public void ReadBytes_BadLines_AreToldByLineAndTheRestIsUsed()
    {
        string[] lines = LogWriter.Csv(Day).Split('\n');
        lines[5] = "1,out,before,NaN,90";
        lines[6] = "1,out,before,5.0,";
        lines[7] = "1,out,before,6.0,fast";
        lines[8] = "1,out,before";
        lines[9] = "1,out,before,2.0,88.0";
        lines[11] = lines[10];
        lines[12] = "1,out,before,11.0,880.0";
        RunFile file = Read(string.Join('\n', lines));
        Assert.Equal([6, 7, 8], file.Problems.Where(problem => problem.Code == "FP4005").Select(problem => problem.Place.Line));
        Assert.Equal((8, 18), (file.Problems.Last(problem => problem.Code == "FP4005").Place.Line, file.Problems.Last(problem => problem.Code == "FP4005").Place.Column));
        Assert.Equal(9, Only(file, "FP4006").Place.Line);
        Assert.Equal(10, Only(file, "FP4007").Place.Line);
        Assert.Equal(12, Only(file, "FP4008").Place.Line);
        Assert.Equal(13, Only(file, "FP4012").Place.Line);
        Assert.Equal(Day.Count, file.Runs.Count);
        Assert.False(file.HasErrors);
        Assert.Equal(Day[0].Samples.Count - 7, file.Runs[0].Samples.Count);
    }

    [Fact]
    public void ReadBytes_ThousandBadLines_ListsTwentyAndCountsTheRest()
    {
        string text = LogWriter.Csv(Day) + string.Concat(Enumerable.Repeat("8,back,before,x,y\n", 1000));
        RunFile file = Read(text);
        Assert.Equal(21, file.Problems.Count(problem => problem.Code == "FP4005"));
        Assert.Contains(file.Problems, problem => problem.What.Contains("980 more", StringComparison.Ordinal));
    }

    [Fact]
    public void ReadBytes_TruncatedFile_UsesWhatIsWhole()
    {
        string text = LogWriter.Csv(Day);
        RunFile file = Read(text[..(text.Length - 9)]);
        Only(file, "FP4006");
        Assert.Equal(Day.Count, file.Runs.Count);
    }

    [Fact]
    public void ReadBytes_ClockJump_IsTold()
    {
        string text = LogWriter.Csv(Day).Replace("\n1,out,before,2", "\n1,out,before,9992", StringComparison.Ordinal);
        Assert.Contains(Read(text).Problems, problem => problem.Code is "FP4009" or "FP4007");
    }

    [Fact]
    public void ReadBytes_MixedUnitsInOneColumn_AreConvertedAndTold()
    {
        string[] lines = LogWriter.Csv(Day).Split('\n');
        double kilometres = double.Parse(lines[5].Split(',')[4]);
        lines[5] = string.Join(',', lines[5].Split(',')[..4]) + $",{kilometres / 1.609344:0.000} mph";
        RunFile file = Read(string.Join('\n', lines));
        Assert.Equal(6, Only(file, "FP4010").Place.Line);
        Assert.Equal(kilometres, file.Runs[0].Samples[4].Speed.KilometresPerHour, 2);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n\n")]
    [InlineData("run,direction,configuration,time_s,speed_kmh\n")]
    public void ReadBytes_NothingInIt_SaysSo(string text) => Only(Read(text), "FP4002");

    [Fact]
    public void ReadBytes_OtherEncodings_AreRead()
    {
        string text = LogWriter.Csv(Day).Replace("before", "früher", StringComparison.Ordinal);
        foreach (Encoding encoding in new[] { Encoding.Latin1, Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF8 })
        {
            RunFile file = RunFileReader.ReadBytes("a.csv", [.. encoding == Encoding.Latin1 ? [] : encoding.GetPreamble(), .. encoding.GetBytes(text)], RunReadingOptions.None);
            Assert.Equal(encoding == Encoding.UTF8 ? 0 : 1, file.Problems.Count(problem => problem.Code == "FP4013"));
            Assert.Equal("früher", file.Runs[0].Configuration);
        }
    }

    [Fact]
    public void ReadBytes_ConditionsWithUnits_AreKept()
    {
        RunFile file = Read("run,direction,configuration,time_s,speed_kmh,wind_ms,temperature_c,pressure_hpa\n1,out,a,0,100,1.5,12,1001\n1,out,a,1,99,2.5,12,1001\n");
        RunConditions noted = Assert.Single(file.Runs).Conditions;
        Assert.Equal(2, noted.Wind!.Value.MetresPerSecond, 9);
        Assert.Equal(12, noted.AirTemperature!.Value.DegreesCelsius, 9);
        Assert.Equal(100_100 / (287.058 * 285.15), noted.Density!.Value.KilogramsPerCubicMetre, 9);
    }

    [Fact]
    public void ReadBytes_TemperatureWithoutUnit_IsNotGuessed()
    {
        RunFile file = Read("run,time_s,speed_kmh,temperature\n1,0,100,60\n1,1,99,60\n");
        Assert.Equal((2, 9), (Only(file, "FP4028").Place.Line, Only(file, "FP4028").Place.Column));
        Assert.Null(file.Runs[0].Conditions.AirTemperature);
    }

    [Fact]
    public void ReadBytes_LongLogWithoutRunNumbers_FindsEachRoll()
    {
        string text = "time_s,speed_ms\n" + string.Concat(LogWriter.Whole(Day).Select(point => $"{point.Time:0.0},{point.Speed:0.000}\n"));
        RunFile file = Read(text);
        Assert.Empty(file.Problems);
        Assert.Equal(Day.Count, file.Runs.Count);
        Assert.All(file.Runs, run => Assert.Equal("before", run.Configuration));
    }

    [Fact]
    public void ReadBytes_Gpx_FindsRunsWaysAndDay()
    {
        RunFile file = Read(LogWriter.Gpx(Day), name: "trial-2.gpx");
        Assert.Empty(file.Problems);
        Assert.Equal("out back out back out back out back", string.Join(' ', file.Runs.Select(run => run.Direction)));
        Assert.All(file.Runs, run => Assert.Equal(("trial", "2025-05-03"), (run.Configuration, run.Conditions.Day)));
        Assert.All(file.Runs, run => Assert.True(run.HeadingChangeDegrees < 5));
    }

    [Fact]
    public void ReadBytes_GpxInKilometresPerHour_IsSeenFromThePlacesAndTold()
    {
        RunFile file = Read(LogWriter.Gpx(Day, speedFactor: 3.6));
        Assert.Contains("km/h", Only(file, "FP4019").What, StringComparison.Ordinal);
        Assert.Equal(Read(LogWriter.Gpx(Day)).Runs[0].Samples[9].Speed.MetresPerSecond, file.Runs[0].Samples[9].Speed.MetresPerSecond, 1);
        Only(Read(LogWriter.Gpx(Day, speedFactor: 7)), "FP4020");
    }

    [Fact]
    public void ReadBytes_GpxWithoutSpeeds_WorksThemOutAndWarns()
    {
        RunFile file = Read(LogWriter.Gpx(Day, withSpeed: false));
        Only(file, "FP4017");
        Assert.Equal(Day.Count, file.Runs.Count);
    }

    [Fact]
    public void ReadBytes_GpxCutOff_UsesThePointsBefore()
    {
        string text = LogWriter.Gpx(Day);
        RunFile file = Read(text[..(text.Length / 2)]);
        Assert.True(Only(file, "FP4015").Place.Line > 100);
        Assert.InRange(file.Runs.Count, 3, 5);
    }

    [Fact]
    public void ReadBytes_GpxWithOutsideEntity_FetchesNothing()
    {
        RunFile file = Read("<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><gpx><trk><name>&x;</name></trk></gpx>");
        Only(file, "FP4015");
        Assert.Empty(file.Runs);
    }

    [Fact]
    public void ReadBytes_NmeaOverMidnight_FindsRuns()
    {
        RunFile file = Read(LogWriter.Nmea(Day), name: "log.nmea");
        Assert.Empty(file.Problems);
        Assert.Equal(Day.Count, file.Runs.Count);
        Assert.Equal("out", file.Runs[6].Direction);
    }

    [Fact]
    public void ReadBytes_NmeaDamaged_TellsTheLineAndGoesOn()
    {
        string[] lines = LogWriter.Nmea(Day).Split("\r\n");
        lines[40] = lines[40].Replace(",N,", ", N,", StringComparison.Ordinal);
        lines[41] = lines[41][..lines[41].IndexOf('*')];
        string invalid = "GPRMC,120000,V,,,,,,,030525,,";
        lines[42] = $"${invalid}*{NmeaRunReader.Checksum(invalid)}";
        RunFile file = Read(string.Join('\n', lines), name: "log.nmea");
        Problem checksum = Only(file, "FP4022");
        Assert.Equal((41, lines[40].IndexOf('*') + 2), (checksum.Place.Line, checksum.Place.Column));
        Assert.Equal(42, Only(file, "FP4021").Place.Line);
        Assert.Equal(43, Only(file, "FP4023").Place.Line);
        Assert.Equal(Day.Count, file.Runs.Count);
        Assert.DoesNotContain(Read(string.Join('\n', lines), new() { IgnoreChecksum = true }).Runs, run => run.Samples.Count == 0);
    }

    [Fact]
    public void ReadBytes_VtgOnlySpeed_IsTakenFromTheSameFix()
    {
        LimitedProblems problems = new("x");
        string rmc = "GPRMC,120000,A,5000.0,N,00800.0,E,,45,030525,,";
        string vtg = "GPVTG,45,T,,M,54.0,N,100.0,K";
        List<LoggedPoint> points = NmeaRunReader.Read($"${rmc}*{NmeaRunReader.Checksum(rmc)}\n${vtg}*{NmeaRunReader.Checksum(vtg)}\n", RunReadingOptions.None, problems);
        Assert.Equal(100 / 3.6, Assert.Single(points).MetresPerSecond, 9);
    }

    [Fact]
    public void Read_MissingFile_IsOneProblem()
    {
        RunFile file = RunFileReader.Read(["/nowhere/none.csv"], RunReadingOptions.None);
        Assert.Equal("FP4001", Assert.Single(file.Problems).Code);
    }

    [Fact]
    public void ReadBytes_AnyBytes_NeverThrows()
    {
        Random random = new(5);
        byte[] good = Encoding.UTF8.GetBytes(LogWriter.Csv(Day.Take(2)));
        byte[] gpx = Encoding.UTF8.GetBytes(LogWriter.Gpx([.. Day.Take(1)]));
        byte[] nmea = Encoding.UTF8.GetBytes(LogWriter.Nmea([.. Day.Take(1)]));
        for (int i = 0; i < 300; i++)
        {
            byte[] bytes = (i % 3 == 0 ? good : i % 3 == 1 ? gpx : nmea).ToArray();
            for (int k = 0; k < 1 + (i % 40); k++)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            RunFile file = RunFileReader.ReadBytes("x", bytes[..random.Next(bytes.Length)], RunReadingOptions.None);
            Assert.True(file.Runs.Count > 0 || file.Problems.Count > 0);
        }
    }
}
