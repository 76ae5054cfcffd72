using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>The verdict on a job, as one tradesman would tell another.</summary>
public static class JobHeadline
{
    /// <summary>One or two sentences.</summary>
    public static string Of(JobCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        string takes = $"it takes about {ForceText.Of(check.Demand.Peak.Likely, units)}, {ForceText.Of(check.Demand.Peak.High, units)} at the most";
        string doing = check.Demand.Doing, why = check.Worst?.Why.Text(units) ?? "";
        return check.Verdict switch
        {
            Verdict.Holds => $"This press can {doing}: {takes}, and the press is good for {ForceText.Of(check.Available, units)}.",
            Verdict.Marginal when check.Worst!.Id is "pump" or "rating" =>
                $"This press can probably {doing}: {takes}, but {why}. Go gently, watch the gauge, and stop in time.",
            Verdict.Marginal => $"This press can {doing}, with care: {takes}, but {why}.",
            _ when check.Worst!.Id is "pump" or "rating" => $"This press cannot {doing}: it takes about {ForceText.Of(check.Demand.Peak.Likely, units)}, and {why}.",
            _ => $"This press cannot {doing}: {why}.",
        };
    }

    /// <summary>The verdict in a word or two.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "can",
        Verdict.Marginal => "with care",
        _ => "cannot",
    };
}
