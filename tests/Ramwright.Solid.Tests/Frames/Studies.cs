using Ramwright.Presses;
using static Ramwright.Solid.Tests.Frames.Rigs;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>The frames that are solved both ways.</summary>
public static class Studies
{
    /// <summary>Classes of frames.</summary>
    public const string Solid = "closed, solid bars", Thin = "closed, I and box", Clasped = "closed, pairs clasping the uprights",
        Slotted = "open front, through a slot", OnFace = "open front, on the face", Rods = "on tie rods", Lines = "free, by points and bars";

    /// <summary>Those that are solved with finer bricks too.</summary>
    public static IReadOnlyList<string> Refined { get; } = ["C-01", "C-02", "C-06", "C-09", "C-16", "T-01", "T-04", "O-01", "O-03", "O-06", "O-10"];

    /// <summary>Those that are turned from front to back too, and how near the beams must come.</summary>
    public static IReadOnlyDictionary<string, double> Rolled { get; } = new Dictionary<string, double>
    {
        ["C-01"] = 0.16,
        ["C-02"] = 0.05,
        ["C-05"] = 0.05,
        ["C-09"] = 0.6,
        ["C-12"] = 0.5,
    };

    /// <summary>One of them.</summary>
    public static Study Named(string id) => All.Single(s => s.Id == id);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Study> All { get; } =
    [
        new("C-01", "flat 200x40 all round, 500 wide", Closed(Flat(200, 40), Flat(200, 40), 500, 600)) { Class = Solid },
        new("C-02", "slender bars: flat 100x40, 600 wide", Closed(Flat(100, 40), Flat(100, 40), 600, 800)) { Class = Solid },
        new("C-03", "thick bars over short uprights: flat 250x50", Closed(Flat(250, 50), Flat(250, 50), 400, 400, BeamFit.Over)) { Class = Solid },
        new("C-04", "deep beams on slender uprights: 250x40 on 80x40", Closed(Flat(250, 40), Flat(80, 40), 500, 600)) { Class = Solid },
        new("C-05", "slender beams, stiff uprights: 120x40 on 240x40", Closed(Flat(120, 40), Flat(240, 40), 600, 600)) { Class = Solid },
        new("C-06", "I 220x220 between I 160x160", Closed(I(220, 220, 9.5, 16), I(160, 160, 8, 13), 640, 980)) { Class = Thin },
        new("C-07", "I 220x220 over I 160x160", Closed(I(220, 220, 9.5, 16), I(160, 160, 8, 13), 640, 800, BeamFit.Over)) { Class = Thin },
        new("C-08", "I 300x150 between I 150x150", Closed(I(300, 150, 8, 12), I(150, 150, 7, 10), 800, 800)) { Class = Thin },
        new("C-09", "box 200x120 between boxes 120x120", Closed(Box(200, 120, 10, 12), Box(120, 120, 8, 8), 600, 700)) { Class = Thin },
        new("C-10", "box 250x200 over I 200x200, bed unlike the crown", Closed(Box(250, 200, 10, 15), I(200, 200, 9, 15), 500, 500, BeamFit.Over, I(240, 200, 10, 17))) { Class = Thin },
        new("C-11", "channels 200 clasping flat 150x60", Closed(Channels(200, 75, 8.5, 11.5, 60), Flat(150, 60), 600, 700, BeamFit.Lapped)) { Class = Clasped },
        new("C-12", "channels 220 clasping channels 160, toes together", Closed(Channels(220, 80, 9, 12.5, 160), Channels(160, 65, 7.5, 10.5, 30, true), 650, 760, BeamFit.Lapped)) { Class = Clasped },
        new("C-13", "as C-11, joined at four bolts", Closed(Channels(200, 75, 8.5, 11.5, 60), Flat(150, 60), 600, 700, BeamFit.Lapped)) { Class = Clasped, Joining = Joining.Bolts, Strip = 0.036, Pitch = 0.08, Within = 0.15 },
        new("C-14", "as C-01, fillet strips only", Closed(Flat(200, 40), Flat(200, 40), 500, 600)) { Class = Solid, Joining = Joining.Strip },
        new("C-15", "as C-06, fillet strips only", Closed(I(220, 220, 9.5, 16), I(160, 160, 8, 13), 640, 980)) { Class = Thin, Joining = Joining.Strip, Strip = 3e-3 },
        new("C-16", "I 200x200 over flat 120x60", Closed(I(200, 200, 9, 15), Flat(120, 60), 600, 600, BeamFit.Over)) { Class = Thin },
        new("C-17", "I 240x120 between flat 120x60", Closed(I(240, 120, 7, 11), Flat(120, 60), 600, 600)) { Class = Thin },

        new("T-01", "plates 150x60 on two M36, 500 across", OnRods(Plate(150, 60), 36, 4, 500, 600)) { Class = Rods, Refining = 3 },
        new("T-02", "plates 300x75 on four M36, 400 by 200", OnRods(Plate(300, 75), 36, 4, 400, 500, 200)) { Class = Rods },
        new("T-03", "as T-02, die 80 deep in place of 300", OnRods(Plate(300, 75), 36, 4, 400, 500, 200, 80)) { Class = Rods },
        new("T-04", "thick plates, close rods: 160x100 on two M42, 300 across", OnRods(Plate(160, 100), 42, 4.5, 300, 400)) { Class = Rods, Within = 0.065 },
        new("T-05", "boxes 200x120 on two M48, 600 across, 30 mm plates under the nuts", OnRods(Box(200, 120, 10, 12), 48, 5, 600, 700)) { Class = Rods, Washer = 0.03, Within = 0.085 },
        new("F-01", "T-01 by points and bars", ByLines(OnRods(Plate(150, 60), 36, 4, 500, 600))) { Class = Lines, Drawn = OnRods(Plate(150, 60), 36, 4, 500, 600) },

        new("O-01", "flat 200x40 through I 200x200, throat 200", Open(I(200, 200, 9, 15), Flat(200, 40), 200, 450, true)) { Class = Slotted },
        new("O-02", "thick arms, short throat: 300x60 through I 200x200", Open(I(200, 200, 9, 15), Flat(300, 60), 150, 400, true)) { Class = Slotted },
        new("O-03", "slender arms: 150x30 through I 200x200, throat 250", Open(I(200, 200, 9, 15), Flat(150, 30), 250, 400, true)) { Class = Slotted },
        new("O-04", "250x50 through I 300x300, throat 300", Open(I(300, 300, 11, 19), Flat(250, 50), 300, 500, true)) { Class = Slotted },
        new("O-05", "as O-01, fillets on the outer faces only", Open(I(200, 200, 9, 15), Flat(200, 40), 200, 450, true)) { Class = Slotted, Joining = Joining.Strip },
        new("O-15", "220x45 through I 240x240, throat 180", Open(I(240, 240, 10, 17), Flat(220, 45), 180, 420, true)) { Class = Slotted },
        new("O-06", "flat 200x40 on the face of I 200x200, throat 200", Open(I(200, 200, 9, 15), Flat(200, 40), 200, 450, false)) { Class = OnFace },
        new("O-07", "flat 250x50 on the face of I 300x300, throat 300", Open(I(300, 300, 11, 19), Flat(250, 50), 300, 500, false)) { Class = OnFace, Within = 0.065 },
        new("O-08", "as O-06, fillet strips only", Open(I(200, 200, 9, 15), Flat(200, 40), 200, 450, false)) { Class = OnFace, Joining = Joining.Strip },
        new("O-09", "I 240x120 on the face of I 200x200, throat 250", Open(I(200, 200, 9, 15), I(240, 120, 6.2, 9.8), 250, 450, false)) { Class = OnFace },
        new("O-10", "flat 200x40 on the face of flat 250x40, throat 200", Open(Flat(250, 40), Flat(200, 40), 200, 450, false)) { Class = OnFace },
        new("O-11", "box 200x100 on the face of box 200x100, throat 250", Open(Box(200, 100, 10, 12), Box(200, 100, 10, 12), 250, 450, false)) { Class = OnFace },
        new("O-12", "flat 200x40 on the face of box 200x200x10, throat 200", Open(Box(200, 200, 10, 10), Flat(200, 40), 200, 450, false)) { Class = OnFace, Within = null },
        new("O-13", "slender arms: 150x30 on the face of I 200x200, throat 250", Open(I(200, 200, 9, 15), Flat(150, 30), 250, 400, false)) { Class = OnFace },
        new("O-14", "thick arms, short throat: 300x60 on the face of I 240x200, throat 160", Open(I(240, 200, 11, 17), Flat(300, 60), 160, 400, false)) { Class = OnFace },
    ];
}
