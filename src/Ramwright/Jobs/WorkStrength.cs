using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>How strong the steel of a workpiece may really be: standards promise a least strength, and bars come stronger.</summary>
public static class WorkStrength
{
    /// <summary>Shop bars over their least yield.</summary>
    public static readonly Citation YieldSource = Citation.Practice("true yield of shop bars is 1.1 to 1.4 times the least one");
    /// <summary>Tensile strength over its least.</summary>
    public static readonly Citation TensileSource = Citation.Practice("EN 10025-2 lets tensile strength run to about 1.35 times its least");

    /// <summary>Yield strength, Pa.</summary>
    public static Band Yield(WorkSteel steel)
    {
        ArgumentNullException.ThrowIfNull(steel);
        return steel.HasPapers ? new(steel.Yield, 1.2 * steel.Yield, 1.4 * steel.Yield) : new(steel.Yield, 1.5 * steel.Yield, 3 * steel.Yield);
    }

    /// <summary>Tensile strength, Pa.</summary>
    public static Band Tensile(WorkSteel steel)
    {
        ArgumentNullException.ThrowIfNull(steel);
        return steel.HasPapers ? new(steel.Tensile, 1.15 * steel.Tensile, 1.35 * steel.Tensile) : new(steel.Tensile, 1.5 * steel.Tensile, 3 * steel.Tensile);
    }

    /// <summary>Why it differs, as a clause.</summary>
    public static string Spread(WorkSteel steel) =>
        steel?.HasPapers == true ? "bars are up to 1.4 times as strong as their grade promises" : "nobody knows what unknown steel is: it may be three times as strong";
}
