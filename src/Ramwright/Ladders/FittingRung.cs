using System.Globalization;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>A limit of a part that carries the ram force or a fixed share of it, whatever the frame does.</summary>
internal static class FittingRung
{
    /// <summary>Adds the rung, unless the check does not apply.</summary>
    public static void Add(
        List<Rung> rungs, Words words, RungGroup group, string factorFrom, Citation source, Func<Working?, Limit?> check, bool? canBreak = null)
    {
        if (check(null) is not { } limit)
            return;
        rungs.Add(new Rung
        {
            Id = words.Id,
            Part = words.Part,
            Mode = words.Mode,
            Brief = words.Brief,
            Load = words.Load,
            Saying = words.Saying,
            Plural = words.Plural,
            Group = group,
            GivesAt = limit.GivesAt,
            SafeTo = limit.SafeTo,
            FactorFrom = factorFrom,
            Source = source,
            CanBreak = canBreak,
            Work = w => check(w),
        });
    }

    /// <summary>The section of a bar or plate, bent over its depth.</summary>
    public static SectionProperties Flat(double depth, double width) => new Flat(depth, width)
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"flat {depth * 1e3:0.#}x{width * 1e3:0.#}"),
        Source = SectionText.AsGiven,
    }.Properties;

    /// <summary>The tightest of several cases.</summary>
    public static T? Tightest<T>(IEnumerable<T> cases, Func<T, Limit?> check)
        where T : class
    {
        T? worst = null;
        double least = double.PositiveInfinity;
        foreach (T one in cases)
        {
            if (check(one) is not { } limit || limit.SafeTo >= least * (1 - 1e-9))
                continue;
            (worst, least) = (one, limit.SafeTo);
        }

        return worst;
    }
}
