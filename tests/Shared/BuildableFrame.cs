using System.Globalization;

namespace Ramwright.Tests;

/// <summary>Frames made up as a workshop might build them, of every kind: sizes that go together, in any mix of sections, joints and proportions.</summary>
internal sealed class BuildableFrame(int seed)
{
    private static readonly string[] Singles =
    [
        "HEB 120", "HEB 160", "HEB 200", "HEM 160", "IPE 160", "IPE 220", "flat 120x30", "flat 200x40", "flat 250x60", "box 160x100x8", "box 200x150x12", "SHS 100x100x6", "SHS 150x150x10",
        "RHS 150x100x8", "HEB 160 turned", "square 80", "round 80", "CHS 139.7x10",
    ];

    private static readonly string[] Pairs = ["2 x UPN 120", "2 x UPN 160", "2 x UPN 220", "2 x flat 150x20", "2 x flat 200x25", "2 x UPN 140 toes together"];
    private static readonly string[] Clasped = ["flat 100x40", "flat 150x50", "SHS 100x100x6", "2 x UPN 120", "HEB 120"];
    private readonly Random _random = new(seed);

    /// <summary>Its description, as a press file has it under <c>frame</c>.</summary>
    public string Text() => (seed % 10) switch
    {
        < 4 => Closed(),
        < 6 => Clasping(),
        < 7 => OpenFront(),
        < 9 => TieRods(),
        _ => Free(),
    };

    // the ways of one kind, in turn
    private int Way => (seed / 10 + seed) % 4;

    private string Closed()
    {
        string fit = One("between", "over"), section = One(Singles);
        string joint = One("{ kind: weld, fit: FIT, weld: { kind: butt } }", "{ kind: weld, fit: FIT, weld: { leg: 8 mm } }").Replace("FIT", fit, StringComparison.Ordinal);
        return $"""
            kind: closed
            daylight: {Between(200, 1200)} mm
            width: {Between(250, 1000)} mm
            die-width: {Between(30, 150)} mm
            section: {section}
            crown: {Odd(section)}
            crown-joint: {joint}
            bed-joint: {joint}
            {Bolster()}
            """;
    }

    // halves round the uprights: welded, bolted, on pins, or the bed on pins
    private string Clasping()
    {
        string weld = "{ kind: weld, fit: lapped, weld: { leg: 8 mm } }", bolt = $"{{ kind: bolt, fit: lapped, thread: {One("M16", "M20", "M24")}, class: 8.8, count: 4, friction: 0.3 }}";
        string pin = $"{{ kind: pin, fit: lapped, diameter: {Between(25, 50)} mm, steel: C45+QT }}";
        (string crown, string bed) = Way switch
        {
            0 => (weld, $"bed-joint: {weld}"),
            1 => (bolt, $"bed-joint: {bolt}"),
            2 => (pin, $"bed-joint: {One(weld, bolt)}"),
            _ => (One(weld, bolt), $"bed-pins: {{ diameter: {Between(25, 45)} mm, pitch: {Between(90, 140)} mm, count: {_random.Next(2, 5)}, steel: C45+QT }}"),
        };
        string beam = One(Pairs[..5]), upright = One(Clasped);
        return $"""
            kind: closed
            daylight: {Between(600, 1200)} mm
            width: {Between(300, 900)} mm
            die-width: {Between(30, 120)} mm
            upright: {Member(upright)}
            crown: {Member(beam)}
            bed: {Member(beam)}
            crown-joint: {crown}
            {bed}
            """;
    }

    private string OpenFront()
    {
        bool slotted = _random.Next(2) == 0;
        double throat = Between(120, 350);
        return $"""
            kind: open-front
            daylight: {Between(150, 600)} mm
            throat: {throat} mm
            arm-reach: {throat + Between(50, 120)} mm
            die-width: {Between(30, 90)} mm
            column: {Member(One("HEB 200", "HEB 240", "HEB 160", "IPE 300"))}
            upper-arm: {Member(slotted ? One("flat 150x30", "flat 200x40", "flat 250x50") : One("flat 150x30", "flat 200x40", "HEB 160", "box 160x100x8"))}
            arm-joint: {(slotted ? "{ kind: slot, weld: { leg: 8 mm } }" : "{ kind: weld, weld: { leg: 8 mm } }")}
            section: flat 200x40
            """;
    }

