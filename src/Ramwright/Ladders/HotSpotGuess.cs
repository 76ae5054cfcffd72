namespace Ramwright.Ladders;

/// <summary>
/// Hot spots of joints that were changed, and whose solids are not yet solved anew: each is taken to stand to plain stress at its place as it did before. Without this a change would look
/// enough only because nothing is known of it.
/// </summary>
internal sealed class HotSpotGuess
{
    private readonly List<(string Id, string Plain, double Share)> _before = [];

    private HotSpotGuess()
    {
    }

    /// <summary>Takes the hot spots of a press as it is.</summary>
    public static HotSpotGuess Of(PressCheck check)
    {
        var guess = new HotSpotGuess();
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (HotSpotRungs.ByPlainStress(rung.Id) is { } plain && Find(check, plain) is { SafeTo: > 0 } other)
                guess._before.Add((rung.Id, plain, rung.SafeTo / other.SafeTo));
        }

        return guess;
    }

    /// <summary>Those that a changed press has no rung for, and what each is taken to be safe to, N.</summary>
    public IEnumerable<(string Id, double SafeTo)> On(PressCheck check)
    {
        foreach ((string id, string plain, double share) in _before)
        {
            if (Find(check, id) is null && Find(check, plain) is { } other)
                yield return (id, share * other.SafeTo);
        }
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
