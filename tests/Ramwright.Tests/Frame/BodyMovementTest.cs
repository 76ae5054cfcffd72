using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Tests.Ladders;

namespace Ramwright.Tests.Frame;

public class BodyMovementTest
{
    private static PressCheck Example(string name) => PressCheck.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), name)).Rig!);

    [Theory]
    [InlineData("wherry-yard.press.yaml")]
    [InlineData("drainage-mill-puller.press.yaml")]
    public void TheSteelAboveAndBelowTheRamMovesApartByTheTrueFigure(string name)
    {
        PressCheck check = Example(name);
        Piece[] lying = [.. FrameBody.Of(check.Rig).Pieces.Where(p => Math.Abs(p.Along.Z) < 0.5)];
        double middle = lying.Average(p => p.From.Z);
        for (int i = 0; i < check.Response.Solutions.Count; i++)
        {
            var movement = new BodyMovement(check.Response, i);
            double above = lying.Where(p => p.From.Z > middle).Average(p => movement.Of(p, p.Length / 2).Z);
            double below = lying.Where(p => p.From.Z < middle).Average(p => movement.Of(p, p.Length / 2).Z);

            Near.Relative(check.Response.Growth(i) - check.Response.Plan.Pressing, above - below, 0.02, check.Response.Solutions[i].Case.Name);
        }
    }

    [Fact]
    public void APointOfASectionTurnsWithIt()
    {
        PressCheck check = Example("railing-shop.press.yaml");
        var movement = new BodyMovement(check.Response, 0);
        Piece arm = FrameBody.Of(check.Rig).Pieces.First(p => p.Member.Part == "upper arm");
        double x = arm.Length, high = 0.05;

        Vector above = movement.Of(arm, x, 0, high), below = movement.Of(arm, x, 0, -high);
        Vector turn = check.Response.Solutions[0].Rotation(check.Response.Plan.Upper);

        // beyond the ram the arm is straight, so its tip turns as the place above the ram does
        Near.Relative(turn.X, -(above.Y - below.Y) / (2 * high), 1e-6, "turn about the crosswise axis");
    }

    [Fact]
    public void APieceWithoutBeamsIsRefused()
    {
        PressCheck check = Example("wherry-yard.press.yaml");
        Piece crown = FrameBody.Of(check.Rig).Pieces[0];
        Piece other = crown with { Member = crown.Member with { Part = "sleeve" } };
        var movement = new BodyMovement(check.Response, 0);

        Assert.False(movement.Moves(other));
        Assert.Throws<ArgumentException>(() => movement.Of(other, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BodyMovement(check.Response, 99));
    }
}
