namespace Ramwright.Presses;

/// <summary>What cannot be true together of welding and prices.</summary>
internal static class WelderRules
{
    public static void Check(Press press, List<Fault> faults)
    {
        IReadOnlyList<SteelAnalysis> analyses = press.Welding?.Analyses ?? [];
        for (int i = 0; i < analyses.Count; i++)
        {
            if (analyses[i] is not { } a)
                continue;           // could not be read, and has its own fault
            double sum = (a.Carbon ?? 0) + (a.Silicon ?? 0) + (a.Manganese ?? 0) + (a.Chromium ?? 0) + (a.Molybdenum ?? 0) + (a.Nickel ?? 0) + (a.Copper ?? 0)
                + (a.Vanadium ?? 0) + (a.Boron ?? 0);
            if (sum > 0.5)
                faults.Add(new Fault($"welding.analyses.{i}", $"the elements add up to {sum * 100:0.#} %: then it is no longer steel", "the shares of a mill certificate, in per cent"));
        }
    }
}
