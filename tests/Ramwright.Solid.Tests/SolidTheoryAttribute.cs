using Ramwright.Solid.Tests.Calculix;

namespace Ramwright.Solid.Tests;

/// <summary>A theory that runs CalculiX; skipped, with the reason, where it is not installed.</summary>
public sealed class SolidTheoryAttribute : TheoryAttribute
{
    public SolidTheoryAttribute()
    {
        if (Solver.Version is null)
            Skip = SolidFactAttribute.Missing;
    }
}
