using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Tests.Ladders;

/// <summary>Which assumptions the answer hangs on.</summary>
public sealed class GuessesTest
{
    [Fact]
    public void AGuessMovesTheAnswerAsSayingItDoes()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Folder("examples"), "wherry-yard.press.yaml"));
        (Press press, PressCheck check) = Read(text);

        IReadOnlyList<Guess> guesses = Guesses.Of(press, StockTables.Built, check);

        Guess guide = guesses.First(g => g.Assumed.What == "cylinder.gland-guide");
        Assert.Equal(guesses.Max(g => g.Moves), guesses[0].Moves);
        string said = text.Replace("  guide: pinned", $"  gland-guide: {guide.Assumed.Si * 0.8 * 1000} mm\n  guide: pinned", StringComparison.Ordinal);
        Assert.NotEqual(text, said);
        Near.Relative(Read(said).Check.Ladder.SafeRating, guide.Less!.Value, 1e-9);
        Assert.True(guide.Moves > Guesses.Little);
        Assert.DoesNotContain(guesses, g => g.Assumed.What.StartsWith("factors.", StringComparison.Ordinal));
    }

    [Fact]
    public void ALowerOfTwoIsTheLowestRungItself()
    {
        (Press press, PressCheck check) = Read(File.ReadAllText(Path.Combine(Repository.Folder("examples"), "railing-shop.press.yaml"))
            .Replace("allowed-opening:", "# allowed-opening:", StringComparison.Ordinal));

        Guess opening = Guesses.Of(press, StockTables.Built, check).First(g => g.Assumed.What == "loading.allowed-opening");

        if (check.Ladder.Governing.Id == "die-opening")
            Near.Relative(0.8 * check.Ladder.SafeRating, opening.Less!.Value, 1e-6);
        else
            Assert.True(opening.Less <= check.Ladder.SafeRating);
    }

    private static (Press Press, PressCheck Check) Read(string text)
    {
        CheckedPress read = CheckedPress.Of(PressOnDisk.Read(text, "x" + PressFile.Ending, "x"));
        Assert.Empty(read.Faults);
        return (read.Press.Reading.Press!, read.Check!);
    }
}
