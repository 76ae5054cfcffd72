using Ramwright.Presses;

namespace Ramwright.Tests.Ladders;

public class PressKeysTest
{
    private static readonly Press Bare = new() { Frame = new ClosedFrame { Width = 0.5, Crown = new Member { Section = "HEB 160" } } };

    [Fact]
    public void OneKeyIsSetAndAllElseStays()
    {
        Press changed = PressKeys.With(Bare, "frame.crown.section", "HEB 180");

        Assert.Equal("HEB 180", ((ClosedFrame)changed.Frame!).Crown!.Section);
        Assert.Equal("HEB 160", ((ClosedFrame)Bare.Frame!).Crown!.Section);
        Assert.Equal(Bare, PressKeys.With(changed, "frame.crown.section", "HEB 160"));
    }

    [Fact]
    public void RecordsOnTheWayAreMade() =>
        Assert.Equal(0.01, PressKeys.With(Bare, "loading.off-centre-deep", 0.01).Loading!.OffCentreDeep);

    [Fact]
    public void AKindMakesARecordOfThatKind()
    {
        Press joint = PressKeys.With(PressKeys.With(Bare, "frame.crown-joint.kind", "bolt"), "frame.crown-joint.thread", "M24");

        Assert.Equal("M24", ((BoltedJoint)((ClosedFrame)joint.Frame!).CrownJoint!).Thread);
    }

    [Fact]
    public void AnItemOfAListIsSet()
    {
        Press lines = Bare with { Lines = [new Line { Bore = 0.006 }, new Line { Bore = 0.008 }] };

        Press changed = PressKeys.With(lines, "lines.1.bore", 0.01);

        Assert.Equal([0.006, 0.01], changed.Lines!.Select(l => l.Bore!.Value));
        Assert.Equal(0.008, lines.Lines[1].Bore);
    }

    [Theory]
    [InlineData("frame.crwon.section")]
    [InlineData("frame.crown-joint.thread")]
    [InlineData("lines.0.bore")]
    [InlineData("nothing")]
    public void AKeyThatIsNotThereIsRefused(string path) =>
        Assert.Throws<ArgumentException>(() => PressKeys.With(Bare, path, "M24"));

    [Fact]
    public void AKindThatIsNotThereIsRefused() =>
        Assert.Throws<ArgumentException>(() => PressKeys.With(Bare, "frame.crown-joint.kind", "glue"));
}
