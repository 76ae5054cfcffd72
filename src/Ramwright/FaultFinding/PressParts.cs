using Ramwright.Presses;

namespace Ramwright.FaultFinding;

/// <summary>The parts of a press, by the words that the tables of causes and signs use.</summary>
public static class PressParts
{
    /// <summary>All words there are.</summary>
    public static IReadOnlyList<string> Words { get; } =
        ["air", "electric", "hand", "two-stage", "relief", "oil-return", "spring-return", "holding", "hoses", "hollow", "raised"];

    /// <summary>The words that a press has.</summary>
    /// <param name="rig">The press.</param>
    public static IReadOnlySet<string> Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var parts = new HashSet<string>(StringComparer.Ordinal);
        void Have(string word, bool has)
        {
            if (has)
                parts.Add(word);
        }

        Have("air", rig.Pump is RigAirPump);
        Have("electric", rig.Pump is RigElectricPack);
        Have("hand", rig.Pump is RigHandPump);
        Have("two-stage", rig.Pump is RigElectricPack { LowStage: not null } || rig.Pump is RigHandPump h && h.LowPerStroke > h.PerStroke);
        Have("relief", rig.Pump.Relief is not null);
        Have("oil-return", rig.Cylinder.PullsByOil);
        Have("spring-return", !rig.Cylinder.PullsByOil && rig.Cylinder.Return is RamReturn.Spring);
        Have("holding", rig.Valves.Holding is HoldingValve.PilotCheck or HoldingValve.Counterbalance);
        Have("hoses", rig.Lines.Count > 0);
        Have("hollow", rig.Cylinder.CentreTube > 0);
        Have("raised", !rig.Frame.Horizontal);
        return parts;
    }
}
