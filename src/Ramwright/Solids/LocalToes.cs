using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>Stress at the toes of a joint's welds from its local solid, as factors on what goes through the joint.</summary>
/// <remarks>
/// At a joint with nothing else joined to it, all that acts on the upright follows from moment, force across and pull at the beam's end, so that three loads say all there is to say in the
/// plane of the frame. Each place along a toe has its own three factors; only those that may be the worst are kept.
/// </remarks>
public static class LocalToes
{
    /// <summary>Which way of reading and of drawing the factors were found by: raised with each change, so that files written before are passed over.</summary>
    public const int Method = 2;

    /// <summary>Mixes of moment and force in which a place may be the worst, as directions.</summary>
    private const int Mixes = 24;

    /// <summary>Toes of a joint in the solid that was cut out, by their new numbers.</summary>
    /// <param name="whole">The frame.</param>
    /// <param name="box">What was cut out.</param>
    /// <param name="numbers">Parts of the frame that were kept, in their new order.</param>
    internal static IReadOnlyList<WeldToe> Of(PressSolid whole, Cuboid box, int[] numbers) =>
    [
        .. from toe in whole.Toes
           let now = Array.IndexOf(numbers, toe.Part)
           let far = toe.Place(toe.Reading.Count - 1)
           where now >= 0 && far > box.From(toe.Along) && far < box.To(toe.Along) && toe.Face > box.From(toe.Across) && toe.Face < box.To(toe.Across)
           select toe with { Part = now },
    ];

    /// <summary>The factors.</summary>
    /// <param name="toes">The toes.</param>
    /// <param name="beam">Parts of the beam.</param>
    /// <param name="up">1 for an upper joint, −1 for a lower.</param>
    /// <param name="kept">How much of the beam stands between its cut end and the joint, m.</param>
    /// <param name="byMoment">Under 1 N·m that lifts the beam's cut end.</param>
    /// <param name="byShear">Under 1 N that lifts it.</param>
    /// <param name="byPull">Under 1 N that pulls it.</param>
    internal static IReadOnlyList<RigToe> Factors(
        IReadOnlyList<WeldToe> toes, int[] beam, int up, double kept, SolidSolution byMoment, SolidSolution byShear, SolidSolution byPull)
    {
        var found = new List<RigToe>();
        foreach (WeldToe toe in toes)
        {
            bool onBeam = beam.Contains(toe.Part);
            SortedDictionary<int, HotSpot> m = HotSpot.Along(toe, byMoment), v = HotSpot.Along(toe, byShear), n = HotSpot.Along(toe, byPull);
            // lifting the end of an upper beam stretches its inner face; of a lower one, presses it
            ToeLine[] lines = [.. m.Keys.Select(k => new ToeLine(up * m[k].Stress, up * (v[k].Stress - kept * m[k].Stress), n[k].Stress))];
            if (lines.Length > 0)
                found.Add(new RigToe(onBeam, IsInner(toe, up), toe.Thickness, lines) { OnEdge = toe.OnEdge });
        }

        // halves of a pair are one part
        return [.. found.GroupBy(t => (t.OnBeam, t.Inner, t.OnEdge)).Select(g => g.First() with { Lines = Worst([.. g.SelectMany(t => t.Lines)], kept) })];
    }

    /// <summary>Whether springs of a frame's joints hold factors of a toe.</summary>
    internal static bool AreOf(RigSprings springs, WeldToe toe, PressSolid solid)
    {
        (bool upper, bool onBeam, bool inner) = Side(toe, solid);
        return (upper ? springs.Upper : springs.Lower).Toes.Any(t => t.OnBeam == onBeam && t.Inner == inner && t.OnEdge == toe.OnEdge);
    }

    /// <summary>Of which joint a frame's toe is, on which part and which side of it; one at the left is one at the right, mirrored.</summary>
    internal static (bool Upper, bool OnBeam, bool Inner) Side(WeldToe toe, PressSolid solid)
    {
        bool upper = (toe.Along == 2 ? toe.At : toe.Face) > (solid.UpperAt.Z + solid.LowerAt.Z) / 2;
        if (solid.Turning == 0 && (toe.Along == 0 ? toe.At : toe.Face) < 0)
            toe = toe.Along == 0 ? toe with { Away = -toe.Away } : toe with { Outward = -toe.Outward };
        return (upper, toe.Along != 2, IsInner(toe, upper ? 1 : -1));
    }

    // a joint lies at the upper or lower end of the upright, which stands at the right of its opening or behind it
    internal static bool IsInner(WeldToe toe, int up)
    {
        bool level = toe.Along != 2;
        // on the end of a member its face says it; on a member that runs on, the side of what is welded to it
        return double.IsInfinity(toe.From) ? toe.Outward == (level ? -up : -1) : toe.Away == (level ? -1 : -up);
    }

    private static IReadOnlyList<ToeLine> Worst(IReadOnlyList<ToeLine> all, double kept)
    {
        var worst = new List<ToeLine>();
        for (int i = 0; i < Mixes; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI * i / Mixes);
            Take(l => l.Stress(cos * kept, sin, 0));
        }

        Take(l => l.N);
        return worst;

        void Take(Func<ToeLine, double> stress)
        {
            ToeLine most = all.MaxBy(l => Math.Abs(stress(l)))!;
            // mirrored places differ by rounding alone
            if (!worst.Any(w => Same(w, most)))
                worst.Add(most);
        }
    }

    private static bool Same(ToeLine a, ToeLine b) => Near(a.M, b.M) && Near(a.V, b.V) && Near(a.N, b.N);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-3 * Math.Max(Math.Abs(a), Math.Abs(b));
}
