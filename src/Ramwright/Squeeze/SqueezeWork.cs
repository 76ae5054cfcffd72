using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>What a press is put to: the work, how far the ram comes down to it, and the heat in it. SI, temperatures in °C.</summary>
public sealed record SqueezeWork
{
    /// <summary>How far the ram stands above the work before a squeeze, where nothing is said, m.</summary>
    public const double UsualGap = 0.01;

    /// <summary>What pushes back.</summary>
    public required IResistance Resistance { get; init; }
    /// <summary>From where the ram starts to the touch, m.</summary>
    public double Gap { get; init; } = UsualGap;
    /// <summary>How far the rod is out at the touch, m; not less than <see cref="Gap"/>.</summary>
    public required double OutAtTouch { get; init; }
    /// <summary>Time the ram is held down after the squeeze, s.</summary>
    public double Dwell { get; init; }
    /// <summary>The heat of hot work; null for cold.</summary>
    public HotWork? Hot { get; init; }
    /// <summary>What was assumed.</summary>
    public IReadOnlyList<Assumed> Assumed { get; init; } = [];

    /// <summary>A hot squeeze of a press, its first where it is drawn out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="press">The press.</param>
    public static SqueezeWork Of(RigHotSqueeze job, SqueezePress press)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        return Of(job, HotBite.Of(job), AtApproach(job, press), press);
    }

    /// <summary>Mean temperature as the ram starts, °C: so long before the touch as its approach takes, on the way from the fire.</summary>
    public static double AtApproach(RigHotSqueeze job, SqueezePress press)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        double approach = UsualGap / press.Power.ApproachSpeed;
        return BarCooling.After(HotSqueezeDemand.VolumeOverSurface(job), job.Heat, Math.Max(0, job.Transfer - approach), HotSurface.InTheWorkshop);
    }

    /// <summary>One squeeze of a hot job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bite">The squeeze.</param>
    /// <param name="temperature">Mean temperature at the start of the approach, °C.</param>
    /// <param name="press">The press.</param>
    public static SqueezeWork Of(RigHotSqueeze job, HotBite bite, double temperature, SqueezePress press)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Of(bite, job, press) with { Hot = new HotWork(temperature, job.DieHeat, job.Steel.Coldest) };
    }

    /// <summary>Cold work of a press.</summary>
    /// <param name="resistance">What pushes back.</param>
    /// <param name="job">The job.</param>
    /// <param name="press">The press.</param>
    /// <param name="high">How high the work is at the touch, m; 0 where that is the resistance's to say.</param>
    public static SqueezeWork Of(IResistance resistance, RigJob job, SqueezePress press, double high = 0)
    {
        ArgumentNullException.ThrowIfNull(resistance);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        double stroke = press.Stroke, gap = Math.Min(UsualGap, Math.Max(0, stroke - resistance.Travel));
        double height = resistance is HotBite bite ? bite.Height : high;
        double @out;
        var assumed = new List<Assumed>();
        double daylight = press.Rig.Frame.Daylight;
        if (job.Tools is { } tools && daylight > 0)
        {
            @out = Math.Clamp(daylight - tools - height, gap, stroke);
        }
        else
        {
            // a millimetre is left for the frame, which springs
            @out = Math.Max(0, Math.Min(Math.Max(gap, stroke / 2), stroke - resistance.Travel - 1e-3));
            if (daylight - height - @out > 0)
                assumed.Add(new AssumedMeasure(job.Path + ".tools", daylight - height - @out, Dimension.Length, new Remark("so that the ram touches the work {0} out", Remark.Of(@out, Dimension.Length))));
        }

        return new SqueezeWork { Resistance = resistance, Gap = Math.Min(gap, @out), OutAtTouch = @out, Assumed = assumed };
    }
}

/// <summary>The heat of hot work.</summary>
/// <param name="Temperature">Mean temperature at the start of the approach, °C.</param>
/// <param name="DieTemperature">Of the dies, °C.</param>
/// <param name="Coldest">Where forging ends, °C: the ram is lifted there.</param>
public sealed record HotWork(double Temperature, double DieTemperature, double Coldest)
{
    /// <summary>What bare skin loses.</summary>
    public HotSurface Surface { get; init; } = new();
    /// <summary>Conductance where the bar lies on the lower die, W/(m²·K).</summary>
    public double Resting { get; init; } = DieContact.Resting;
    /// <summary>Conductance under load, W/(m²·K).</summary>
    public double UnderLoad { get; init; } = DieContact.UnderLoad;
    /// <summary>Share of the work that turns into heat.</summary>
    public double WorkIntoHeat { get; init; } = BarCooling.WorkIntoHeat;
}
