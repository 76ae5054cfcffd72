using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;

namespace Ramwright.Solid.Tests;

/// <summary>
/// Solves every frame again and writes docs/solids.csv, a matter of five minutes:
/// <c>RAMWRIGHT_SOLIDS=renew dotnet test tests/Ramwright.Solid.Tests --filter RenewTest</c>.
/// </summary>
public class RenewTest
{
    [Fact]
    public void SolvesAllWhenAsked()
    {
        if (Environment.GetEnvironmentVariable("RAMWRIGHT_SOLIDS") != "renew")
            return;
        Assert.True(Solver.Version is not null, "CalculiX (ccx) is not installed");
        var answers = new List<(Study, string, Answer)>();
        foreach (Study study in Studies.All)
        {
            answers.Add((study, "plain", Answer.OfSolid(study)));
            if (Studies.Refined.Contains(study.Id))
                answers.Add((study, "fine", Answer.OfSolid(study.Finer)));
        }

        Committed.Write(answers, Solver.Version);
    }
}
