using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>All wording of what a person must know about the power of the press.</summary>
internal static class PowerCautions
{
    /// <summary>Pressure from which a fine jet of oil goes through skin, Pa.</summary>
    private const double InjectsFrom = 7e5;

    public static IReadOnlyList<Caution> Of(RigCylinder cylinder, RigPump pump, PowerReport report)
    {
        var all = new List<Caution>(12);
        Relief(all, pump, report);
        Ratings(all, report);
        switch (pump)
        {
            case RigAirPump air:
                Air(all, air, report);
                break;
            case RigElectricPack electric:
                Electric(all, electric, report);
                break;
            case RigHandPump:
                Hand(all, report);
                break;
        }

        Rod(all, cylinder, report);
        Lines(all, report);
        Label(all, report);
        Stroke(all, report);
        Always(all, report);
        return all;
    }

    private static void Relief(List<Caution> all, RigPump pump, PowerReport report)
    {
        if (pump.Relief is null)
            Danger(all, "There is no relief valve: fit one. Until then nothing but the pump itself ends the pressure, at {0} and {1} on the frame.",
                P(report.MostPossiblePressure), F(report.MostPossibleForce));
        else if (report.Limits.MostPossible.Kind == PressureLimitKind.Relief)
            Handling(all, "A relief valve may pass its setting of {0} by a tenth while it takes the whole flow. Lock its adjuster and prove the setting with a gauge.",
                P(pump.Relief.Value));
    }

    private static void Ratings(List<Caution> all, PowerReport report)
    {
        foreach (PressureLimit limit in report.Limits.All)
        {
            if (limit.Nature != PressureLimitNature.Rating)
                continue;
            if (limit.Pressure < report.TruePressure)
                Danger(all, "In normal use the pump goes beyond " + limit.Words + ": {0} on a rating of {1}.",
                    P(report.TruePressure), P(limit.Pressure));
            else if (limit.Pressure < report.MostPossiblePressure)
                Danger(all, "The pump can go beyond " + limit.Words + ": {0} on a rating of {1}.",
                    P(report.MostPossiblePressure), P(limit.Pressure));
        }
    }

    private static void Air(List<Caution> all, RigAirPump pump, PowerReport report)
    {
        AirSupply air = report.Air!;
        RigCompressor c = pump.Compressor;
        if (c.CutOut > pump.AirPressure && air.PressureAtCutOut > report.MostPossiblePressure)
            Danger(all, "The air regulator sets the force. Wound up, or failed, it lets the compressor's {0} through: the pump then makes {1}, {2} on the frame.",
                P(c.CutOut), P(air.PressureAtCutOut), F(air.ThrustAtCutOut));
        if (c.CutOut < pump.AirPressure)
            Danger(all, "The compressor stops at {0} and cannot give the {1} the pump is reckoned with.", P(c.CutOut), P(pump.AirPressure));
        else if (c.CutIn < pump.AirPressure)
            Handling(all, "Before the compressor starts again the air is down to {0}, and the force to {1}.", P(c.CutIn), F(air.ForceAtCutIn));
        if (!air.WantedInReach)
            Danger(all, "The wanted force needs {0} of air at the pump; it is set to {1}.", P(air.AirForWanted), P(pump.AirPressure));
        if (air.Delivered is null)
            Unchecked(all, "The compressor's delivery is not known, so nothing can be said of how long the pump may run.");
        else if (air.RunningShare < 1)
            Handling(all, "The pump takes {0} of free air, the compressor gives {1}: it cannot run without rests.",
                new Given("q", air.Demand, Dimension.FreeAir), new Given("Q", air.Delivered.Value, Dimension.FreeAir));
        if (!((AirPumpCurve)report.Curve).Fitted)
            Unchecked(all, "The maker's flow near full pressure is not known or does not fit, so the speeds under load are a guess of the usual shape.");
    }

    private static void Electric(List<Caution> all, RigElectricPack pack, PowerReport report)
    {
        var curve = (ElectricPumpCurve)report.Curve;
        if (report.Limits.MostPossible.Kind == PressureLimitKind.MotorStop)
            Unchecked(all, "The most possible force rests on a guess: the motor is taken to pull 2.5 times its rated torque before it stops, at {0}. A stronger motor makes more.",
                P(report.MostPossiblePressure));
        if (curve.StopsAtChangeover)
            Danger(all, "Both stages together stop the motor before the large one is unloaded at {0}: lower that setting.", P(pack.UnloadAt));
        else if (curve.OverloadedAtChangeover)
            Danger(all, "The motor is overloaded between {0} and the unloading of the large stage at {1}.",
                P(curve.RatedLoadPressureBoth), P(pack.UnloadAt));
        if (!curve.StopsAtChangeover && pack.Relief is double relief && relief > curve.RatedLoadPressure)
            Danger(all, "The motor is overloaded from {0} up to the relief setting of {1}: it must not be held there.",
                P(curve.RatedLoadPressure), P(relief));
    }

    private static void Hand(List<Caution> all, PowerReport report)
    {
        if (report.Limits.MostPossible.Kind == PressureLimitKind.HandleHard)
            Unchecked(all, "The most possible force rests on a guess: a person who leans on the handle makes twice the pump's rating, {0}.",
                P(report.MostPossiblePressure));
        if (report.Hand!.HandleForce is > HandWork.Comfortable)
            Handling(all, "The handle takes {0}, more than a person can keep up.", F(report.Hand.HandleForce.Value));
    }

