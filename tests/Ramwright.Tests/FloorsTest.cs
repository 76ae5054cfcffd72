using System.Reflection;
using NetArchTest.Rules;

namespace Ramwright.Tests;

/// <summary>No room imports from a floor above its own.</summary>
public class FloorsTest
{
    private static readonly string[][] Floors =
    [
        ["Ramwright.Quantities", "Ramwright.Workings", "Ramwright.Geometry", "Ramwright.Stock", "Ramwright.Measuring"],
        ["Ramwright.Presses"],
        ["Ramwright.Power", "Ramwright.Frame", "Ramwright.Solids"],
        ["Ramwright.Strength", "Ramwright.Jobs"],
        ["Ramwright.Ladders", "Ramwright.Squeeze", "Ramwright.Fabrication"],
        ["Ramwright.Proving", "Ramwright.FaultFinding"],
        ["Ramwright.Files"],
        ["Ramwright.Cli"],
    ];

    private static readonly Assembly[] House = [typeof(Presses.Press).Assembly, typeof(Files.StockTables).Assembly];

    public static TheoryData<string> Rooms()
    {
        var rooms = new TheoryData<string>();
        foreach (string room in Floors.SelectMany(f => f))
            rooms.Add(room);
        return rooms;
    }

    [Theory, MemberData(nameof(Rooms))]
    public void ARoomNeverImportsFromAFloorAbove(string room)
    {
        int floor = Array.FindIndex(Floors, f => f.Contains(room));
        string[] above = [.. Floors.Skip(floor + 1).SelectMany(f => f)];
        if (above.Length == 0)
            return;

        TestResult result = Types.InAssemblies(House)
            .That().ResideInNamespace(room)
            .ShouldNot().HaveDependencyOnAny(above)
            .GetResult();

        Assert.True(result.IsSuccessful,
            "these look upstairs: " + string.Join(", ", result.FailingTypes?.Select(t => t.FullName) ?? []));
    }

    [Fact]
    public void EveryTypeOfTheLibraryLivesInARoomThatThePlanNames()
    {
        string[] rooms = [.. Floors.SelectMany(f => f)];

        var astray = typeof(Presses.Press).Assembly.GetTypes()
            .Where(t => t.Namespace is { } n && n.StartsWith("Ramwright", StringComparison.Ordinal) && !rooms.Any(r => n == r || n.StartsWith(r + ".", StringComparison.Ordinal)))
            .Select(t => t.FullName);

        Assert.Empty(astray);
    }

    [Fact]
    public void TheEngineKnowsNoFileScreenOrClock()
    {
        TestResult result = Types.InAssembly(typeof(Presses.Press).Assembly)
            .That().ResideInNamespace("Ramwright")
            .ShouldNot().HaveDependencyOnAny("System.IO.File", "System.IO.FileStream", "System.Console", "System.DateTime", "System.DateTimeOffset", "System.Random")
            .GetResult();

        Assert.True(result.IsSuccessful, string.Join(", ", result.FailingTypes?.Select(t => t.FullName) ?? []));
    }
}
