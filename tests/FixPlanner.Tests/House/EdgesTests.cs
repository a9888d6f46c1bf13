using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using ArchUnitNET.xUnit;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace FixPlanner.Tests.House;

/// <summary>The edges between projects and between the rooms of the core: each may use only what stands above it.</summary>
public sealed class EdgesTests
{
    private static readonly string[] Rooms = ["Quantities", "Cars", "Physics", "Knowledge", "Logbooks", "Measurement", "Diagnosis", "Safety", "Planning", "TestDay", "Pictures", "Interview"];

    private static readonly Architecture Code = new ArchLoader().LoadAssemblies(
        typeof(Core.Quantities.Length).Assembly, typeof(global::FixPlanner.Files.Problems.Problem).Assembly, typeof(global::FixPlanner.Report.Documents.Document).Assembly).Build();

    public static TheoryData<string, string> Forbidden
    {
        get
        {
            TheoryData<string, string> pairs = [];
            for (int i = 0; i < Rooms.Length; i++)
            {
                for (int later = i + 1; later < Rooms.Length; later++)
                {
                    pairs.Add(Rooms[i], Rooms[later]);
                }
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void A_room_does_not_use_a_later_one(string room, string later) =>
        Types().That().ResideInNamespaceMatching($@"^FixPlanner\.Core\.{room}(\..*)?$")
            .Should().NotDependOnAnyTypesThat().ResideInNamespaceMatching($@"^FixPlanner\.Core\.{later}(\..*)?$")
            .WithoutRequiringPositiveResults().Check(Code);

    [Fact]
    public void Files_and_Report_do_not_know_each_other()
    {
        Types().That().ResideInNamespaceMatching(@"^FixPlanner\.Files(\..*)?$").Should().NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^FixPlanner\.Report(\..*)?$").Check(Code);
        Types().That().ResideInNamespaceMatching(@"^FixPlanner\.Report(\..*)?$").Should().NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^FixPlanner\.Files(\..*)?$").Check(Code);
    }

    [Theory]
    [InlineData("FixPlanner.Core")]
    [InlineData("FixPlanner.Report")]
    public void The_pure_parts_reach_no_clock_file_console_or_culture(string assembly)
    {
        System.Reflection.AssemblyName[] references = (assembly == "FixPlanner.Core" ? typeof(Core.Quantities.Length) : typeof(global::FixPlanner.Report.Documents.Document)).Assembly.GetReferencedAssemblies();
        Assert.DoesNotContain(references, r => r.Name is "System.Console" or "System.IO.FileSystem" or "System.Net.Http" or "System.Diagnostics.Process" or "Terminal.Gui" or "YamlDotNet");
    }
}
