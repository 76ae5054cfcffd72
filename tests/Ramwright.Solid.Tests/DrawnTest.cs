using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Pins, rods with washers and sleeves, free frames and dies off centre, as the engine draws them, against CalculiX on the same grid.</summary>
public class DrawnTest
{
    public static TheoryData<string> Ids() => [.. Drawn.All.Select(d => d.Id)];

    private static Drawn Named(string id) => Drawn.All.Single(d => d.Id == id);

    [SolidTheory]
    [InlineData("P-01"), InlineData("P-02"), InlineData("R-01"), InlineData("F-03"), InlineData("X-01")]
    public void GivesWhatCalculixGivesOnTheSameGrid(string id)
    {
        Drawn drawn = Named(id);
        PressSolid solid = drawn.Solid;
        SolidMesh mesh = DrawnTable.Grid(solid);
        (_, _, double opening, double turn) = DrawnTable.Own(drawn, solid, mesh);
        (double wanted, double wantedTurn) = DrawnTable.OfCalculix(drawn, solid, mesh);

        var source = new Reference($"Z-{id}", $"CalculiX {Solver.Version}, C3D8I bricks on the same grid: {drawn.Words}", Trust.Recomputed);
        source.Near("opening at the dies, nm/N", wanted * 1e9, opening * 1e9, 1e-5);
        if (drawn.Aside > 0)
            source.Near("turn of the dies, nrad/N", wantedTurn * 1e9, turn * 1e9, 1e-4);
    }

    /// <summary>Every run holds today's grids against what CalculiX gave.</summary>
    [Theory, MemberData(nameof(Ids))]
    public void StillGivesWhatWasCommitted(string id)
    {
        Drawn drawn = Named(id);
        PressSolid solid = drawn.Solid;
        DrawnTable.Row row = DrawnTable.Committed.Single(r => r.Id == id);
        (int unknowns, _, double opening, _) = DrawnTable.Own(drawn, solid, DrawnTable.Grid(solid));

        Assert.Equal(row.Unknowns, unknowns);
        new Reference($"Z-{id}", $"CalculiX {row.Version}, C3D8I bricks on the same grid: {drawn.Words}", Trust.Recomputed)
            .Near("opening at the dies, nm/N", row.Calculix * 1e9, opening * 1e9, 1e-5);
    }
}
