using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>How long it lasts, and what it does when the work lets go, a line each.</summary>
internal static class LastingFacts
{
    // in brief the life alone, in few words
    public static IEnumerable<(string What, string Value, string Remark)> Of(PressCheck check, UnitSystem units, bool brief = false)
    {
        if (check.SqueezesUntilInspection is { } life)
        {
            string remark = life.Squeezes switch
            {
                null => "of the wanted force do no damage that counts",
                0 => $"the {life.Part} is strained beyond what fatigue curves cover",
                { } n when check.Rig.Loading.SqueezesADay is { } daily =>
                    $"{Days(n / daily)} at the wanted force, then look for cracks: {life.Spot}",
                _ when brief => $"then look for cracks: {life.Spot}",
                _ => $"at the wanted force, then look for cracks: {life.Spot}",
            };
            yield return ("squeezes", life.Squeezes is { } many ? Rounded(many).ToString("#,0") : "no end", remark);
        }

        if (brief)
            yield break;
        SnapThrough snap = check.SnapThrough;
        yield return ("work lets go", Readout.Text(snap.FreeTravel, Dimension.Length, units),
            $"the ram jumps, at most; {Readout.Text(snap.InOil, Dimension.Energy, units, 2)} from the oil, {Readout.Text(snap.InFrame, Dimension.Energy, units, 2)} from the frame");
    }

    private static string Days(double days) => days < 1 ? "less than a day" : $"{Rounded(days):#,0} working days";

    /// <summary>Down to two figures: more would promise too much.</summary>
    private static double Rounded(double n)
    {
        if (!(n >= 1))
            return 0;
        double scale = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(n)) - 1));
        return Math.Floor(n / scale) * scale;
    }
}
