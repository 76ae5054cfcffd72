using Ramwright.Frame;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>The whole answer about a press: what it will really do, and its ladder.</summary>
public sealed class PressCheck
{
    private PressCheck(Rig rig, PowerReport power, FrameResponse response, Ladder ladder)
    {
        (Rig, Power, Response, Ladder) = (rig, power, response, ladder);
        AgainstWanted = ladder.Against(rig.Wanted);
        AgainstMostPossible = ladder.Surviving(power.MostPossibleForce);
        WorstOpening = response.WorstOpening();
        SnapThrough = SnapThrough.Of(power, response.DaylightGrowth, rig.Cylinder);
        SqueezesUntilInspection = FatigueLife.Least(ladder.Rungs);
    }

    /// <summary>The press.</summary>
    public Rig Rig { get; }
    /// <summary>What the hydraulics will really do.</summary>
    public PowerReport Power { get; }
    /// <summary>How the frame answers one newton.</summary>
    public FrameResponse Response { get; }
    /// <summary>Every limit, the lowest first.</summary>
    public Ladder Ladder { get; }
    /// <summary>How it stands against the wanted force.</summary>
    public Verdict AgainstWanted { get; }
    /// <summary>How what can break stands against the most the pump can give.</summary>
    public Verdict AgainstMostPossible { get; }
    /// <summary>The gauge against the pressure of the true force; null where no gauge is stated.</summary>
    public GaugeCheck? Gauge => Rig.Gauge is { } gauge ? GaugeCheck.Of(gauge, Power.TruePressure) : null;
    /// <summary>What a raised ram does when air, electricity or a hose is lost.</summary>
    public IReadOnlyList<PowerFailure> PowerFailing => Ramwright.Power.PowerFailing.Of(Rig, Power);
    /// <summary>The worse of the two.</summary>
    public Verdict Verdict => AgainstWanted > AgainstMostPossible ? AgainstWanted : AgainstMostPossible;
    /// <summary>Whether the safe rating reaches the wanted force.</summary>
    public bool MeetsWanted => Ladder.SafeRating >= Rig.Wanted * (1 - 1e-9);
    /// <summary>How much the daylight grows at the wanted force, m.</summary>
    public double DaylightGrowth => Rig.Wanted * Response.DaylightGrowth;
    /// <summary>The case that opens the dies most, and how far for one newton.</summary>
    public (int Case, double Opening) WorstOpening { get; }
    /// <summary>How far the dies open out of parallel at the wanted force in the worst case, m/m.</summary>
    public double Opening => Rig.Wanted * WorstOpening.Opening;

    /// <summary>What is let go when the work gives way at the most the pump can give.</summary>
    public SnapThrough SnapThrough { get; }
    /// <summary>The detail that is to be looked at for cracks first, squeezing at the wanted force; null where nothing is squeezed.</summary>
    public FatigueLife? SqueezesUntilInspection { get; }

    /// <summary>The cautions that belong to this press, in the reader's units.</summary>
    public IReadOnlyList<string> Cautions(UnitSystem units = UnitSystem.Metric) => [.. CautionList.Of(this, units).Select(c => c.Text)];

    /// <summary>The same with how soon each must be heard, the soonest first.</summary>
    public IReadOnlyList<(CautionKind Kind, string Text)> CautionsByKind(UnitSystem units = UnitSystem.Metric) =>
        [.. CautionList.Of(this, units).OrderBy(c => c.Kind)];

    /// <summary>Everything that was assumed because the file does not say it.</summary>
    public IReadOnlyList<Assumed> Assumed => [.. Rig.Assumed, .. Power.Assumptions];

    /// <summary>The allowed force against how far off centre the work stands; worked out where it is asked for.</summary>
    /// <param name="units">What its steps are round in.</param>
    public OffCentre OffCentre(UnitSystem units = UnitSystem.Metric) => Ladders.OffCentre.Of(this, units);

    /// <summary>The same press with its work set otherwise; what the setting does not touch is not worked out again.</summary>
    /// <param name="loading">How squarely the work is pressed.</param>
    public PressCheck Loaded(RigLoading loading)
    {
        Rig rig = Rig with { Loading = loading };
        return Of(rig, Power, FrameResponse.Of(FramePlan.Of(rig), Response));
    }

    /// <summary>Checks a press.</summary>
    /// <exception cref="FrameMovesException">The frame could move freely.</exception>
    /// <exception cref="PressFaultsException">Its parts do not go together.</exception>
    public static PressCheck Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Of(rig, Study(rig), FrameResponse.Of(FramePlan.Of(rig)));
    }

    private static PowerReport Study(Rig rig)
    {
        try
        {
            return PowerStudy.Of(rig.Cylinder, rig.Pump, rig.Lines, rig.Oil, new PressStroke(rig.Loading.PressingPart, rig.Loading.PressingForce, rig.Wanted));
        }
        catch (ArgumentOutOfRangeException cannot)
        {
            // each value alone may be; together they push nothing, or so slowly that no figure says it
            string path = cannot.ParamName == "cylinder" ? "cylinder" : "pump";
            throw new PressFaultsException([new Fault(path, cannot.Message.Split(" (Parameter", 2)[0].TrimEnd('.'), "pump, cylinder and spring that go together")]);
        }
    }

    private static PressCheck Of(Rig rig, PowerReport power, FrameResponse response)
    {
        if (!(response.DaylightGrowth > 0))
            throw new PressFaultsException([new Fault("frame", "the frame is so short and stout that no give is left to reckon with", "the sizes of a press, with their units")]);
        var rungs = new List<Rung>();
        PowerRungs.Add(rungs, rig, power);
        CylinderRungs.Add(rungs, rig, power);
        MountRungs.Add(rungs, rig, power);
        RamRungs.Add(rungs, rig);
        PullRungs.Add(rungs, rig);
        MemberRungs.Add(rungs, rig, response);
        PressedRungs.Add(rungs, rig, response);
        CornerRungs.Add(rungs, rig, response);
        PanelRungs.Add(rungs, rig, response);
        JointRungs.Add(rungs, rig, response);
        GussetRungs.Add(rungs, rig, response);
        EndPlateRungs.Add(rungs, rig, response);
        TieRodRungs.Add(rungs, rig, response);
        RodNutRungs.Add(rungs, rig, response);
        StiffnessRungs.Add(rungs, rig, response);
        FatigueRungs.Add(rungs, rig, response);
        BedHeightRungs.Add(rungs, rig, response);
        return new PressCheck(rig, power, response, Ladder.Of(rungs));
    }
}
