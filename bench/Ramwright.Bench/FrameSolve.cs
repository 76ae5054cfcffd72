using BenchmarkDotNet.Attributes;
using Ramwright.Frame;

namespace Ramwright.Bench;

/// <summary>A press frame of 40 members under 6 load cases: from the model to every movement, force and reaction.</summary>
[MemoryDiagnoser]
public class FrameSolve
{
    private readonly FrameModel _model = FortyMembers.Model;
    private readonly LoadCase[] _cases = FortyMembers.Cases;
    private readonly FactoredFrame _factored = new(FortyMembers.Model);

    [Benchmark(Baseline = true)]
    public IReadOnlyList<FrameSolution> CheckFactorAndSolve() => FrameSolver.Solve(_model, _cases);

    [Benchmark]
    public FactoredFrame CheckAndFactor() => new(_model);

    [Benchmark]
    public IReadOnlyList<FrameSolution> SolveSixCases() => _factored.Solve(_cases);
}
