using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>The force a press is proved at, once, as thrust of the oil with nothing lost: what the frame may feel at worst. N.</summary>
/// <param name="Force">The proof force, N.</param>
/// <param name="Factor">Over the safe rating.</param>
/// <param name="Pressure">Gauge pressure that makes it, Pa.</param>
/// <param name="Rating">The safe rating it proves, N.</param>
/// <param name="Holds">The rung that keeps it below the wished factor; null where none does.</param>
/// <param name="OutOfReach">Whether the pump cannot make it: then it is what the pump can make.</param>
/// <param name="Reason">Why it is what it is, to be said in metric or imperial.</param>
public sealed record ProofForce(double Force, double Factor, double Pressure, double Rating, Rung? Holds, bool OutOfReach, Func<UnitSystem, string> Reason)
{
    /// <summary>Usual proof over safe rating.</summary>
    public const double Usual = 1.25;

    /// <summary>The most of any part's giving force that a proof may use, as a divisor.</summary>
    public const double Below = 1.1;

    /// <summary>Where the usual factor comes from.</summary>
    public static readonly Citation Source = new("EN 13155", "static proof of lifting gear at 1.25 of its rating: followed as practice", Standing.FromMemory);

    /// <summary>Finds it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="factor">Wished proof over safe rating, 1 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <remarks>
    /// Only rungs that break something count: reaching a relief valve's setting, a motor's load, the dies' allowed opening or a number of squeezes once harms nothing. Limits of
    /// pressure are compared at the same pressure.
    /// </remarks>
    public static ProofForce Of(PressCheck check, double factor = Usual, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(check);
        Check.AtLeast(factor, 1);
        double rating = check.Ladder.SafeRating, wished = factor * rating;
        if (!(rating > 0))
            return new ProofForce(0, 0, 0, 0, check.Ladder.Governing, false, _ => $"The press is safe to nothing, by the {check.Ladder.Governing.Part}: mend that before it is proved.");
        w?.Step("F_1", "proof by its factor", "γ F_s", wished, Dimension.Force, Source, ("γ", factor, Dimension.Number), ("F_s", rating, Dimension.Force));
        Rung? lowest = null;
        double gives = double.PositiveInfinity;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            // in load cases off centre the rung stands lower than under a centred proof: that is on the safe side
            double at = rung.GivesAt * rung.PressureScale;
            if (rung.MustSurvive && at < gives)
                (lowest, gives) = (rung, at);
        }

        double force = wished;
        Rung? holds = null;
        if (lowest is not null)
        {
            double most = gives / Below;
            w?.Step("F_2", $"what the {lowest.Part} leaves", "F_g / 1.1", most, Dimension.Force, Source, ("F_g", gives, Dimension.Force));
            if (most < force)
                (force, holds) = (most, lowest);
        }

        // a relief valve is set up for the test and set back; a pump that stalls cannot be
        double reach = Reach(check).Thrust;
        bool beyond = force > reach * (1 + 1e-9);
        if (beyond)
            (force, holds) = (reach, null);
        return new ProofForce(force, rating > 0 ? force / rating : 0, force / check.Power.Areas.Force, rating, holds, beyond, units => Say(check, factor, force, holds, beyond, units));
    }

    /// <summary>The most that the pump can make with its relief valve set up.</summary>
    internal static Power.PressureLimit Reach(PressCheck check) =>
        check.Power.Limits.All.Where(l => l.Nature == Power.PressureLimitNature.Stops && l.Kind != Power.PressureLimitKind.Relief)
            .MinBy(l => l.Pressure) ?? check.Power.Limits.MostPossible;

    private static string Say(PressCheck check, double factor, double force, Rung? holds, bool beyond, UnitSystem units)
    {
        string rating = ForceText.Of(check.Ladder.SafeRating, units), at = ForceText.Of(force, units);
        string times = Readout.Number(force / check.Ladder.SafeRating, 3);
        if (beyond)
            return $"{times} of the safe rating of {rating}: the pump cannot make more than {at}. A hand pump on the same line can prove it up to {Readout.Number(factor)} of the rating.";
        return holds is null
            ? $"{Readout.Number(factor)} of the safe rating of {rating}, as lifting gear is proved."
            : $"{times} of the safe rating of {rating}, not {Readout.Number(factor)}: the {holds.Part} {holds.Brief} at {ForceText.Of(holds.GivesAt, units)}, and a proof stays a tenth below that.";
    }
}
