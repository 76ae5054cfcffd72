namespace Ramwright.Files.Dossier;

/// <summary>The hydraulic circuit with its settings.</summary>
internal static class CircuitChapter
{
    public static Chapter Of(Papers p) => new("Hydraulic circuit",
    [
        new Picture(p.Circuit.Sheet, "Symbols after ISO 1219-1, at rest: pump standing, nobody at the lever.") { Shrinks = true },
        new Grid([new("no.", 0.5, true), new("component", 2.6), new("setting", 5)], [.. p.Circuit.Components.Select(c => (IReadOnlyList<string>)[$"{c.Number}", c.What, c.Setting])]),
        new Heading("Before oil goes in"),
        new Items(
        [
            "Every hose, fitting, valve and the gauge rated for more than the relief valve's setting, marked as such, and new where it was not proved.",
            "Thread and seal named at both ends of every connection; taper threads of two families never forced together.",
            "Relief valve between pump and every valve that can block, with no tap in between; set on a gauge, then sealed.",
            "Hoses clear of heat, scale and sharp edges, with no bend tighter than their type allows, tied at both ends.",
            "A cap on every open end until it is joined: dirt ends pumps and valves.",
            "Pressure let off, ram down or propped, gauge at zero, before any fitting is loosened.",
        ], ItemMark.Box),
    ]);
}
