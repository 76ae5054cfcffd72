using Ramwright.Frame;

namespace Ramwright.Ladders;

/// <summary>Places of a part that are looked at, with what acts there in every load case: worked out once for all checks of the part.</summary>
internal sealed class Places
{
    private readonly PlanStation[] _stations;
    private readonly Actions[][] _actions;      // by load case, by station

    private Places(IReadOnlyList<FrameSolution> solutions, PlanStation[] stations, Actions[][] actions) =>
        (Solutions, _stations, _actions) = (solutions, stations, actions);

    /// <summary>The load cases.</summary>
    public IReadOnlyList<FrameSolution> Solutions { get; }

    /// <summary>The places.</summary>
    public ReadOnlySpan<PlanStation> Stations => _stations;

    /// <summary>What acts at each of them in a load case.</summary>
    public ReadOnlySpan<Actions> At(int solution) => _actions[solution];

    public static Places Of(FrameResponse response, IEnumerable<PlanStation> stations)
    {
        PlanStation[] all = [.. stations];
        var actions = new Actions[response.Solutions.Count][];
        for (int i = 0; i < actions.Length; i++)
            actions[i] = Array.ConvertAll(all, s => s.Actions(response.Solutions[i]));
        return new Places(response.Solutions, all, actions);
    }

    /// <summary>Those with something cut out.</summary>
    public Places CutBy(PlanCut cut)
    {
        int[] there = [.. Enumerable.Range(0, _stations.Length).Where(i => _stations[i].Cut == cut || _stations[i].Cut == PlanCut.Both)];
        return new Places(Solutions, Array.ConvertAll(there, i => _stations[i]), Array.ConvertAll(_actions, a => Array.ConvertAll(there, i => a[i])));
    }
}
