using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a pump and what drives it.</summary>
internal static class PumpRules
{
    private static readonly Given UsualStage = Remark.About(16e-6, Dimension.Displacement);

    // Rounding of makers' figures.
    private const double Rounding = 1.05;

    public static void Check(Pump said, List<Fault> faults)
    {
        switch (said)
        {
            case AirPump air:
                Air(air, faults);
                break;
            case ElectricPack pack:
                Electric(pack, faults);
                break;
            case HandPump hand:
                Hand(hand, faults);
                break;
        }
    }

    private static void Air(AirPump said, List<Fault> faults)
    {
        if (said.Ratio is null && said.StallPressure is null)
        {
            faults.Add(new Fault("pump.ratio", "the pump says neither its pressure ratio nor where it stalls",
                new Remark("ratio: 100, or stall-pressure: {0} with rated-air: {1}, from its plate", Remark.About(700e5, Dimension.Pressure), Remark.About(7e5, Dimension.Pressure)), Against: "pump.stall-pressure"));
        }

        // At rated air, friction can only take away from ratio × air.
        if (said is { Ratio: { } ratio, StallPressure: { } stall, RatedAir: { } rated } && stall > Rounding * ratio * rated)
        {
            faults.Add(new Fault("pump.stall-pressure", "this is more than ratio times rated-air: no pump gives more than that",
                "ratio, rated-air and stall-pressure from one plate; one of ratio and stall-pressure is enough", Against: "pump.ratio"));
        }

        if (said.FullFlow > said.FreeFlow)
        {
            faults.Add(new Fault("pump.full-flow", "the pump would give more oil at full pressure than at none",
                "a flow smaller than free-flow", Against: "pump.free-flow"));
        }

        if (said.FullFlowAt is not null && said.FullFlow is null)
            faults.Add(new Fault("pump.full-flow-at", "this belongs to full-flow, which is not stated", new Remark("full-flow: {0} beside it, or no such line", Remark.About(0.15e-3 / 60, Dimension.Flow)), Against: "pump.full-flow"));
        if (said.FullFlowAt > said.StallPressure)
        {
            faults.Add(new Fault("pump.full-flow-at", "the pump stalls before it reaches this pressure", "a pressure below stall-pressure",
                Against: "pump.stall-pressure"));
        }

        if (said.Compressor is { } behind)
        {
            if (behind.CutIn >= behind.CutOut)
            {
                faults.Add(new Fault("pump.compressor.cut-in", "the compressor would start above the pressure at which it stops",
                    "a cut-in below the cut-out", Against: "pump.compressor.cut-out"));
            }

            if (said.AirPressure > behind.CutOut)
            {
                faults.Add(new Fault("pump.air-pressure", "the compressor stops before it reaches this pressure",
                    "an air pressure no higher than the compressor's cut-out", Against: "pump.compressor.cut-out"));
            }
        }
    }

    private static void Electric(ElectricPack said, List<Fault> faults)
    {
        Unloading(said.UnloadAt, said.Relief, said.RatedPressure, faults);
        if (said.UnloadAt is not null && said.LowStage is null)
        {
            faults.Add(new Fault("pump.unload-at", "there is no large stage to unload",
                new Remark("low-stage: { displacement: {0} } beside it, or no unload-at", UsualStage), Against: "pump.low-stage"));
        }

        if (said.LowStage is { Displacement: null, Flow: null })
        {
            faults.Add(new Fault("pump.low-stage", "the large stage says neither its displacement nor its flow",
                new Remark("displacement: {0} or flow: {1} under it, or no low-stage", UsualStage, Remark.About(20e-3 / 60, Dimension.Flow))));
        }

        Stage(said.HighStage, "pump.high-stage", said.Speed, faults);
        Stage(said.LowStage, "pump.low-stage", said.Speed, faults);
        if (said.LowStage?.Displacement <= said.HighStage?.Displacement)
            faults.Add(Swapped("displacement"));
        else if (said.LowStage?.Flow <= said.HighStage?.Flow)
            faults.Add(Swapped("flow"));

        static Fault Swapped(string key) => new("pump.low-stage." + key, "the large stage is no larger than the small one",
            "low-stage for the large stage, high-stage for the small one that makes the pressure", Against: "pump.high-stage." + key);
    }

    private static void Stage(PumpStage? said, string path, double? speed, List<Fault> faults)
    {
        if (said is { Flow: { } flow, Displacement: { } swept } && speed is { } n && flow > Rounding * swept * n)
        {
            faults.Add(new Fault(path + ".flow", "this is more than the displacement sweeps at the motor's speed",
                "one of displacement and flow, or two that belong together", Against: path + ".displacement"));
        }
    }

    private static void Hand(HandPump said, List<Fault> faults)
    {
        Unloading(said.UnloadAt, said.Relief, said.RatedPressure, faults);
        if (said.UnloadAt is not null && said.LowPerStroke is null)
            faults.Add(new Fault("pump.unload-at", "there is no large piston to unload", new Remark("low-per-stroke: {0} beside it, or no unload-at", Remark.About(13e-6, Dimension.Volume)), Against: "pump.low-per-stroke"));
        if (said.LowPerStroke < said.PerStroke)
        {
            faults.Add(new Fault("pump.low-per-stroke", "the pump would give less oil a stroke at low pressure than at high",
                "low-per-stroke greater than per-stroke", Against: "pump.per-stroke"));
        }
    }

    private static void Unloading(double? unloadAt, double? relief, double? rated, List<Fault> faults)
    {
        const string path = "pump.unload-at";
        if (unloadAt >= relief)
        {
            faults.Add(new Fault(path, "the relief valve opens before the large stage is unloaded", "a pressure well below relief",
                Against: "pump.relief"));
        }
        else if (unloadAt >= rated)
        {
            faults.Add(new Fault(path, "the large stage would be unloaded only above what the pump may reach",
                "a pressure well below rated-pressure", Against: "pump.rated-pressure"));
        }
    }
}
