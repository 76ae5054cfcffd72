using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Tests.Frame;

/// <summary>The residual itself: it sees an imbalance of a given size, and none where there is none.</summary>
public class EquilibriumTest
{
    private static readonly RandomFrame Any = RandomFrame.Make(6, 4, 20);

    [Fact]
    public void SolvedFramesBalance() =>
        Near.Absolute(0, Equilibrium.Residual(Any.Model, FrameSolver.Solve(Any.Model, [Any.First])[0]), 1e-9);

    [Fact]
    public void ALoadThatWasNotSolvedForIsSeen()
    {
        LoadCase more = Any.First with { OnNodes = [.. Any.First.OnNodes, new NodalLoad(2, new Vector(0, 5, 0))] };
        double forces = more.OnNodes.Sum(p => p.Force.Length) + more.OnMembers.Sum(q => q.PerMetre.Length * (q.To - q.From));
        FrameSolution solved = FrameSolver.Solve(Any.Model, [Any.First])[0];

        double residual = Equilibrium.Residual(Any.Model, new Claim(solved, more));

        Assert.InRange(residual, 0.2 * 5 / forces, 1.5 * 5 / forces);
    }

    [Fact]
    public void NoLoadsNoResidual() =>
        Assert.Equal(0, Equilibrium.Residual(Any.Model, FrameSolver.Solve(Any.Model, [new LoadCase("none", [], [])])[0]));

    /// <summary>A solution passed off as that of another case.</summary>
    private sealed class Claim(FrameSolution solved, LoadCase claimed) : FrameSolution
    {
        public override LoadCase Case => claimed;
        public override Vector Displacement(int node) => solved.Displacement(node);
        public override Vector Rotation(int node) => solved.Rotation(node);
        public override Actions At(int member, double x) => solved.At(member, x);
        public override Vector DisplacementAlong(int member, double x) => solved.DisplacementAlong(member, x);
        public override Vector RotationAlong(int member, double x) => solved.RotationAlong(member, x);
        public override double Length(int member) => solved.Length(member);
        public override (Vector Force, Vector Moment) Reaction(int node) => solved.Reaction(node);
    }
}
