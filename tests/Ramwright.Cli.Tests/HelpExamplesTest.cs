using System.Text.RegularExpressions;

namespace Ramwright.Tests.Cli;

/// <summary>The example in each command's help works as it is written, from a fresh clone.</summary>
public sealed class HelpExamplesTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-help-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // solid takes its time and is run by tests of its own; open is a program of its own
    [Theory]
    [InlineData("check")]
    [InlineData("explain")]
    [InlineData("draw")]
    [InlineData("offset")]
    [InlineData("job")]
    [InlineData("lift")]
    [InlineData("make")]
    [InlineData("prove")]
    [InlineData("new")]
    [InlineData("stock")]
    public void Works(string command)
    {
        Match example = Regex.Match(Run.Command("help", command).Text, @"EXAMPLES:\n +ramwright (.+)\n");
        Assert.True(example.Success);
        string[] words = [.. Regex.Matches(example.Groups[1].Value, "\"[^\"]*\"|[^ ]+").Select(m => m.Value.Trim('"'))];
        // from a clone's folder: examples are read where they are, what is written goes elsewhere
        for (int i = 1; i < words.Length; i++)
        {
            if (words[i].StartsWith("examples/", StringComparison.Ordinal))
                words[i] = Run.Example(words[i]["examples/".Length..]);
            else if (words[i - 1] == "--out" || words[i].EndsWith(".press.yaml", StringComparison.Ordinal))
                words[i] = Path.Combine(_folder, words[i]);
        }

        (int code, string text) = Run.Command(words);

        Assert.Equal(command, words[0]);
        Assert.True(code is 0 or 1, text);
    }
}
