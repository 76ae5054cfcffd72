using Ramwright.Presses;

namespace Ramwright.Ladders;

/// <summary>
/// Hot spots of joints that were changed, and whose solids are not yet solved anew: each is taken to stand to plain stress at its place as it did before. Without this a change would look
/// enough only because nothing is known of it.
/// </summary>
internal sealed class HotSpotGuess
{
    private readonly List<(string Id, string Plain, double Share)> _before = [];
    private readonly RigFrame _frame;

    private HotSpotGuess(RigFrame frame) => _frame = frame;

    /// <summary>Takes the hot spots of a press as it is.</summary>
    public static HotSpotGuess Of(PressCheck check)
    {
        var guess = new HotSpotGuess(check.Rig.Frame);
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (HotSpotRungs.ByPlainStress(rung.Id) is { } plain && Find(check, plain) is { SafeTo: > 0 } other)
                guess._before.Add((rung.Id, plain, rung.SafeTo / other.SafeTo));
        }

        return guess;
    }

    /// <summary>Those of a changed press whose joints have no solids, and what each is taken to be safe to, N.</summary>
    public IEnumerable<(string Id, double SafeTo)> On(PressCheck check)
    {
        if (check.Rig.Springs is not null)
            yield break;
        foreach ((string id, string plain, double share) in _before)
        {
            if (Find(check, Now(plain, check)) is { } other)
                yield return (Now(id, check), share * other.SafeTo);
        }
    }

    // a press that is laid down has other names for the same ends
    private string Now(string id, PressCheck check)
    {
        foreach ((string was, string now) in (ReadOnlySpan<(string, string)>)
            [(FrameWords.Crown(_frame), FrameWords.Crown(check.Rig.Frame)), (FrameWords.Bed(_frame), FrameWords.Bed(check.Rig.Frame))])
        {
            if (id.StartsWith(Rung.IdOf(was) + "-", StringComparison.Ordinal))
                return Rung.IdOf(now) + id[Rung.IdOf(was).Length..];
        }

        return id;
    }

    private static Rung? Find(PressCheck check, string id)
    {
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (rung.Id == id)
                return rung;
        }

        return null;
    }
}
