using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles what drives the cylinder.</summary>
internal static class ResolvePump
{
    public static RigPump Of(Pump said, RigCylinder cylinder, Assumptions assume) => said switch
    {
        AirPump air => Air(air, assume),
        ElectricPack pack => Electric(pack, cylinder, assume),
        HandPump hand => Hand(hand, assume),
        _ => throw new ArgumentException($"no such pump: {said.GetType().Name}"),
    };

    private static RigAirPump Air(AirPump said, Assumptions assume)
    {
        // The share of ratio × air pressure that is left at stall after the friction of air seals; common practice.
        const double friction = 0.95;
        double air = Resolver.Needed(said.AirPressure, "pump.air-pressure");
        double ratedAir = assume.Or(said.RatedAir, "pump.rated-air", 7e5, Dimension.Pressure,
            new Remark("makers state their figures at about {0}", Remark.Of(7e5, Dimension.Pressure)));
        double effective, area;
        if (said.StallPressure is { } stall)
        {
            effective = stall / ratedAir;
            area = said.Ratio ?? effective / friction;
        }
        else
        {
            area = said.Ratio ?? throw new ArgumentException("'pump.ratio' or 'pump.stall-pressure' is needed");
            effective = friction * area;
            assume.Note("pump.stall-pressure", $"ratio x air pressure x {friction}", "5 % lost to seals; common practice");
        }

        double free = assume.Or(said.FreeFlow, "pump.free-flow", 0.9e-3 / 60, Dimension.Flow,
            "a common small air-driven pump; read it off the maker's sheet");
        double fullAt = assume.Or(said.FullFlowAt, "pump.full-flow-at", 0.85 * effective * ratedAir, Dimension.Pressure,
            "85 % of stall at rated air");
        double full = assume.Or(said.FullFlow, "pump.full-flow", 0.15 * free, Dimension.Flow,
            "about a sixth of the free flow; common practice, the sheet is better");
        Compressor behind = said.Compressor ?? new Compressor();
        double cutOut = assume.Or(behind.CutOut, "pump.compressor.cut-out", Math.Max(Math.Max(8e5, air + 1e5), (behind.CutIn ?? 0) + 1e5), Dimension.Pressure, "the usual workshop compressor");
        bool rated = behind.FreeAir is not null || behind.Motor is not null;
        return new RigAirPump
        {
            Relief = said.Relief,
            UsableOil = assume.Or(said.UsableOil, "pump.usable-oil", 1.6e-3, Dimension.Volume, "the tank of a small air-driven pump"),
            EffectiveRatio = effective,
            AreaRatio = area,
            AirPressure = air,
            RatedAir = ratedAir,
            FreeFlow = free,
            FullFlow = full,
            FullFlowAt = fullAt,
            AirUse = said.AirUse,
            Compressor = new RigCompressor(
                assume.Or(behind.Receiver, "pump.compressor.receiver", 0.05, Dimension.Volume, "the smallest receiver sold for workshops"),
                assume.Or(behind.CutIn, "pump.compressor.cut-in", cutOut > 4e5 ? cutOut - 2e5 : 0.5 * cutOut, Dimension.Pressure, new Remark("{0} below cut-out, or half of it", Remark.Of(2e5, Dimension.Pressure))),
                cutOut,
                behind.FreeAir,
                rated ? behind.Motor : assume.Or(null, "pump.compressor.motor", 1500, Dimension.Power, "2 hp, the usual small compressor")),
        };
    }

    private static RigElectricPack Electric(ElectricPack said, RigCylinder cylinder, Assumptions assume)
    {
        double motor = Resolver.Needed(said.Motor, "pump.motor");
        double speed = assume.Or(said.Speed, "pump.speed", 1440.0 / 60, Dimension.RotationalSpeed, "a four-pole motor on mains of 50 Hz; on 60 Hz it turns at 1725 to 1750: the mains say, not the tape");
        double limit = said.RatedPressure is { } own ? Math.Min(own, cylinder.RatedPressure) : cylinder.RatedPressure;
        double relief = assume.Or(said.Relief, "pump.relief", limit, Dimension.Pressure,
            "set no higher than the weaker of pump and cylinder; there must be one");
        if (said.Relief is null)
            assume.Caution("No relief valve is stated. Never run a powered pump without one: fit it, set it, lock it.", CautionKind.Danger);
        RigStage high = Stage(said.HighStage, "pump.high-stage", motor, speed, relief, assume);
        RigStage? low = said.LowStage is null
            ? null
            : Stage(said.LowStage, "pump.low-stage", motor, speed, said.UnloadAt ?? 50e5, assume);
        double usable = assume.Or(said.UsableOil, "pump.usable-oil", 10e-3, Dimension.Volume, new Remark("half of a tank of {0}", Remark.Of(20e-3, Dimension.Volume)));
        double tank = assume.Or(said.TankOil, "pump.tank-oil", 2 * usable, Dimension.Volume, "twice what can be drawn from it");
        return new RigElectricPack
        {
            Relief = relief,
            UsableOil = usable,
            TankOil = tank,
            TankWalls = assume.Or(said.TankWalls, "pump.tank-walls", 5 * Math.Pow(tank, 2.0 / 3), Dimension.Area,
                "bottom and sides of a cube that the oil fills"),
            Motor = motor,
            Speed = speed,
            HighStage = high,
            LowStage = low,
            UnloadAt = low is null ? 0 : assume.Or(said.UnloadAt, "pump.unload-at", 50e5, Dimension.Pressure, "a common setting"),
            RatedPressure = said.RatedPressure,
        };
    }

    private static RigStage Stage(PumpStage? said, string path, double motor, double speed, double pressure, Assumptions assume)
    {
        double volumetric = assume.Or(said?.VolumetricEfficiency, path + ".volumetric-efficiency", 0.92, Dimension.Ratio, "a gear pump in fair order");
        double mechanical = assume.Or(said?.MechanicalEfficiency, path + ".mechanical-efficiency", 0.88, Dimension.Ratio, "a gear pump in fair order");
        double displacement = said switch
        {
            { Displacement: { } swept } => swept,
            { Flow: { } flow } => flow / (speed * volumetric),
            _ => assume.Or(null, path + ".displacement", motor * mechanical / (pressure * speed), Dimension.Displacement,
                "the pump this motor can just turn at full pressure"),
        };
        return new RigStage(displacement, volumetric, mechanical);
    }

    private static RigHandPump Hand(HandPump said, Assumptions assume)
    {
        double stroke = Resolver.Needed(said.PerStroke, "pump.per-stroke");
        double rated = assume.Or(said.RatedPressure, "pump.rated-pressure", 700e5, Dimension.Pressure, "the usual hand pump");
        return new RigHandPump
        {
            Relief = said.Relief,
            UsableOil = assume.Or(said.UsableOil, "pump.usable-oil", 0.9e-3, Dimension.Volume, "the tank of a small hand pump"),
            PerStroke = stroke,
            LowPerStroke = said.LowPerStroke ?? stroke,
            UnloadAt = said.LowPerStroke is null ? 0 : assume.Or(said.UnloadAt, "pump.unload-at", 20e5, Dimension.Pressure, "a common setting"),
            Cadence = assume.Or(said.Cadence, "pump.cadence", 0.5, Dimension.Cadence, "an easy pace"),
            RatedPressure = rated,
            HandleForce = said.HandleForce,
        };
    }
}
