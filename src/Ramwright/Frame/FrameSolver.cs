namespace Ramwright.Frame;

/// <summary>Solves a frame of beams for any number of load cases with one factorisation.</summary>
/// <remarks>
/// Small displacements, linear elastic. Each beam has one axis, through the centroids: shear and loads are taken to pass
/// through it. A section whose shear centre lies off it (<see cref="Stock.SectionProperties.ShearCentreY"/>, a channel) also
/// twists by the load times that distance; whoever lays out the frame adds that torque as a moment, or the load on a node
/// with an arm. Warping is not held anywhere: torsion is Saint-Venant's.
/// </remarks>
public static class FrameSolver
{
    /// <summary>Solves.</summary>
    /// <param name="model">The frame.</param>
    /// <param name="cases">The load cases.</param>
    /// <returns>One solution a case, in order.</returns>
    /// <exception cref="ArgumentException">
    /// A frame or a load that cannot be: see <see cref="FactoredFrame(FrameModel)"/> and
    /// <see cref="FactoredFrame.Solve(IReadOnlyList{LoadCase})"/>.
    /// </exception>
    /// <exception cref="FrameMovesException">Something can move freely.</exception>
    public static IReadOnlyList<FrameSolution> Solve(FrameModel model, IReadOnlyList<LoadCase> cases) =>
        new FactoredFrame(model).Solve(cases);
}
