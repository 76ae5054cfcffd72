using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>What a log holds that means stop.</summary>
internal static class StopSigns
{
    public static IEnumerable<string> Of(Proof proof)
    {
        string Length(double m) => Readout.Text(m, Dimension.Length, proof.Units, 2);
        foreach (Stiffness s in proof.Stiffness)
        {
            if (s.IsSet)
                yield return $"a set of {Length(s.Set!.Value)} stayed at the {s.Point.Name}, more than the dial can be off ({Length(s.SetLimit)}): not to be used until it is known what gave";
        }

        foreach (Stiffness s in proof.Stiffness)
        {
            foreach (DialReading r in s.Readings)
            {
                if (r.From.Pressure is { } p && r.From.Way != Way.Down && p > 0 && proof.Plan.StepAt(p) is { } step
                    && step.Dials.FirstOrDefault(d => d.Place == s.Point.Name) is { } dial && step.Pressure > 0)
                {
                    // the forecast grows with the pressure: it is held at the one that was really there
                    double stop = dial.StopAt * Math.Max(1, p / step.Pressure);
                    if (r.Moved > stop)
                        yield return $"line {r.From.Line}: the dial at the {s.Point.Name} stood at {Length(r.Moved)}, beyond its stop reading of {Length(stop)}";
                }
            }
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
}
