using Ramwright.Frame;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Tests.Frame;

public class FreeFrameTest
{
    private const string Centred = "off-centre-across: 0 mm, off-centre-deep: 0 mm, side-load: 0 %";

    private static string Rectangle(string more = "", string joint = "") => $$"""
        kind: free
        daylight: 600 mm
        cylinder-at: top
        work-at: bottom
        points:
          - { name: a }
          - { name: bottom, right: 400 mm }
          - { name: b, right: 800 mm }
          - { name: c, up: 1200 mm }
          - { name: top, right: 400 mm, up: 1200 mm }
          - { name: d, right: 800 mm, up: 1200 mm }
        bars:
          - { name: bed left, from: a, to: bottom, member: { section: HEB 220 } }
          - { name: bed right, from: bottom, to: b, member: { section: HEB 220 } }
          - { name: crown left, from: c, to: top, member: { section: HEB 220 } }
          - { name: crown right, from: top, to: d, member: { section: HEB 220 } }
          - { name: left leg, from: a, to: c, member: { section: HEB 160 }{{joint}} }
          - { name: right leg, from: b, to: d, member: { section: HEB 160 }{{joint}} }
        {{more}}
        """;

    private static FrameResponse Solve(string frame) => FrameResponse.Of(FramePlan.Of(Described.Rig(frame, Centred)));

    /// <summary>The rectangle of the closed-frame table, now written down as points and bars.</summary>
    [Fact]
    public void ARectangleIsTheClosedFrameOfTheTable()
    {
        FrameResponse response = Solve(Rectangle());
        FrameSolution s = response.Solutions[0];
        var B09 = new Reference("B-09", "slope-deflection, with the stiffness ratio k of Kleinlogel's portal formulas", Trust.Recomputed);

        B09.Near("free frame: N of a leg for 200 kN, kN", 100, 200 * s.At(4, 0.6).N, 1e-9);
        // the rolled sections bring shear, which the table's moments leave out: it moves a little moment into the corners
        B09.Near("free frame: mid-span moment for 200 kN, kN·m", 36.593, 200 * s.At(2, 0.4).My, 0.03);
        // what shear adds to the table's opening: F L/(4 G A_s) in each beam, with the section's own shear area
        double shear = 200e3 * 0.8 / (4 * 210e9 / 2.6 * response.Plan.Model.Members[0].Section.Asz);
        new Reference("B-10", "slope-deflection, and shear of both beams", Trust.Recomputed).Near("free frame: opening for 200 kN, mm", 0.3244 + 2 * shear * 1e3, 200e3 * response.DaylightGrowth * 1e3, 0.01);
    }

    [Fact]
    public void PinnedLegsLeaveTheBeamsOnTwoSupports()
    {
        FrameSolution s = Solve(Rectangle(joint: ", from-joint: { kind: pin, diameter: 40 mm }, to-joint: { kind: pin, diameter: 40 mm }")
            .Replace("bars:", "bars:\n  - { name: stay, from: a, to: d, member: { section: round 20 } }")).Solutions[0];

        new Reference("B-13", "pinned corners", Trust.Recomputed).Near("free frame: Mm for 200 kN, kN·m", 40, 200 * s.At(3, 0.4).My, 2e-2);
    }

    [Fact]
    public void LeftAndRightAlike()
    {
        FrameSolution s = Solve(Rectangle()).Solutions[0];

        Near.Relative(s.At(2, 0).My, s.At(3, 0.4).My, 1e-9, "corner moments of the crown");
        Near.Relative(s.At(4, 0.6).N, s.At(5, 0.6).N, 1e-9, "pull of the legs");
    }

    [Fact]
    public void EveryBarHasItsRungs()
    {
        PressCheck check = PressCheck.Of(Described.Rig(Rectangle(joint: ", to-joint: { kind: weld, weld: { leg: 8 mm } }")));

        Assert.All(new[] { "bed-left", "crown-right", "left-leg" }, bar => Assert.Contains(check.Ladder.Rungs, r => r.Id == bar + "-bending"));
        Assert.Contains(check.Ladder.Rungs, r => r.Id == "left-leg-joint-at-c-weld");
    }

    [Fact]
    public void AnythingThatCouldMoveIsNamed() =>
        Assert.Throws<FrameMovesException>(() => Solve(Rectangle().Replace("from: b, to: d", "from: b, to: bottom").Replace("from: a, to: c", "from: a, to: bottom")));

    [Theory]
    [InlineData("to: bottom,", "to: nowhere,", "no point is called")]
    [InlineData("name: left leg", "name: rod", "cannot be the name of a bar")]
    [InlineData("name: left leg", "name: right leg", "two are called")]
    [InlineData("work-at: bottom", "work-at: a", "not straight above")]
    [InlineData("cylinder-at: top", "cylinder-at: bottom", "not above the work")]
    [InlineData("from: a, to: c", "from: a, to: a", "no length")]
    public void WhatCannotBeIsSaid(string was, string becomes, string expected)
    {
        string text = "wanted: 10 t\ncylinder: { kind: double-acting, bore: 100 mm }\npump: { kind: electric, motor: 2.2 kW }\nframe:\n"
            + string.Join('\n', Rectangle().ReplaceLineEndings("\n").Replace(was, becomes).Split('\n').Select(l => "  " + l));

        PressReading reading = PressFile.Read(text, "t", StockTables.Built);

        Assert.Contains(expected, FaultText.All(reading.Faults));
    }
}
