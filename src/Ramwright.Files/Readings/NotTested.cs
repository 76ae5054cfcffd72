using Ramwright.Proving;

namespace Ramwright.Files.Readings;

/// <summary>What a test left out: said on its record, so that nobody reads more out of it than is in it.</summary>
internal static class NotTested
{
    public static IReadOnlyList<string> Of(Proof proof)
    {
        var missing = new List<string>();
        var looked = proof.Book.Of(ReadingKind.Look).Where(r => r.Word != "not-looked").Select(r => r.At).ToHashSet(StringComparer.Ordinal);
        PlanTask[] tasks = [.. proof.Plan.Looks, .. proof.Plan.After.Where(t => t.Name != "plate")];
        string[] unlooked = [.. tasks.Where(t => !looked.Contains(t.Name)).Select(t => t.Name)];
        if (unlooked.Length > 0)
            missing.Add("not looked at, or not written down: " + string.Join(", ", unlooked));
        string[] open = [.. proof.Plan.Steps.Where(s => !proof.Closed.ContainsKey(s.Number)).Select(s => $"{s.Number} ({s.What})")];
        if (open.Length > 0)
            missing.Add("steps not closed: " + string.Join(", ", open));
        void Unread(ReadingKind kind, string what)
        {
            if (proof.Book.Of(kind).Count == 0)
                missing.Add(what);
        }

        Unread(ReadingKind.TopPressure, "true force: no pressure was read with the ram dead against a block");
        Unread(ReadingKind.Load, "no load cell or known weight stood against the gauge");
        Unread(ReadingKind.SlowOut, "seal friction");
        Unread(ReadingKind.Bore, "the bore was not measured");
        Unread(ReadingKind.TimeOut, "the pump's flow");
        Unread(ReadingKind.LeakDown, "leak-down at the proof");
        foreach (DialPoint point in proof.Plan.Points)
        {
            if (!proof.Stiffness.Any(s => s.Point.Name == point.Name))
                missing.Add($"no dial was read at the {point.Name}");
        }

        missing.AddRange(proof.Stiffness.Where(s => s.Set is null).Select(s => $"set at the {s.Point.Name}: no reading at nothing before and after"));
        missing.Add("work off centre and side push: the proof was central");
        missing.Add("repeated squeezes: what lasts is reckoned, not tested");
        missing.Add("inside of welds: looked at from outside only");
        missing.AddRange(proof.Log.Struck.Select(s => s.ToString()));
        if (proof.Log.Faults.Count > 0)
            missing.Add($"lines of the log that could not be read, or cannot be so, and are not counted: {string.Join(", ", proof.Log.Faults.Select(f => f.Line))}");
        return missing;
    }
}
