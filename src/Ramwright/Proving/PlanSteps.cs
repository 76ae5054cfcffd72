using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>The loaded steps of a test: seat the parts, go up in quarters, prove, come down, and the rating once more.</summary>
internal static class PlanSteps
{
    /// <summary>Dwell at a step, and at the proof, s: common practice; ten minutes at proof as shop presses are proved.</summary>
    private const double Dwell = 60, ProofDwell = 600;

    /// <summary>A dial this far beyond what is expected means stop: the model's own band and as much again.</summary>
    private const double Beyond = 1 + 2 * Stiffness.ModelBand;

    public static IReadOnlyList<PlanStep> Of(PressCheck check, ProofForce proof, IReadOnlyList<DialPoint> points, UnitSystem units)
    {
        var steps = new List<PlanStep>();
        double dial = Instrument.Usual(ReadingKind.Dial, 0).Limit;
        double rating = Math.Min(proof.Rating, proof.Force);
        Unit unit = Readout.UnitFor(Dimension.Pressure, units);
        double grain = unit.ToSi(units == UnitSystem.Imperial ? 10 : 1);
        Add("seat the parts", Way.Up, 0.1 * rating, Dwell, dials: false);      // what seats is no give of the frame
        Add("back to nothing: set every dial to zero", Way.Down, 0, Dwell);
        Add("a quarter of the rating", Way.Up, 0.25 * rating, Dwell);
        Add("half the rating", Way.Up, 0.5 * rating, Dwell);
        Add("three quarters of the rating", Way.Up, 0.75 * rating, Dwell);
        bool more = proof.Force > 1.02 * rating;
        Add(more ? "the rating" : "the rating, held as its proof", Way.Up, rating, more ? Dwell : ProofDwell);
        if (more)
        {
            if (proof.Force > 1.15 * rating)
                Add("half way to the proof", Way.Up, (rating + proof.Force) / 2, Dwell);
            Add("PROOF, once", Way.Up, proof.Force, ProofDwell);
            Add("the rating, coming down", Way.Down, rating, Dwell);
        }

        Add("half the rating, coming down", Way.Down, 0.5 * rating, Dwell);
        Add("nothing: what stays is the set", Way.Down, 0, ProofDwell / 2);
        Add("the rating again, after the proof", Way.Up, rating, Dwell);
        Add("nothing again", Way.Down, 0, Dwell);
        return steps;

        void Add(string what, Way way, double thrust, double dwell, bool dials = true)
        {
            // down to what can be read off a gauge, never up
            double p = Math.Floor(thrust / check.Power.Areas.Force / grain + 1e-9) * grain;
            thrust = p * check.Power.Areas.Force;
            double ram = p > 0 ? RamForce.Net(p, check.Power.Areas.Force, check.Rig.Cylinder.SealFriction, OilToRam.SpringOf(check.Rig.Cylinder).Value) : 0;
            steps.Add(new PlanStep(steps.Count + 1, what, way, p, thrust, ram, dwell,
                [.. (dials ? points : []).Select(d => new DialForecast(d.Name, d.PerNewton * ram, Beyond * d.PerNewton * thrust + dial))],
                Setting(check, p, units)));
        }
    }

    private static string Setting(PressCheck check, double p, UnitSystem units)
    {
        if (p <= 0)
            return "let all pressure off";
        string at = Readout.Text(p, Dimension.Pressure, units);
        return check.Rig.Pump switch
        {
            // below about one bar an air motor hardly moves: common practice
            RigAirPump air when p / air.EffectiveRatio < 1e5 => $"air by short bursts from the hand valve until the gauge stands at {at}: so low the pump hardly runs by its regulator",
            RigAirPump air => $"air regulator at {Readout.Text(p / air.EffectiveRatio, Dimension.Pressure, units, 2)}: it stalls at {at}",
            RigHandPump => $"stop pumping at {at} on the gauge",
            _ => check.Rig.Pump.Relief is null ? $"stop the pump at {at}" : $"relief valve wound in from fully out until the gauge stands at {at}",
        };
    }
}
