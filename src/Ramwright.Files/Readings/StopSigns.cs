using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>What a log holds that means stop.</summary>
internal static class StopSigns
{
    public static IEnumerable<string> Of(Proof proof)
    {
        string Length(double m) => Readout.Text(m, Dimension.Length, proof.Units, 2);
        foreach (PlacedFault cannot in proof.Impossible)
            yield return $"line {cannot.Line}: {cannot.Found}. It is not counted. If the gauge really stood there the press was overloaded. {TrueForce.Strike(cannot.Line)}";
        foreach (Reading reading in proof.Book.All)
        {
            if (ReadingSense.Overload(proof.Check, proof.Plan.Proof, reading) is { } p)
            {
                yield return $"line {reading.Line}: {Readout.Text(p, Dimension.Pressure, proof.Units, 4)} is beyond the proof and beyond what limits the pump: if it stood there the press was overloaded, "
                    + $"and every weld, bolt and dial is looked at before it is used. {TrueForce.Strike(reading.Line)}";
            }
        }

        if (proof.Untold is { } why)
            yield return "no true force: " + why;
        foreach (Stiffness s in proof.Stiffness)
        {
            if (s.IsSet)
                yield return $"a set of {Length(s.Set!.Value)} stayed at the {s.Point.Name}, more than the dial can be off ({Length(s.SetLimit)}): not to be used until it is known what gave";
        }

        foreach (Stiffness s in proof.Stiffness)
        {
            (DialReading At, double Stop)[] beyond = [.. Beyond(proof, s)];
            if (beyond.Length == 0)
                continue;
            (DialReading worst, double stop) = beyond.MaxBy(r => r.At.Moved / r.Stop);
            string more = beyond.Length > 1 ? $", the worst of {beyond.Length} such readings" : "";
            yield return $"line {worst.From.Line}: the dial at the {s.Point.Name} stood at {Length(worst.Moved)}, beyond its stop reading of {Length(stop)}{more}";
        }

        foreach (Reading look in proof.Book.Of(ReadingKind.Look).GroupBy(r => r.At).Select(g => g.Last()))
        {
            if (look.Word == "not-ok")
                yield return $"line {look.Line}: {look.At} was looked at and is not in order{(look.Note.Length > 0 ? ": " + look.Note : "")}";
        }

        foreach ((int step, string word) in proof.Closed)
        {
            if (word == "stopped")
                yield return $"step {step} was stopped";
        }
    }

    /// <summary>Dials on the way up that stood beyond what their step allows.</summary>
    private static IEnumerable<(DialReading At, double Stop)> Beyond(Proof proof, Stiffness s)
    {
        foreach (DialReading r in s.Readings)
        {
            if (r.From is not { Pressure: > 0 and var p, Way: not Way.Down } || proof.Plan.StepAt(p) is not { Pressure: > 0 } step
                || step.Dials.FirstOrDefault(d => d.Place == s.Point.Name) is not { } dial)
                continue;
            // the forecast grows with the pressure: it is held at the one that was really there
            double stop = dial.StopAt * Math.Max(1, p / step.Pressure);
            if (r.Moved > stop)
                yield return (r, stop);
        }
    }
}
