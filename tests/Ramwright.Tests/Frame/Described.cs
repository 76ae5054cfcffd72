using Ramwright.Files;
using Ramwright.Presses;

namespace Ramwright.Tests.Frame;

/// <summary>A press read from its text, around a frame.</summary>
internal static class Described
{
    public static Rig Rig(string frame, string loading = "off-centre-across: 20 mm, off-centre-deep: 10 mm, side-load: 2 %", string wanted = "10 t")
    {
        string text = $$"""
            wanted: {{wanted}}
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 2.2 kW }
            loading: { {{loading}} }
            frame:
            {{string.Join('\n', frame.ReplaceLineEndings("\n").Split('\n').Select(l => "  " + l))}}
            """;
        PressReading reading = PressFile.Read(text, "test.press.yaml", StockTables.Built);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults) + text);
        return Resolver.Resolve(reading.Press!, StockTables.Built);
    }

    /// <summary>One frame of every kind and way of standing, for what must hold for all of them.</summary>
    public static readonly IReadOnlyDictionary<string, string> Kinds = new Dictionary<string, string>
    {
        ["closed"] = """
            kind: closed
            daylight: 600 mm
            width: 500 mm
            section: 2 x UPN 160
            """,
        ["closed, lying"] = """
            kind: closed
            horizontal: yes
            daylight: 600 mm
            width: 500 mm
            section: HEB 160
            """,
        ["closed, its bed on pins"] = """
            kind: closed
            daylight: 800 mm
            width: 500 mm
            section: 2 x UPN 180
            crown-joint: { kind: bolt, thread: M20, class: 8.8, count: 4, friction: 0.3 }
            bed-pins: { diameter: 40 mm, pitch: 120 mm, count: 4, steel: C45+QT }
            """,
        ["free"] = """
            kind: free
            daylight: 600 mm
            section: HEB 160
            cylinder-at: c2
            work-at: b2
            points:
              - { name: b1 }
              - { name: b2, right: 350 mm }
              - { name: b3, right: 700 mm }
              - { name: c1, right: 100 mm, up: 900 mm }
              - { name: c2, right: 350 mm, up: 900 mm }
              - { name: c3, right: 600 mm, up: 900 mm }
            bars:
              - { name: bed left, from: b1, to: b2 }
              - { name: bed right, from: b2, to: b3 }
              - { name: crown left, from: c1, to: c2 }
              - { name: crown right, from: c2, to: c3 }
              - { name: left leg, from: b1, to: c1, to-joint: { kind: weld, weld: { leg: 8 mm } } }
              - { name: right leg, from: b3, to: c3, from-joint: { kind: bolt, thread: M20, class: 8.8, count: 4 } }
            """,
        ["open-front, lying"] = """
            kind: open-front
            horizontal: yes
            daylight: 300 mm
            throat: 200 mm
            section: HEB 200
            """,
        ["two tie rods on beams"] = """
            kind: tie-rod
            daylight: 500 mm
            rods-across: 400 mm
            section: 2 x UPN 160
            rod: { thread: M36, class: 8.8 }
            """,
        ["four tie rods on plates, lying"] = """
            kind: tie-rod
            horizontal: yes
            daylight: 500 mm
            rods-across: 400 mm
            rods-deep: 200 mm
            die-width: 60 mm
            crown-plate: { thickness: 60 mm, width: 300 mm }
            bed-plate: { thickness: 50 mm, width: 320 mm, hole: 80 mm }
            rod: { thread: M30, steel: C45+N, shank: 30 mm, sleeve: { outside: 60 mm, inside: 34 mm }, preload: 60 kN }
            """,
    };
}
