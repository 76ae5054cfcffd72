using System.Text.Json;

namespace Ramwright.Tests.Cli;

/// <summary>With <c>--json</c> every command prints one JSON object and nothing else, whatever comes of it.</summary>
public sealed class JsonEverywhereTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-json-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("check @", 0)]
    [InlineData("check @ --guesses", 0)]
    [InlineData("check nowhere.press.yaml", 2)]
    [InlineData("check @ --unts", 2)]
    [InlineData("check", 2)]
    [InlineData("chekc @", 2)]
    [InlineData("explain @", 0)]
    [InlineData("explain @ crown", 2)]
    [InlineData("explain @ nope", 2)]
    [InlineData("draw @", 0)]
    [InlineData("draw @ --out #.svg", 0)]
    [InlineData("draw @ --at 5ton", 2)]
    [InlineData("offset @", 0)]
    [InlineData("job @", 1)]
    [InlineData("job @ nope", 2)]
    [InlineData("job @ chain;plate --sweep usual", 2)]
    [InlineData("lift @", 0)]
    [InlineData("lift @ --to 5ton", 2)]
    [InlineData("prove @", 0)]
    [InlineData("prove @ --fault ?", 0)]
    [InlineData("prove @ --fault nonsense", 2)]
    [InlineData("prove @ --count nowhere.csv", 2)]
    [InlineData("new", 0)]
    [InlineData("new --frame round", 2)]
    [InlineData("stock", 0)]
    [InlineData("stock UPN;200", 0)]
    [InlineData("stock nonsense", 2)]
    [InlineData("stock 100x45;channel", 2)]
    [InlineData("stock --table nowhere.csv", 2)]
    public void OneObject(string command, int expected)
    {
        string[] args = [.. command.Split(' ').Select(a => a.Replace(';', ' ').Replace("@", Run.Example("wherry-yard.press.yaml")).Replace("#", Path.Combine(_folder, "out"))), "--json"];

        (int code, string text) = Run.Command(args);

        Assert.Equal(expected, code);
        JsonElement all = JsonDocument.Parse(text).RootElement;
        Assert.Equal(JsonValueKind.Object, all.ValueKind);
        Assert.Equal(expected == 2, all.TryGetProperty("faults", out _));
    }
}
