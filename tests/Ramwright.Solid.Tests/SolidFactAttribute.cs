using Ramwright.Solid.Tests.Calculix;

namespace Ramwright.Solid.Tests;

/// <summary>A test that runs CalculiX; skipped, with the reason, where it is not installed.</summary>
public sealed class SolidFactAttribute : FactAttribute
{
    internal const string Missing = "CalculiX (ccx) is not installed: only the committed results in docs/solids.csv are compared";

    public SolidFactAttribute()
    {
        if (Solver.Version is null)
            Skip = Missing;
    }
}
