using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>All limits of the pressure, and the two that govern.</summary>
/// <param name="All">Every limit, lowest pressure first.</param>
/// <param name="Normal">What ends the pressure in normal use: the lowest that stops it or ends normal use.</param>
/// <param name="MostPossible">What ends it at the very last, whatever the person does: the lowest that stops it.</param>
public sealed record PressureLimits(IReadOnlyList<PressureLimit> All, PressureLimit Normal, PressureLimit MostPossible)
{
    /// <summary>Ratings are the makers' own.</summary>
    public static readonly Citation Stated = Citation.Practice("as the maker or the person states it");

    /// <summary>Finds the limits.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="areas">Its areas.</param>
    /// <param name="S">Return spring at full stroke, N, 0 or more.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="curve">Its curve.</param>
    /// <param name="lines">The lines; only those that carry pressure count.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pressure that is not above zero.</exception>
    public static PressureLimits Of(
        RigCylinder cylinder, CylinderAreas areas, double S, RigPump pump, PumpCurve curve, IReadOnlyList<RigLine> lines,
        Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(lines);
        var all = new List<PressureLimit>(6);

        // The relief valve stands first: where two limits tie, the one that is meant to work governs.
        if (pump.Relief is double relief)
            Add(PressureLimitKind.Relief, PressureLimitNature.Stops, "the relief valve opens", relief);
        switch (curve)
        {
            case AirPumpCurve air:
                Add(PressureLimitKind.AirStall, PressureLimitNature.Stops, "the air pump stalls", air.Stall);
                break;
            case ElectricPumpCurve electric:
                Add(PressureLimitKind.MotorFullLoad, PressureLimitNature.EndsNormalUse, "the motor is fully loaded",
                    electric.StopsAtChangeover ? electric.RatedLoadPressureBoth : electric.RatedLoadPressure);
                Add(PressureLimitKind.MotorStop, PressureLimitNature.Stops, "the motor stops", electric.MotorStopsAt);
                break;
            case HandPumpCurve hand:
                Add(PressureLimitKind.HandleRated, PressureLimitNature.EndsNormalUse, "the handle takes its rated push",
                    hand.HardestPressure / HandPumpCurve.HardPush);
                Add(PressureLimitKind.HandleHard, PressureLimitNature.Stops, "nobody can push the handle harder", hand.HardestPressure);
                break;
        }

        double? rating = pump switch
        {
            RigElectricPack pack => pack.RatedPressure,
            RigHandPump hand => hand.RatedPressure,
            _ => null,
        };
        if (rating is double rated)
            Add(PressureLimitKind.PumpRating, PressureLimitNature.Rating, "the pump's own rating", rated);
        if (WeakestHose(lines) is { Rating: { } hose } weakest)
            Add(PressureLimitKind.HoseRating, PressureLimitNature.Rating, "the rating of " + weakest.Name, hose);
        Add(PressureLimitKind.CylinderRating, PressureLimitNature.Rating, "the cylinder's rating", cylinder.RatedPressure);

        PressureLimit normal = Lowest(all, PressureLimitNature.EndsNormalUse);
        PressureLimit most = Lowest(all, PressureLimitNature.Stops);
        w?.Note($"In normal use the pressure ends where {normal.Words}; at the very last where {most.Words}.");
        // A list's own sort may swap ties; this keeps them in the order above.
        return new PressureLimits([.. all.OrderBy(l => l.Pressure)], normal, most);

        void Add(PressureLimitKind kind, PressureLimitNature nature, string words, double p)
        {
            Check.Positive(p, kind.ToString());
            w?.Take("p", $"pressure at which {words} is met", p, Dimension.Pressure, Stated);
            double F = RamForce.Net(p, areas.Force, cylinder.SealFriction, S, w);
            all.Add(new PressureLimit(kind, nature, words, p, F, p * areas.Force));
        }
    }

    /// <summary>The pressure line with the lowest rating, or null where none is stated.</summary>
    internal static RigLine? WeakestHose(IReadOnlyList<RigLine> lines)
    {
        RigLine? weakest = null;
        foreach (RigLine line in lines)
        {
            if (line is { Duty: LineDuty.Pressure, Rating: not null } && (weakest is null || line.Rating < weakest.Rating))
                weakest = line;
        }

        return weakest;
    }

    private static PressureLimit Lowest(List<PressureLimit> all, PressureLimitNature upTo)
    {
        PressureLimit? lowest = null;
        foreach (PressureLimit limit in all)
        {
            if (limit.Nature <= upTo && (lowest is null || limit.Pressure < lowest.Pressure))
                lowest = limit;
        }

        return lowest!;     // every pump has a limit that stops it
    }
}
