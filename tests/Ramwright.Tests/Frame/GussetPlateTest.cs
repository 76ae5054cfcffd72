using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Tests.Frame;

/// <summary>Gussets as pieces of steel: as heavy as their triangles, in the corners, going with the members that they are welded to.</summary>
public class GussetPlateTest
{
    private const double Density = 7850;
    private const string Bare = "kind: weld, weld: { leg: 8 mm }";
    private const string Two = Bare + ", gusset: { leg-along: 120 mm, leg-up: 100 mm, thickness: 12 mm, count: 2, steel: S275, weld: { leg: 6 mm } }";
    private const string One = Bare + ", gusset: { leg-along: 90 mm, leg-up: 80 mm, thickness: 10 mm, count: 1, steel: S275, weld: { leg: 6 mm } }";

    private static Rig Closed(string crown, string bed, string section = "HEB 160") =>
        Described.Rig($$"""{ kind: closed, daylight: 600 mm, width: 500 mm, section: {{section}}, steel: S275, crown-joint: { {{crown}} }, bed-joint: { {{bed}} } }""");

    private static Rig OpenFront(string joint) =>
        Described.Rig($$"""{ kind: open-front, daylight: 300 mm, throat: 250 mm, section: HEB 200, steel: S275, arm-joint: { {{joint}} } }""");

    private static GussetPlate[] Plates(Rig rig) => [.. FrameBody.Of(rig).Pieces.OfType<GussetPlate>()];

    private static Vector[] Corners(GussetPlate plate, double x) => [.. plate.Outline.Loops[0].Select(c => plate.At(x, c.Y, c.Z))];

    [Theory]
    [InlineData("")]
    [InlineData(", fit: over")]
    public void AFrameWeighsTheTrianglesMore(string fit)
    {
        double bare = FrameBody.Of(Closed(Bare + fit, Bare + fit)).Mass, with = FrameBody.Of(Closed(Two + fit, One + fit)).Mass;

        // two corners each at crown and bed, two plates and one
        double byHand = Density * (2 * 2 * 0.120 * 0.100 / 2 * 0.012 + 2 * 1 * 0.090 * 0.080 / 2 * 0.010);
        new Reference("GU-06", "area of a right triangle, half of leg times leg", Trust.Recomputed).Near("kg", byHand, with - bare, 1e-9);
        Near.Relative(Density * 4 * 0.120 * 0.100 / 2 * 0.012, FrameBody.Of(OpenFront(Two)).Mass - FrameBody.Of(OpenFront(Bare)).Mass, 1e-9, "open front");
        Assert.All(Plates(Closed(Two, One)), p => Near.Relative(p.Mass, p.Outline.Area() * p.Length * Density, 1e-12, p.Name));
    }

    [Fact]
    public void AFrameWithoutGussetsHasNone()
    {
        Assert.Empty(Plates(Closed(Bare, Bare)));
        Assert.Empty(Plates(OpenFront(Bare)));
    }

    [Fact]
    public void TheyStandInTheCornersOfTheOpening()
    {
        Rig rig = Closed(Two, One);
        FrameBody body = FrameBody.Of(rig);
        double crownFace = body.WorkFace.Z + rig.Frame.Daylight + rig.Frame.RamDrop;
        foreach (GussetPlate plate in Plates(rig))
        {
            bool high = plate.Beam == "crown";
            Vector[] corners = Corners(plate, plate.Length / 2);
            Near.Relative(0.25, corners.Max(c => Math.Abs(c.X)), 1e-9, "the upright's inner face");
            Near.Relative(0.25 - (high ? 0.12 : 0.09), corners.Min(c => Math.Abs(c.X)), 1e-9, "its tip along the beam");
            Near.Relative(high ? crownFace : body.WorkFace.Z, high ? corners.Max(c => c.Z) : corners.Min(c => c.Z), 1e-9, "the beam's face");
            Near.Relative(high ? 0.1 : 0.08, corners.Max(c => c.Z) - corners.Min(c => c.Z), 1e-9, "its leg up");
            // two stand at the flanges' edges, 160 apart outside; a single one in the middle
            Near.Relative(high ? 0.08 : 0.005, Math.Max(Math.Abs(plate.From.Y), Math.Abs(plate.To.Y)), 1e-9, "its outer face");
        }

        Assert.Equal(4, Plates(rig).Count(p => p.Member.Part == "gusset of the crown joint"));
        Assert.Equal(2, Plates(rig).Count(p => p.Member.Part == "gusset of the bed joint"));
    }

    [Fact]
    public void InAnOpenFrontTheyStandBetweenColumnAndArms()
    {
        Rig rig = OpenFront(Two);
        FrameBody body = FrameBody.Of(rig);
        Vector[] lower = Corners(Plates(rig).First(p => p.Beam == "lower arm"), 0), upper = Corners(Plates(rig).First(p => p.Beam == "upper arm"), 0);

        foreach (Vector[] corners in (Vector[][])[lower, upper])
        {
            Assert.Equal(0, corners.Max(c => c.Y), 1e-12);
            Assert.Equal(-0.12, corners.Min(c => c.Y), 1e-12);
        }

        Assert.Equal(body.WorkFace.Z, lower.Min(c => c.Z), 1e-12);
        Assert.Equal(body.WorkFace.Z + 0.1, lower.Max(c => c.Z), 1e-12);
        Assert.Equal(body.WorkFace.Z + rig.Frame.Daylight + rig.Frame.RamDrop, upper.Max(c => c.Z), 1e-12);
    }

    [Theory]
    [InlineData("closed")]
    [InlineData("open-front")]
    public void TipsGoWithTheMembersTheyAreWeldedTo(string kind)
    {
        Rig rig = kind == "closed" ? Closed(Two, One) : OpenFront(Two);
        FrameBody body = FrameBody.Of(rig);
        var movement = new BodyMovement(FrameResponse.Of(FramePlan.Of(rig)), 0);
        foreach (GussetPlate plate in Plates(rig))
        {
            Corner[] corners = [.. plate.Outline.Loops[0]];
            Assert.True(movement.Moves(plate));
            Goes(plate.Beam, corners[1]);
            Goes(plate.Upright, corners[2]);

            void Goes(string part, Corner tip)
            {
                Vector at = plate.At(plate.Length / 2, tip.Y, tip.Z);
                // the member's own piece that the tip touches, asked at the same place
                Piece on = body.Pieces.Where(p => p.Member.Part == part).MinBy(p => (at - p.At((at - p.From).Dot(p.Along), 0, 0)).Length)!;
                Vector there = at - on.From;
                Vector own = movement.Of(on, there.Dot(on.Along), there.Dot(on.Side), there.Dot(on.Up));
                Assert.True(own.Length > 0);
                Assert.True((own - movement.Of(plate, plate.Length / 2, tip.Y, tip.Z)).Length < 1e-6 * own.Length, $"{plate.Name} on the {part}");
            }
        }
    }
}
