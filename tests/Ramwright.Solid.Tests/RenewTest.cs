using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;

namespace Ramwright.Solid.Tests;

/// <summary>
/// Solves frames again and writes docs/solids.csv and its neighbours: <c>RAMWRIGHT_SOLIDS=renew dotnet test tests/Ramwright.Solid.Tests --filter RenewTest</c>, a matter of half an hour;
/// or one table alone: <c>drawn</c>, <c>cells</c>, <c>grids</c>, <c>joints</c> (the joints on the full solids that are committed); or <c>missing</c>: what no table has yet; or only the frames named: <c>RAMWRIGHT_SOLIDS=C-16,O-15</c>.
/// What is not solved again stays as it is, with the version of CalculiX that solved it.
/// </summary>
public class RenewTest
{
    [AskedFact("RAMWRIGHT_SOLIDS")]
    public void SolvesAllWhenAsked()
    {
        string asked = Environment.GetEnvironmentVariable("RAMWRIGHT_SOLIDS")!;
        string[] tables = ["drawn", "cells", "grids", "joints", "missing"], names = [.. asked.Split(',')];
        bool one = tables.Contains(asked);
        bool Afresh(string table, string id) => asked == "renew" || asked == table || names.Contains(id);
        bool Wanted(string table) => !one || asked == table || asked == "missing";

        Assert.True(one || asked == "renew" || names.All(n => Known.Contains(n)), $"{asked}: renew, {string.Join(", ", tables)}, or frames of docs/solids.md");
        Assert.True(Solver.Version is not null || asked is "grids" or "joints", "CalculiX (ccx) is not installed");
        if (!one)
            Committed.Write([.. Solids(id => Afresh("solids", id))]);
        if (Wanted("drawn"))
            DrawnTable.Renew(id => Afresh("drawn", id));
        if (Wanted("cells"))
            OwnGrids.Renew(id => Afresh("cells", id));
        if (Wanted("grids"))
            GridTable.Renew(id => Afresh("grids", id));
        if (Wanted("joints"))
            JointTable.Renew(id => !one && Afresh("", id), _ => asked == "joints");
    }

    private static HashSet<string> Known => [.. Studies.All.Select(s => s.Id), .. Drawn.All.Select(d => d.Id), .. JointTable.Studied.Select(s => s.Id)];

    /// <summary>What is not solved again keeps its version: one table may hold answers of several.</summary>
    [Fact]
    public void WhatIsNotSolvedAgainKeepsItsVersion()
    {
        (Study first, Study second) = (Studies.Named("C-01"), Studies.Named("O-15"));
        string text = Committed.Text([(first, "plain", Committed.Of(first), "1.0"), (second, "plain", Committed.Of(second), "3.0")]);

        Assert.Equal(["C-01 1.0", "O-15 3.0"], text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(l => l.Split(',')).Select(w => $"{w[0]} {w[2]}").Distinct());
        // nothing afresh: the file as it is
        Assert.Equal(File.ReadAllText(Committed.File).ReplaceLineEndings("\n"), Committed.Text(Solids(_ => false)));
    }

    private static IEnumerable<(Study, string, Answer, string)> Solids(Predicate<string> asked)
    {
        foreach (Study study in Studies.All)
        {
            bool afresh = asked(study.Id) || !Committed.Has(study, "plain");
            if (afresh)
                yield return (study, "plain", Answer.OfSolid(study) with { Roll = Studies.Rolled.ContainsKey(study.Id) ? Answer.RollOfSolid(study) : 0 }, Solver.Version!);
            else
                yield return (study, "plain", Committed.Of(study), Committed.Version(study));
            if (!Studies.Refined.Contains(study.Id))
                continue;
            if (asked(study.Id) || !Committed.Has(study, "fine"))
                yield return (study, "fine", Answer.OfSolid(study.Finer), Solver.Version!);
            else
                yield return (study, "fine", Committed.Of(study, "fine"), Committed.Version(study, "fine"));
        }
    }
}