    private static void Rod(List<Caution> all, RigCylinder cylinder, PowerReport report)
    {
        if (report.Areas.Regenerates)
            Handling(all, "The circuit is regenerative all the way: only the rod's area pushes, {0} of the bore's {1}.",
                F(report.TrueForce), F(report.TruePressure * report.Areas.Push));
        if (report.BlockedRodSide is double p)
            Danger(all, "If the return port is blocked, or its coupler not fully made, the rod side sees {0} (rated {1}). Fit a relief valve there with nothing between.",
                P(p), P(cylinder.RatedPressure));
    }

    private static void Lines(List<Caution> all, PowerReport report)
    {
        foreach (LineCheck check in report.Lines)
        {
            var u = new Given("u", check.Velocity, Dimension.Speed);
            if (check.Verdict == VelocityVerdict.Above)
                Danger(all, check.Line.Name + " is too small: the oil runs at {0}, " + (check.Line.Duty switch
                {
                    LineDuty.Suction => "and the pump may starve; keep a suction line",
                    LineDuty.Return => "and presses back on the ram; keep a return line",
                    _ => "and heats; keep a pressure line",
                }) + " below {1}.", u, new Given("u", VelocityBand.Of(check.Line.Duty).Most, Dimension.Speed));
            if (check.Line is { BendRadius: { } bend, LeastBend: { } least } && bend < least)
                Danger(all, check.Line.Name + " is bent to {0}; its type may be bent no tighter than {1}. A kinked hose bursts at its bend.",
                    new Given("r", bend, Dimension.Length), new Given("r", least, Dimension.Length));
            foreach (RigLineEnd? end in (ReadOnlySpan<RigLineEnd?>)[check.Line.Inlet, check.Line.Outlet])
            {
                if (end is { Thread.Family: PortFamily.Npt, Port.Family: PortFamily.Npt } && check.Sees > PortMating.NptUpTo)
                    Danger(all, check.Line.Name + ": plain NPT is not trusted above {0} and sees {1}. Take NPTF, or a thread that an O-ring seals.",
                        P(PortMating.NptUpTo), P(check.Sees));
            }

            if (check.Line is { Duty: LineDuty.Return, Rating: { } rating } && !check.CarriesIt)
                Danger(all, "If " + check.Line.Name + " stands between valve and cylinder it sees the pump's {0} when the ram goes back; it is rated {1}.",
                    P(check.Sees), P(rating));
        }
    }

    private static void Label(List<Caution> all, PowerReport report)
    {
        if (report.Label is not { } label)
            return;
        if (label.LooksLikeAnotherTon)
            Unchecked(all, "The label's figure fits another ton: read as " + Word(label.FitsBest!.Value) + " it agrees with {0}, which is rated pressure times area; as written it says {1}.",
                F(label.AtRatedPressure), F(label.Stated));
        else if (label.Over > 0.03)
            Unchecked(all, "The label says {0}, rated pressure times area gives {1}.", F(label.Stated), F(label.AtRatedPressure));
    }

    private static void Stroke(List<Caution> all, PowerReport report)
    {
        if (!report.Oil.Enough)
            Danger(all, "The tank has {0} to give and a full stroke takes {1}: the ram stops after {2} and the pump draws air.",
                new Given("V", report.Oil.Usable, Dimension.Volume), new Given("V", report.Oil.FromTank, Dimension.Volume),
                new Given("s", report.Oil.Reach, Dimension.Length));
        if (report.Times.Pressing is null)
            Danger(all, "A load of {0} holds the ram: the pressing part of the stroke is never done.", F(report.Times.PressingForce));
    }

    private static void Always(List<Caution> all, PowerReport report)
    {
        if (report.TruePressure >= InjectsFrom)
            Handling(all, "At {0} a pinhole jet goes through gloves and skin. Never feel for a leak; let the pressure off first. Any such wound is for a surgeon at once.",
                P(report.TruePressure));
        if (report.LettingOff is { Slowly: true, LeastTime: { } t })
            Handling(all, "Let the pressure off slowly: {0} of oil come back, and the line carries them off in no less than {1}. A valve thrown open shocks hoses, seals and gauge: crack it, or fit a throttle.",
                new Given("V", report.Decompression, Dimension.Volume), new Given("t", t, Dimension.Time));
        foreach (HeatCase heat in report.Heat)
        {
            if (heat.ToWarm is { } warm)
                Handling(all, "The oil, " + heat.Where + ", is too warm for the pump's inlet ({1}) after {0} min: unload the pump, rest it, or fit a larger tank or a cooler.",
                    new Given("t", Math.Ceiling(warm / 60), Dimension.Number), new Given("T", OilHeat.Warmest, Dimension.Temperature));
        }

        Handling(all, "The oil alone holds {0} at full stroke and {1}: what breaks flies. Open valves slowly; keep air out.",
            new Given("E", report.OilEnergy, Dimension.Energy), P(report.TruePressure));
    }

    private static string Word(Ton ton) => ton switch
    {
        Ton.UsTon => "US tons",
        Ton.UkTon => "UK tons",
        _ => "tonnes",
    };

    private static Given P(double p) => new("p", p, Dimension.Pressure);

    private static Given F(double force) => new("F", force, Dimension.Force);

    private static void Danger(List<Caution> all, string words, params Given[] numbers) => all.Add(new Caution(CautionKind.Danger, new Remark(words, numbers)));

    private static void Unchecked(List<Caution> all, string words, params Given[] numbers) => all.Add(new Caution(CautionKind.Unchecked, new Remark(words, numbers)));

    private static void Handling(List<Caution> all, string words, params Given[] numbers) => all.Add(new Caution(CautionKind.Handling, new Remark(words, numbers)));
}
