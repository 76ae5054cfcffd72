using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>Where to stand while a press is proved, what to put between, and what means stop.</summary>
internal static class PlanStand
{
    /// <summary>Impact classes of eye and face protection, m/s: EN 166 F, B, A, from memory.</summary>
    private const double SpectaclesUpTo = 45, FaceShieldUpTo = 190;

    public static IReadOnlyList<string> Of(PressCheck check, ProofForce proof, UnitSystem units)
    {
        SnapThrough snap = check.SnapThrough.At(proof.Force > 0 ? proof.Force : check.Power.MostPossibleForce);
        string Energy(double e) => Readout.Text(e, Dimension.Energy, units, 2);
        double v = snap.SpeedOf(0.1);
        string speed = Units.TryFind(units == UnitSystem.Imperial ? "ft/s" : "m/s", Dimension.Speed, out Unit? unit) ? Readout.Text(v, unit, 2) : Readout.Text(v, Dimension.Speed, units, 2);
        string shield = v > FaceShieldUpTo ? "faster than any face shield is made for: steel plate between, or be elsewhere"
            : v > SpectaclesUpTo ? "more than spectacles are made for: a screen or plate between, and a face shield" : "spectacles and a screen";
        bool open = check.Rig.Frame is RigOpenFrontFrame;
        // closing speed above which a hand is not quick enough: EN ISO 16092-3, from memory
        const double Slow = 0.010;
        bool fast = check.Power.ApproachSpeed > Slow && check.Rig.Guard is null or RigHoldToRun;
        return
        [
            .. fast ? (string[])[$"The ram closes at {Readout.Text(check.Power.ApproachSpeed, Dimension.Speed, units, 2)} and nothing but the operator's hold stops it: above {Readout.Text(Slow, Dimension.Speed, units)} a hand is not quick enough. No hand between the dies while anything runs."] : [],
            $"At the proof {Energy(snap.Energy)} is stored, {Energy(snap.InOil)} of it in the oil. If all of it went into a piece of {Readout.Text(0.1, Dimension.Mass, units, 2)} it would fly at {speed}, an upper bound: {shield}.",
            open
                ? "Nobody before the open front: work and blocks leave that way. Stand behind the column's line, to one side, the length of a long hose away."
                : check.Rig.Frame is RigTieRodFrame ? "Nobody in line with a tie rod or with the ram, at either end. Stand to the side, the length of a long hose away."
                : "Nobody before or behind the opening: blocks leave that way. Stand in line with an upright, the length of a long hose away.",
            "Work the valve and read the gauge from there; read dials through a screen or by a camera, or only when the pressure is off its highest and steady for a minute.",
            "Two persons, one at the valve and one who can stop the pump; nobody else in the room.",
            "Oil only, all air bled. Never feel for a leak. A pinhole wound, however small: hospital at once, say high-pressure injection.",
            "This test is the builder's own. Where the law asks for a test by others, or people other than the builder use the press, have it done by them.",
        ];
    }

    public static IReadOnlyList<string> Stops(PressCheck check, UnitSystem units)
    {
        Instrument dial = Instrument.Usual(ReadingKind.Dial, 0);
        double step = dial.Limit;
        return
        [
            "a dial beyond the stop reading of its step",
            $"a dial that creeps on at steady pressure, more than {Readout.Text(step, Dimension.Length, units)} in a minute",
            "a crack of sound, a bang, scale or paint that flakes along a line",
            "a joint that opens, a bolt or pin that moves, a ram that leans",
            "oil from anywhere; a pressure that falls with everything shut",
            "a gauge that does not come back to zero",
            $"dials that do not come back within {Readout.Text(Stiffness.SetLimitOf(dial), Dimension.Length, units, 2)} when all pressure is off: a set. Not to be used; find what gave",
        ];
    }
}
