using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests.Frame;

namespace Ramwright.Tests.Solids;

/// <summary>Whatever a workshop might build is drawn and solved: thin walls, slender rods and the stretched cells that they bring do not stop the solver.</summary>
public class BuildableFramesTest
{
    private const int Many = 28;

    [Fact]
    public void AreDrawnAndSolvedInFewTurns()
    {
        var kinds = new SortedSet<string>();
        var turns = new List<int>();
        double stretched = 0;
        for (int seed = 0; seed < Many; seed++)
        {
            string text = new BuildableFrame(seed).Text();
            Rig rig = Described.Rig(text);
            PressSolid solid = PressSolid.Of(rig);
            SolidMesh mesh = solid.Mesh(solid.Usual.Over(0.35));
            SolidSolution solution = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, SolidCase.Centred));

            kinds.UnionWith(((string[])["closed", "open-front", "tie-rod", "free", "bed-pins", "kind: pin", "washer", "sleeve"]).Where(k => text.Contains(k, StringComparison.Ordinal)));
            turns.Add(solution.Convergence.Iterations);
            stretched = Math.Max(stretched, mesh.Kinds.Max(k => Math.Max(k.X, Math.Max(k.Y, k.Z)) / Math.Min(k.X, Math.Min(k.Y, k.Z))));
            Assert.True(solution.Convergence.Iterations < 200, $"{solution.Convergence.Iterations} turns\n{text}");
            Assert.InRange(solution.OutOfBalance, 0, 1e-9);
            double opening = solution.Mean(PressSolid.Shares(mesh, solid.Upper)).Z - solution.Mean(PressSolid.Shares(mesh, solid.Lower)).Z, beams = FrameResponse.Of(FramePlan.Of(rig)).DaylightGrowth;
            // thin walls under nuts and legs give in ways that beams do not know; nothing is stiffer than beams by much
            Assert.True(opening > 0.6 * beams, $"solid {opening * 1e9:F2} nm/N, beams {beams * 1e9:F2}\n{text}");
        }

        Assert.True(turns.Order().ElementAt(Many / 2) < 50, $"half of them took {turns.Order().ElementAt(Many / 2)} turns or more");
        Assert.True(stretched > 30, $"no cell is stretched more than {stretched:F0} times: nothing is shown");
        Assert.Equal(8, kinds.Count);
    }
}
