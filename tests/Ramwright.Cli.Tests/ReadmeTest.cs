namespace Ramwright.Tests.Cli;

/// <summary>What the first page shows is what the program prints.</summary>
public class ReadmeTest
{
    [Fact]
    public void TheFirstAnswerIsWhatCheckPrints()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Folder(""), "README.md")).ReplaceLineEndings("\n");
        const string begins = "```\nRailing shop 20 t\n";
        int from = page.IndexOf(begins, StringComparison.Ordinal) + 4;
        string shown = page[from..page.IndexOf("```", from, StringComparison.Ordinal)];

        string text = Run.Command("check", Run.Example("railing-shop.press.yaml")).Text.Replace(Repository.Folder("examples"), "examples");

        Assert.StartsWith(Ends(shown), Ends(text), StringComparison.Ordinal);
    }

    private static string Ends(string text) => string.Join('\n', text.Split('\n').Select(l => l.TrimEnd()));
}
