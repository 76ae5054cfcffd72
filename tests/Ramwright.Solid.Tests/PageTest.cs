using Ramwright.Solid.Tests.Frames;

namespace Ramwright.Solid.Tests;

public class PageTest
{
    [Fact]
    public void IsCurrent()
    {
        string text = SolidsPage.Text();
        if (Environment.GetEnvironmentVariable("RAMWRIGHT_APPROVE") == "1")
            File.WriteAllText(SolidsPage.File, text);
        Assert.True(File.Exists(SolidsPage.File) && File.ReadAllText(SolidsPage.File).ReplaceLineEndings("\n") == text.ReplaceLineEndings("\n"),
            "docs/solids.md is not current: RAMWRIGHT_APPROVE=1 dotnet test tests/Ramwright.Solid.Tests writes it");
    }
}
