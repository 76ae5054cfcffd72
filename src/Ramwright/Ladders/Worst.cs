using Ramwright.Frame;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>The place and load case at which a check is tightest.</summary>
/// <param name="Limit">The limit there.</param>
/// <param name="Where">The place, in words; empty where the part says it.</param>
/// <param name="CaseName">The load case, in words.</param>
/// <param name="Work">Writes the working of just this place and case.</param>
internal sealed record Worst(Limit Limit, string Where, string CaseName, Action<Working> Work)
{
    /// <summary>Tries every place in every load case.</summary>
    /// <param name="places">Where to look.</param>
    /// <param name="check">The check: place, actions per newton, working.</param>
    /// <returns>The tightest, or null where the check applies nowhere.</returns>
    public static Worst? Case(Places places, Func<PlanStation, Actions, Working?, Limit?> check) =>
        Case(places, (_, station, a, w) => check(station, a, w));

    /// <inheritdoc cref="Case(Places, Func{PlanStation, Actions, Working?, Limit?})"/>
    public static Worst? Case(Places places, Func<FrameSolution, PlanStation, Actions, Working?, Limit?> check)
    {
        Limit? least = null;
        int where = -1, when = -1;
        for (int s = 0; s < places.Solutions.Count; s++)
        {
            FrameSolution solution = places.Solutions[s];
            ReadOnlySpan<Actions> at = places.At(s);
            for (int i = 0; i < at.Length; i++)
            {
                if (check(solution, places.Stations[i], at[i], null) is not { } limit)
                    continue;
                if (least is { } so && so.SafeTo * (1 - 1e-9) <= limit.SafeTo)
                    continue;
                (least, where, when) = (limit, i, s);
            }
        }

        if (least is not { } found)
            return null;
        PlanStation there = places.Stations[where];
        FrameSolution worst = places.Solutions[when];
        Actions acting = places.At(when)[where];
        return new Worst(found, there.Where, worst.Case.Name, w =>
        {
            w.Note($"Worst place: {there.Where}. Worst load case: {worst.Case.Name}. Actions are those of one newton at the ram.");
            check(worst, there, acting, w);
        });
    }

    /// <summary>Tries every joint in every load case.</summary>
    /// <param name="response">How the frame answers.</param>
    /// <param name="joints">The same joint, repeated.</param>
    /// <param name="check">The check: number of the joint, what it passes on per newton, working.</param>
    /// <returns>The tightest, or null where the check applies nowhere.</returns>
    public static Worst? Joint(
        FrameResponse response, IReadOnlyList<PlanJoint> joints, Func<int, JointEnd, Working?, Limit?> check)
    {
        Limit? least = null;
        int where = 0;
        FrameSolution? when = null;
        foreach (FrameSolution solution in response.Solutions)
        {
            for (int i = 0; i < joints.Count; i++)
            {
                if (check(i, JointEnd.Of(response, solution, joints[i]), null) is not { } limit)
                    continue;
                // left and right are equal but for rounding: the first found keeps the place
                if (least is { } so && so.SafeTo * (1 - 1e-9) <= limit.SafeTo)
                    continue;
                (least, where, when) = (limit, i, solution);
            }
        }

        if (least is not { } found || when is null)
            return null;
        return new Worst(found, "", when.Case.Name, w =>
        {
            w.Note($"Worst joint: {joints[where].Name}. Worst load case: {when.Case.Name}. Actions are those of one newton at the ram.");
            check(where, JointEnd.Of(response, when, joints[where]), w);
        });
    }

    /// <summary>Makes a rung of it.</summary>
    public void Into(List<Rung> rungs, Words words, RungGroup group, string factorFrom, Citation source, FatigueLife? fatigue = null) =>
        rungs.Add(new Rung
        {
            Id = words.Id,
            Part = words.Part,
            Mode = Place(words.Mode),
            Brief = words.Brief,
            Load = CaseName == "centred" ? "" : CaseName,
            Saying = Place(words.Saying),
            Plural = words.Plural,
            Group = group,
            GivesAt = Limit.GivesAt,
            SafeTo = Limit.SafeTo,
            FactorFrom = factorFrom,
            Source = source,
            Work = Work,
            Fatigue = fatigue,
        });

    private string Place(string what)
    {
        string there = Where.Length == 0 ? what : $"{what} {Where}";
        return CaseName == "centred" ? there : $"{there}, {CaseName}";
    }
}

/// <summary>How a rung is called.</summary>
/// <param name="Id">Short stable name.</param>
/// <param name="Part">The part.</param>
/// <param name="Mode">How it fails.</param>
/// <param name="Saying">What happens, to follow the part.</param>
/// <param name="Plural">Whether the part is more than one.</param>
internal sealed record Words(string Id, string Part, string Mode, string Saying, bool Plural = false)
{
    /// <summary>How it fails in the fewest words; the same as <see cref="Mode"/> unless said.</summary>
    public string Brief { get => field ?? Mode; init; }
    /// <summary>The load case in words, where the words do not come from a search over cases.</summary>
    public string Load { get; init; } = "";
}
