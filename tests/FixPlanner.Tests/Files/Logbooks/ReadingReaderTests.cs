using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Files.Logbooks;

public sealed class ReadingReaderTests
{
    [Fact]
    public void Read_EveryKey_ComesIn()
    {
        LogbookReading read = Read("""
            readings:
              - {id: runs-1, kind: runs, date: 2026-05-23, files: [runs/a.csv], fix: roof-tail-lip, planned: 0.03 m2, result: {on: drag_area_m2, estimate: -0.04, low: -0.06, high: -0.02, before: 0.86, verdict: shown-better}}
              - {id: sound-1, kind: sound, fix: roof-tail-lip, values: [before 71.5 dB(A) at 100 km/h, after 70 dB(A) at 99 km/h], note: windows shut}
              - {id: tufts-1, kind: tuft_grid, place: roof-tail, speed: 80 km/h, photo: roof.mp4 at 1:10, fitted: [roof-tail-lip], grid: [ssww, sw.l, llrr]}
              - {kind: ride_height, place: rear, axle_rate: 45 N/mm, values: [before 203 mm against 200 mm]}
            """);
        Assert.Empty(read.Problems);
        IReadOnlyList<Reading> readings = read.Logbook!.Readings;
        Assert.Equal(0.86, readings[0].Result!.Before);
        Assert.Equal(2, readings[1].Values.Count);
        Assert.Equal(("roof-tail", "80 km/h", "roof.mp4 at 1:10", 3), (readings[2].Place, readings[2].Speed, readings[2].Photo, readings[2].Grid.Count));
        Assert.Equal("45 N/mm", readings[3].AxleRate);
    }

    [Theory]
    [InlineData("{kind: sound, values: [before 71.5]}", 3, 28)]
    [InlineData("{kind: noise}", 3, 12)]
    [InlineData("{kind: tuft_grid, place: rooof, grid: [ss]}", 3, 30)]
    [InlineData("{kind: tuft_grid, grid: [ss, sx]}", 3, 34)]
    [InlineData("{kind: tuft_grid, grid: [ss, sss]}", 3, 34)]
    [InlineData("{kind: runs, fix: no-such-fix}", 3, 23)]
    [InlineData("{kind: runs, result: {on: drag_area_m2, estimate: 1, low: 0, high: 2, verdict: proven}}", 3, 84)]
    public void Read_WhatIsWrong_IsSaidAtItsPlace(string reading, int line, int column)
    {
        LogbookReading read = Read($"readings:\n  - {reading}");
        Assert.Contains(read.Problems, p => p.Place.Line == line && p.Place.Column == column);
    }

    private static LogbookReading Read(string text) => LogbookReader.Read("car.yaml", "logbook: 1\n" + text, ShippedPack.Pack);
}
