using Ramwright.Quantities;

namespace Ramwright.Tests.Quantities;

public class NearestWordTest
{
    private static readonly string[] Words = ["mm", "cm", "inch", "rated-pressure", "daylight"];

    [Theory]
    [InlineData("mmm", "mm")]
    [InlineData("INCH", "inch")]
    [InlineData("ihnc", null)]
    [InlineData("icnh", "inch")]
    [InlineData("rated-presure", "rated-pressure")]
    [InlineData("dayligth", "daylight")]
    [InlineData("q", null)]
    [InlineData("", null)]
    [InlineData("throat", null)]
    public void FindsWhatWasMeantOrNothing(string written, string? nearest) =>
        Assert.Equal(nearest, NearestWord.Among(written, Words));

    [Theory]
    [InlineData("stall", "stall-pressure")]
    [InlineData("single", "single-acting")]
    [InlineData("sta", null)]
    public void WholeWordsAtTheBeginningAreEnough(string written, string? nearest) =>
        Assert.Equal(nearest, NearestWord.Among(written, ["stall-pressure", "single-acting", "relief"]));

    [Fact]
    public void AWordIsHeldAgainstEachWordOfAName() =>
        Assert.Equal("gate bracket", NearestWord.Ranked("brackt", ["shaft", "bush", "bolt hole", "gate bracket"], 1)[0]);

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("abc", "", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("Ab", "aB", 0)]
    [InlineData("ca", "abc", 3)] // each pair is swapped once at most
    public void CountsSlips(string a, string b, double slips) => Near.Absolute(slips, NearestWord.Slips(a, b), 1e-12);
}
