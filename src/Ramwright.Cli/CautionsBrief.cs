using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The cautions that cannot wait, the rest counted by what they are about.</summary>
internal static class CautionsBrief
{
    // dangers are shown up to here; of what is not checked, no more than fill up to the second
    private const int MostDangers = 4, Usual = 2;

    public static void Show(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        IReadOnlyList<(CautionKind Kind, string Text)> all = check.CautionsByKind(units);
        string advice = check.Cautions(units)[^1], done = Headline.Remedy(check, units);
        var left = new int[3];
        int shown = 0;
        foreach ((CautionKind kind, string text) in all)
        {
            if (text == advice || (done.Length > 0 && text.EndsWith(done, StringComparison.Ordinal)))
                continue;
            if (shown < (kind == CautionKind.Danger ? MostDangers : kind == CautionKind.Unchecked ? Usual : 0))
            {
                screen.Bullet("!", text);
                shown++;
            }
            else
            {
                left[(int)kind]++;
            }
        }

        if (left.Sum() is > 0 and var more)
            screen.Bullet("!", $"{more} more, to be read before the first squeeze ({string.Join(", ", Kinds(left))}): --all shows them.");
        screen.Bullet("!", advice);
    }

    private static IEnumerable<string> Kinds(int[] left)
    {
        if (left[(int)CautionKind.Danger] is > 0 and var dangers)
            yield return $"{dangers} on what may let go";
        if (left[(int)CautionKind.Unchecked] is > 0 and var unchecked_)
            yield return $"{unchecked_} on what is not known or not checked";
        if (left[(int)CautionKind.Handling] is > 0 and var handling)
            yield return $"{handling} on working it";
    }
}
