using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;

namespace Ramwright.Solid.Tests;

/// <summary>
/// Solves every frame again and writes docs/solids.csv, solids-cells.csv, solids-joints.csv and solids-drawn.csv, a matter of ten minutes:
/// <c>RAMWRIGHT_SOLIDS=renew dotnet test tests/Ramwright.Solid.Tests --filter RenewTest</c>; or only those named: <c>RAMWRIGHT_SOLIDS=C-16,O-15</c>; or only those as the engine draws them: <c>RAMWRIGHT_SOLIDS=drawn</c>; or the joints alone, on the full solids that are committed: <c>RAMWRIGHT_SOLIDS=joints</c>.
/// </summary>
public class RenewTest
{
    [AskedFact("RAMWRIGHT_SOLIDS")]
    public void SolvesAllWhenAsked()
    {
        string asked = Environment.GetEnvironmentVariable("RAMWRIGHT_SOLIDS")!;
        if (asked == "joints")
        {
            JointTable.Renew(false);
            return;
        }

        if (asked == "grids")
        {
            GridTable.Renew();
            return;
        }

        if (asked == "cells")
        {
            OwnGrids.Renew();
            return;
        }

        Assert.True(Solver.Version is not null, "CalculiX (ccx) is not installed");
        DrawnTable.Renew();
        if (asked == "drawn")
            return;
        var answers = new List<(Study, string, Answer)>();
        foreach (Study study in Studies.All)
        {
            bool afresh = asked == "renew" || asked.Split(',').Contains(study.Id);
            answers.Add((study, "plain", !afresh ? Committed.Of(study)
                : Answer.OfSolid(study) with { Roll = Studies.Rolled.ContainsKey(study.Id) ? Answer.RollOfSolid(study) : 0 }));
            if (Studies.Refined.Contains(study.Id))
                answers.Add((study, "fine", afresh || !Committed.Has(study, "fine") ? Answer.OfSolid(study.Finer) : Committed.Of(study, "fine")));
        }

        Committed.Write(answers, Solver.Version);
        OwnGrids.Renew();
        JointTable.Renew(true);
    }
}
