using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What any job asks of the ram.</summary>
public static class JobDemand
{
    /// <summary>The demand of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="speedAt">Speed of the ram at a force, m/s; it matters for hot work only.</param>
    /// <param name="w">Where to write the working down.</param>
    public static Demand Of(RigJob job, Func<double, double> speedAt, Working? w = null) => job switch
    {
        RigHotSqueeze hot => HotSqueezeDemand.Of(hot, speedAt, w),
        RigClosedDie die => ClosedDieDemand.Of(die, speedAt, w),
        RigVBend bend => BendDemand.Of(bend, w),
        RigBarBend bend => BendDemand.Of(bend, w),
        RigStraighten straighten => StraightenDemand.Of(straighten, w),
        RigCut cut => CutDemand.Of(cut, w),
        RigPressFit fit => FitDemand.Of(fit, w),
        RigPull pull => FitDemand.Of(pull, w),
        RigCrush crush => CrushDemand.Of(crush, w),
        RigCrushTimber timber => CrushDemand.Of(timber, w),
        RigSplitTimber log => CrushDemand.Of(log, w),
        RigCrushConcrete concrete => CrushDemand.Of(concrete, w),
        _ => throw new ArgumentException($"{job?.GetType().Name} is no job that is known here", nameof(job)),
    };
}
