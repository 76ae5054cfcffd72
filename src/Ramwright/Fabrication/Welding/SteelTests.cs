using Ramwright.Quantities;

namespace Ramwright.Fabrication.Welding;

/// <summary>How a workshop finds out whether a bar without papers may be welded; common practice of smiths and repairers.</summary>
public static class SteelTests
{
    /// <summary>The tests, in the order in which they are made.</summary>
    /// <param name="units">Whose sizes are said; round in either.</param>
    public static IReadOnlyList<string> Steps(UnitSystem units) =>
    [
        "Ask what it was. Springs, fork tines, axles, track pins, rail and tools are hardenable: leave them out of every weld that carries the force.",
        "File it. A new file that skates and does not bite means hardened steel: stop here.",
        $"Spark it on a grinding wheel beside a piece of known S235 and, if there is one, an old file. Long plain lines with few forks: little carbon. Short lines that burst into many fine stars near the wheel: much carbon: stop here. Wear eye protection; nothing that burns within {(units == UnitSystem.Imperial ? "16 ft" : "5 m")}.",
        $"Harden a strip: cut {(units == UnitSystem.Imperial ? "1/4 in by 1/4 in by 4 in" : "6 mm by 6 mm by 100 mm")} cold, heat it to bright red for a minute, quench it in water, and file it. If the file now skates it has more than about 0.3 % of carbon: do not weld it. Clamp it behind a guard and bend it: mild steel bends flat, hard steel snaps and throws pieces.",
        $"Make a trial joint: two pieces of the same bar, at least {(units == UnitSystem.Imperial ? "4 in" : "100 mm")} long, of the thickness of the job, one fillet on one side only, as the job will be welded. Let it cool, wait two days, look at it with dye.",
        "Break it open: hold one piece, hammer or press the other over the root so that the weld opens, from behind a guard. Sound weld bends or tears slowly through its own throat with a grey, silky face. A bright, grainy break beside the weld, or one along the edge of it, means the steel hardened: do not weld it.",
        "Best of all have a chip of it analysed: the cheapest sure answer. Write the result under welding.analyses and the plan names a preheat.",
    ];

    /// <summary>What no test replaces.</summary>
    public const string Limit =
        "These tests can show that a steel is bad. They do not prove that it is good: what passes them is still counted as the lowest grade, and where a failure could hurt someone, bolt it or buy steel with papers.";
}
