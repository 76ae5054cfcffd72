namespace Ramwright.Frame;

/// <summary>Solves a frame of beams for any number of load cases with one factorisation.</summary>
public static class FrameSolver
{
    /// <summary>Solves.</summary>
    /// <param name="model">The frame.</param>
    /// <param name="cases">The load cases.</param>
    /// <returns>One solution a case, in order.</returns>
    public static IReadOnlyList<FrameSolution> Solve(FrameModel model, IReadOnlyList<LoadCase> cases) =>
        throw new NotImplementedException();
}