    private string TieRods()
    {
        string thread = One("M24", "M30", "M36", "M42");
        double d = double.Parse(thread[1..], CultureInfo.InvariantCulture), across = Between(250, 800), deep = Between(150, 300);
        bool plates = _random.Next(2) == 0, four = plates && _random.Next(2) == 0;
        string rod = Way switch
        {
            0 => "",
            1 => $", washer: {{ outside: {3.2 * d:0} mm, thickness: {Between(12, 30)} mm }}",
            2 => $", sleeve: {{ outside: {2.4 * d:0} mm, inside: {1.2 * d:0} mm }}, seat: sleeve, preload: {One("0", "100", "200")} kN",
            _ => $", shank: {d:0} mm, free-thread: 40 mm, preload: 80 kN",
        };
        string ends = plates
            ? $"crown-plate: {{ thickness: {Between(40, 90)} mm, width: {(four ? deep + 6 * d : 5 * d + Between(0, 150)):0} mm }}\n"
                + $"bed-plate: {{ thickness: {Between(40, 90)} mm, width: {(four ? deep + 6 * d : 5 * d + Between(0, 150)):0} mm{(_random.Next(3) == 0 ? $", hole: {Between(40, 80)} mm" : "")} }}"
            : $"section: {One("HEB 200", "HEB 240", "box 200x150x12", "flat 200x120")}\ncrown: {{ turned: no }}";
        return $"""
            kind: tie-rod
            daylight: {Between(200, 900)} mm
            rods-across: {across} mm
            {(four ? $"rods-deep: {deep} mm" : "ram-drop: 100 mm")}
            die-width: {Between(40, 120)} mm
            {ends}
            rod: {"{"} thread: {thread}, class: 8.8{rod} {"}"}
            """;
    }

    // a gate of bars, or one that stands on a foot from front to back
    private string Free()
    {
        double half = Between(150, 450), high = Between(500, 1200), foot = Between(150, 300);
        string beam = One("HEB 160", "flat 200x40", "box 160x100x8", "SHS 150x150x10"), leg = One("HEB 120", "flat 120x30", "SHS 100x100x6");
        bool standing = _random.Next(2) == 0;
        string text = $"""
            kind: free
            daylight: {high / 2:0} mm
            section: {beam}
            cylinder-at: c2
            work-at: b2
            points:
              - ( name: b1 )
              - ( name: b2, right: {half} mm )
              - ( name: b3, right: {2 * half} mm )
              - ( name: c1, up: {high} mm )
              - ( name: c2, right: {half} mm, up: {high} mm )
              - ( name: c3, right: {2 * half} mm, up: {high} mm )
              - ( name: f1, back: {foot} mm )
            bars:
              - ( name: bed left, from: b1, to: b2 )
              - ( name: bed right, from: b2, to: b3 )
              - ( name: crown left, from: c1, to: c2 )
              - ( name: crown right, from: c2, to: c3 )
              - ( name: left leg, from: b1, to: c1, member: ( section: {leg} ), to-joint: ( kind: weld, weld: ( leg: 8 mm ) ) )
              - ( name: right leg, from: b3, to: c3, member: ( section: {leg} ) )
            """ + (standing ? $"\n  - ( name: foot, from: b1, to: f1, member: ( section: {leg} ) )" : "");
        return (standing ? text : string.Join('\n', text.Split('\n').Where(l => !l.Contains("f1", StringComparison.Ordinal)))).Replace('(', '{').Replace(')', '}');
    }

    private string Odd(string usual) => Member(_random.Next(2) == 0 ? usual : One(Singles));

    private static string Member(string section) => $"{{ section: {section} }}";

    private string Bolster() => _random.Next(3) == 0 ? $"bolster: {{ thickness: {Between(25, 60)} mm, length: {Between(150, 220)} mm }}" : "ram-drop: 150 mm";

    private string One(params string[] of) => of[_random.Next(of.Length)];

    private double Between(double least, double most) => Math.Round(least + (most - least) * _random.NextDouble());
}
