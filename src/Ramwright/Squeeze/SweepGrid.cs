using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>Reads the grid of a sweep: <c>heat=900..1250 °C/36, bar=10..60 mm/26</c>; the first goes across, the second up.</summary>
public static class SweepGrid
{
    /// <summary>The word for a grid that suits the job.</summary>
    public const string Usual = "usual";

    /// <summary>The most points that one sweep may have.</summary>
    public const int MostPoints = 100_000;

    private const int UsualCount = 25;

    private static readonly (string Word, SweepOf Of)[] Words =
        [("bar", SweepOf.Bar), ("heat", SweepOf.Heat), ("die-width", SweepOf.DieWidth), ("die-heat", SweepOf.DieHeat), ("transfer", SweepOf.Transfer)];

    /// <summary>All that can be swept with its word, in the order in which it is offered.</summary>
    public static IReadOnlyList<(string Word, SweepOf Of)> Sweepable => Words;

    /// <summary>The grid that suits a job: its bar against the heat that it comes with.</summary>
    public static (SweepAxis Across, SweepAxis Up) UsualFor(RigHotSqueeze job) => (UsualFor(job, SweepOf.Heat), UsualFor(job, SweepOf.Bar));

    /// <summary>Values of one thing that suit a job.</summary>
    public static SweepAxis UsualFor(RigHotSqueeze job, SweepOf of)
    {
        ArgumentNullException.ThrowIfNull(job);
        double coldest = job.Steel.Coldest + 50;
        (double from, double to) = of switch
        {
            SweepOf.Heat => (coldest, Math.Max(coldest + 50, Math.Min(job.Steel.Hottest, HotSteel.Hottest))),
            SweepOf.Bar => (job.Height / 4, 6 * job.Height),
            SweepOf.DieWidth => (job.DieWidth / 2, 3 * job.DieWidth),
            SweepOf.DieHeat => (20, 300),
            _ => (1, 20),
        };
        return new SweepAxis(of, from, to, UsualCount);
    }

    /// <summary>Reads it; on failure says why.</summary>
    /// <param name="text">The grid.</param>
    /// <param name="job">The squeeze that is swept.</param>
    /// <param name="why">What is wrong with it; empty where nothing is.</param>
    public static (SweepAxis Across, SweepAxis Up)? Read(string text, RigHotSqueeze job, out string why)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(job);
        why = "";
        if (text.Equals(Usual, StringComparison.OrdinalIgnoreCase))
            return UsualFor(job);

        string[] parts = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 2)
        {
            why = $"a sweep changes two things, written \"heat=900..1250 °C/36, bar=10..60 mm/26\", or \"{Usual}\"";
            return null;
        }

        if (Axis(parts[0], out why) is not { } across || Axis(parts[1], out why) is not { } up)
            return null;
        if (across.Of == up.Of)
        {
            why = "a sweep needs two different things to change";
            return null;
        }

        if ((long)across.Count * up.Count > MostPoints)
        {
            why = $"{across.Count} × {up.Count} points are more than {MostPoints}";
            return null;
        }

        return (across, up);
    }

    private static SweepAxis? Axis(string text, out string why)
    {
        string[] sides = text.Split('=', 2, StringSplitOptions.TrimEntries);
        string name = sides[0];
        int at = Array.FindIndex(Words, w => w.Word.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (sides.Length < 2 || at < 0)
        {
            why = at < 0 ? $"nothing called \"{name}\" can be swept; nearest: {NearestWord.Ranked(name, Words.Select(w => w.Word), 1)[0]}" : $"{name} needs its values: {name}=10..60 mm/26";
            return null;
        }

        string values = sides[1];
        int count = UsualCount;
        int slash = values.LastIndexOf('/');
        if (slash >= 0 && !int.TryParse(values[(slash + 1)..].Trim(), out count))
        {
            why = $"\"{values[(slash + 1)..]}\" is no number of values";
            return null;
        }

        string[] ends = (slash >= 0 ? values[..slash] : values).Split("..", StringSplitOptions.TrimEntries);
        if (ends.Length != 2)
        {
            why = $"{name} needs two ends: {name}=10..60 mm/26";
            return null;
        }

        // the first end may leave its unit to the second
        string unit = new([.. ends[1].SkipWhile(c => char.IsDigit(c) || c is '.' or ',' or '-' or '+' or ' ')]);
        if (!ends[0].Any(char.IsLetter) && !ends[0].EndsWith('"') && !ends[0].EndsWith('°'))
            ends[0] += " " + unit;
        Dimension dimension = SweepAxis.DimensionOf(Words[at].Of);
        var si = new double[2];
        for (int i = 0; i < 2; i++)
        {
            if (!QuantityText.TryRead(ends[i], dimension, out Quantity value, out ReadingFault? fault))
            {
                why = $"{name}: {fault.Found}; {fault.Wanted}";
                return null;
            }

            si[i] = value.Si;
        }

        if (count is < 2 or > 1000 || !(si[0] >= 0 && si[1] > si[0]) || dimension == Dimension.Length && !(si[0] > 0))
        {
            why = $"{name}: two rising ends above zero and 2 to 1000 values";
            return null;
        }

        why = "";
        return new SweepAxis(Words[at].Of, si[0], si[1], count);
    }
}
