using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What ends the pressure, and what the makers allow: stall, relief, motor, pump, hose, cylinder.</summary>
internal static class PowerRungs
{
    private static readonly Citation HoseBurst = new("EN 853:2015", "4:1 burst to working pressure", Standing.FromMemory);
    private static readonly Citation CylinderProof = new("ISO 10100", "proof at 1.5 times rated pressure", Standing.FromMemory);

    public static void Add(List<Rung> rungs, Rig rig, PowerReport power)
    {
        var oil = new OilForce(rig.Cylinder, power.Areas);
        foreach (PressureLimit limit in power.Limits.All)
        {
            // nothing gets past a working relief valve or a stalled air pump: what lies beyond is no rung
            if (limit.Nature != PressureLimitNature.Rating && limit.Pressure > power.Limits.MostPossible.Pressure)
                continue;
            if (limit.Force <= 0)
                continue;
            rungs.Add(Of(limit, rig, oil));
        }
    }

    private static Rung Of(PressureLimit limit, Rig rig, OilForce oil)
    {
        (string id, string part, string mode, string saying, RungGroup group) = limit.Kind switch
        {
            PressureLimitKind.AirStall => ("air-stall", "air-driven pump", "stalls", "stalls", RungGroup.Power),
            PressureLimitKind.Relief => ("relief", "relief valve", "opens", "opens", RungGroup.Power),
            PressureLimitKind.MotorFullLoad => ("motor-load", "motor", "is fully loaded", "is fully loaded", RungGroup.Power),
            PressureLimitKind.MotorStop => ("motor-stop", "motor", "stops", "stops", RungGroup.Power),
            PressureLimitKind.HandleRated => ("handle-rated", "pump handle", "takes its rated push", "takes its rated push", RungGroup.Power),
            PressureLimitKind.HandleHard => ("handle-hard", "pump handle", "cannot be pushed harder", "cannot be pushed harder", RungGroup.Power),
            PressureLimitKind.PumpRating => ("pump-rating", "pump", "is above its rating", "is driven above its maker's rating", RungGroup.Power),
            PressureLimitKind.HoseRating => ("hose-rating", PressureLimits.WeakestHose(rig.Lines)?.Name ?? "hose", "bursts", "bursts", RungGroup.Lines),
            _ => ("cylinder-rating", "cylinder", "is past its proof pressure", "is past its proof pressure", RungGroup.Cylinder),
        };
        double factor = limit.Kind switch
        {
            PressureLimitKind.HoseRating => 4,
            PressureLimitKind.CylinderRating => 1.5,
            _ => 1,
        };
        return new Rung
        {
            Id = id,
            Part = part,
            Mode = mode,
            Saying = saying,
            Group = group,
            CanBreak = limit.Nature == PressureLimitNature.Rating,
            GivesAt = factor > 1 ? oil.Net(limit.Pressure * factor) : limit.Force,
            SafeTo = limit.Force,
            PressureScale = limit.Thrust / limit.Force,
            FactorFrom = limit.Kind switch
            {
                PressureLimitKind.HoseRating => $"four to one, burst to working pressure; {HoseBurst}",
                PressureLimitKind.CylinderRating => $"the proof pressure a maker tests to; {CylinderProof}",
                PressureLimitKind.PumpRating => "none known beyond the maker's rating",
                _ => "none: the pressure ends there",
            },
            Source = limit.Kind switch
            {
                PressureLimitKind.HoseRating => HoseBurst,
                PressureLimitKind.CylinderRating => CylinderProof,
                _ => PressureLimits.Stated,
            },
            Work = w =>
            {
                CylinderAreas.Of(rig.Cylinder, w);
                if (limit.Nature != PressureLimitNature.Rating)
                    PumpCurve.Of(rig.Pump, w);
                w.Take("p", $"pressure at which {limit.Words} is met", limit.Pressure, Dimension.Pressure, PressureLimits.Stated);
                oil.Net(limit.Pressure, w);
                if (factor > 1)
                {
                    double p = w.Step("p_b", "pressure at which it gives", "n p", factor * limit.Pressure, Dimension.Pressure,
                        limit.Kind == PressureLimitKind.HoseRating ? HoseBurst : CylinderProof,
                        ("n", factor, Dimension.Number), ("p", limit.Pressure, Dimension.Pressure));
                    oil.Net(p, w);
                }
            },
        };
    }
}
