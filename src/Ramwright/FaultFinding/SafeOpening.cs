using Ramwright.Presses;

namespace Ramwright.FaultFinding;

/// <summary>What stands before any step that opens a line or takes a part out of a press.</summary>
public static class SafeOpening
{
    /// <summary>The steps, in their order, for a press.</summary>
    /// <param name="rig">The press.</param>
    public static IReadOnlyList<string> Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return
        [
            rig.Frame.Horizontal ? "Take the load off. Block the ram so that it cannot run either way." : "Take the work out. Lower the ram onto a solid block, or prop it: oil alone does not hold it while a line is open.",
            rig.Pump switch
            {
                RigAirPump => "Shut the air off at the wall and let it out of hose and regulator; lock the cock or take the hose with you.",
                RigElectricPack => "Switch off, pull the plug or lock the isolator, and try the start button.",
                _ => "Take the handle out of the pump.",
            },
            "Let the pressure off: valve to both sides and back, release valve open, return spring or weight let go. Hoses and holding valves can keep pressure though the gauge shows none.",
            .. rig.Valves.Holding is HoldingValve.PilotCheck or HoldingValve.Counterbalance ? (string[])["The holding valve shuts pressure into the cylinder: let it off as its maker says, with the ram on its block, before a fitting there is touched."] : [],
            "See the gauge at zero, wait a minute, look again.",
            "Goggles and gloves. Cover the fitting with a rag, slacken it half a turn and wait until nothing more comes, then undo it. Never feel for a leak: card or mirror.",
            "Oil warm, not hot. Catch it, cap both ends, keep dirt out.",
        ];
    }
}
