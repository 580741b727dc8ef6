using ArchUnitNET.Domain;
using ArchUnitNET.Fluent;
using ArchUnitNET.Fluent.Slices;
using ArchUnitNET.Loader;
using RigScenarios.Charts;
using RigScenarios.Cli;
using RigScenarios.Notebooks;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Page;
using RigScenarios.Requests;
using RigScenarios.Scenarios;
using static ArchUnitNET.Fluent.ArchRuleDefinition;
using static ArchUnitNET.Fluent.Slices.SliceRuleDefinition;
using Assembly = System.Reflection.Assembly;

namespace RigScenarios.Tests.House;

/// <summary>Who uses whom, read from the compiled types: a folder uses only those above it, and no two use each other.</summary>
public sealed class ArrowsTests
{
    /// <summary>The rooms of the core library, from the first.</summary>
    private static readonly string[] Rooms =
    [
        "Numerics", "Parts", "Limits", "Cells", "Batteries", "Builds", "Wiring", "Days", "Simulation", "Balance",
        "Loads", "Travel",
        "Scenarios", "Files", "Fits", "Costs", "Answers", "Sweeps", "Search", "Drafts",
    ];

    /// <summary>The projects, from the first.</summary>
    private static readonly Assembly[] Projects =
    [
        typeof(Scenario).Assembly, typeof(Figure).Assembly, typeof(NotebookSession).Assembly, typeof(NotebookCompiler).Assembly,
        typeof(PageRequests).Assembly, typeof(PageServer).Assembly, typeof(CommandLine).Assembly,
    ];

    private static readonly Lazy<Architecture> House = new(() => new ArchLoader().LoadAssemblies(Projects).Build());

    // Types of this project that use each other on purpose: see ForbiddenArrows.
    private static readonly Lazy<Architecture> Trial = new(() => new ArchLoader()
        .LoadAssemblies(typeof(ArrowsTests).Assembly).Build());

    public static TheoryData<string> RoomsButTheLast => [.. Rooms[..^1]];

    [Theory]
    [MemberData(nameof(RoomsButTheLast))]
    public void A_room_uses_only_those_above_it(string room) =>
        AssertHolds(UsesNone("RigScenarios", room, Rooms[(Array.IndexOf(Rooms, room) + 1)..]), House.Value);

    [Fact]
    public void Every_type_of_the_core_library_is_in_a_room()
    {
        var rooms = Rooms.ToHashSet(StringComparer.Ordinal);
        var outside = Projects[0].GetExportedTypes()
            .Where(type => !rooms.Contains(type.Namespace!.Split('.').ElementAtOrDefault(1) ?? ""));
        Assert.Empty(outside);
    }

    [Fact]
    public void A_project_uses_only_those_above_it()
    {
        foreach (var (i, project) in Projects.Index())
        {
            var below = Projects[i..].Select(other => other.GetName().Name);
            Assert.Empty(project.GetReferencedAssemblies().Select(used => used.Name).Intersect(below));
        }
    }

    [Fact]
    public void No_folder_and_no_child_of_it_use_each_other() => AssertHolds(FreeOfCircles("RigScenarios.(**)"), House.Value);

    [Theory]
    [InlineData("ByBody")]
    [InlineData("ByLambda")]
    [InlineData("ByAwait")]
    [InlineData("ByIterator")]
    [InlineData("ByField")]
    [InlineData("ByParameter")]
    [InlineData("ByArgument")]
    [InlineData("ByBase")]
    [InlineData("ByAttribute")]
    [InlineData("ByTypeOf")]
    public void An_arrow_upwards_and_a_circle_are_found_however_they_are_made(string how)
    {
        var place = $"{typeof(ArrowsTests).Namespace}.ForbiddenArrows.{how}";
        Assert.NotEmpty(Broken(UsesNone(place, "First", ["Second"]), Trial.Value));
        Assert.NotEmpty(Broken(FreeOfCircles($"{place}.(**)"), Trial.Value));
    }

    [Fact]
    public void A_circle_of_a_folder_and_its_child_is_found() =>
        Assert.NotEmpty(Broken(FreeOfCircles($"{typeof(ArrowsTests).Namespace}.ForbiddenArrows.(**)"), Trial.Value));

    private static ArchRule<IType> UsesNone(string place, string room, string[] below) =>
        Types().That().ResideInNamespaceMatching($@"^{place}\.{room}(\.|$)").Should()
            .NotDependOnAnyTypesThat().ResideInNamespaceMatching($@"^{place}\.({string.Join('|', below)})(\.|$)")
            // A room may still be empty.
            .WithoutRequiringPositiveResults();

    private static SliceRule FreeOfCircles(string folders) => Slices().Matching(folders).Should().BeFreeOfCycles();

    private static void AssertHolds(IArchRule rule, Architecture architecture) => Assert.Empty(Broken(rule, architecture));

    private static List<string> Broken(IArchRule rule, Architecture architecture) =>
        [.. rule.Evaluate(architecture).Where(result => !result.Passed).Select(result => result.Description)];
}
