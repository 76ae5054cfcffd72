using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// The two beams that most presses have, one above the other, with the loads of one newton at the ram on them. What joins their ends
/// is for the kind of frame to add.
/// </summary>
internal sealed class CrownAndBed
{
    private readonly PlanBuilder _plan;
    private readonly RigMember _crown, _bed;
    private readonly double _half, _off, _crownArm, _bedArm;

    /// <summary>Lays nodes and beams.</summary>
    /// <param name="plan">Where they go.</param>
    /// <param name="crown">The upper beam.</param>
    /// <param name="bed">The lower beam.</param>
    /// <param name="half">Half of their length between the centre lines of what holds their ends, m.</param>
    /// <param name="crownEnd">Hold of the crown's ends.</param>
    /// <param name="bedEnd">Hold of the bed's ends.</param>
    /// <param name="rig">The press.</param>
    /// <param name="crownArm">How far from the centre line the crown's beam ends, m.</param>
    /// <param name="bedArm">How far from the centre line the bed's beam ends, m.</param>
    public CrownAndBed(
        PlanBuilder plan, RigMember crown, RigMember bed, double half, EndFixity crownEnd, EndFixity bedEnd, Rig rig, double crownArm = 0, double bedArm = 0)
    {
        (_crownArm, _bedArm) = (crownArm, bedArm);
        (_plan, _crown, _bed, _half) = (plan, crown, bed, half);
        SectionProperties c = crown.Shape.Properties, b = bed.Shape.Properties;
        double height = b.Top + rig.Frame.Daylight + rig.Frame.RamDrop + c.Bottom;
        _off = Math.Min(rig.Loading.Across, 0.95 * (half - bedArm));
        bool split = _off > 0;

        string above = FrameWords.Crown(rig.Frame), below = FrameWords.Bed(rig.Frame);
        BedLeftEnd = plan.Node($"{below}, left end", new Vector(-half, 0, 0));
        BedMid = plan.Node($"{below}, under the ram", Vector.Zero);
        BedRightEnd = plan.Node($"{below}, right end", new Vector(half, 0, 0));
        CrownLeftEnd = plan.Node($"{above}, left end", new Vector(-half, 0, height));
        CrownMid = plan.Node($"{above}, above the ram", new Vector(0, 0, height));
        CrownRightEnd = plan.Node($"{above}, right end", new Vector(half, 0, height));
        int bedAside = split ? plan.Node($"{below}, under off-centre work", new Vector(_off, 0, 0)) : BedMid;

        var across = new Twist(2 * half, Cantilever: false);
        CrownLeft = plan.Beam(crown, CrownLeftEnd, CrownMid, Vector.Up, across, start: crownArm * Vector.Across, holdStart: crownEnd, giving: true);
        CrownRight = plan.Beam(crown, CrownMid, CrownRightEnd, Vector.Up, across, end: -crownArm * Vector.Across, holdEnd: crownEnd, giving: true);
        BedLeft = plan.Beam(bed, BedLeftEnd, BedMid, Vector.Up, across, start: bedArm * Vector.Across, holdStart: bedEnd, giving: true);
        BedMiddle = split ? plan.Beam(bed, BedMid, bedAside, Vector.Up, across) : [];
        BedRight = plan.Beam(bed, bedAside, BedRightEnd, Vector.Up, across, end: -bedArm * Vector.Across, holdEnd: bedEnd, giving: true);
        (Height, AboveBed, BelowCrown, BedAside) = (height, b.Top, height - c.Bottom, bedAside);
    }

    public int BedLeftEnd { get; }
    public int BedMid { get; }
    public int BedRightEnd { get; }
    public int BedAside { get; }
    public int CrownLeftEnd { get; }
    public int CrownMid { get; }
    public int CrownRightEnd { get; }
    public int[] CrownLeft { get; }
    public int[] CrownRight { get; }
    public int[] BedLeft { get; }
    public int[] BedMiddle { get; }
    public int[] BedRight { get; }

    /// <summary>From the bed's centre line to the crown's, m.</summary>
    public double Height { get; }
    /// <summary>From the bed's centre line to its upper face, m.</summary>
    public double AboveBed { get; }
    /// <summary>From the bed's centre line to the crown's lower face, m.</summary>
    public double BelowCrown { get; }
    /// <summary>How far the bed's right-hand stretch is from the ram's centre line, m.</summary>
    public double Aside => _off;

    /// <summary>Everything that must be held so that the frame stays in place.</summary>
    public Support Foot => new(BedMid, true, true, true, true, true, true);

    /// <summary>The load cases.</summary>
    public LoadCase[] Cases(Rig rig)
    {
        double contact = Math.Max(AboveBed, BelowCrown - rig.Frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(new Vector(0, 0, Height), Vector.Zero, new Vector(0, 0, contact));
        var die = new DieSpread(_half - Math.Max(_crownArm, _bedArm), rig.Frame.DieWidth);
        bool split = _off > 0;
        Stretch[] onCrown = [new(CrownLeft, _crownArm - _half, 0), new(CrownRight, 0, _half - _crownArm)];
        Stretch[] onBed = split
            ? [new(BedLeft, _bedArm - _half, 0), new(BedMiddle, 0, _off), new(BedRight, _off, _half - _bedArm)]
            : [new(BedLeft, _bedArm - _half, 0), new(BedRight, 0, _half - _bedArm)];

        return [.. loads.Cases(rig.Loading).Select(Case)];

        LoadCase Case(UnitLoads.Pair pair)
        {
            // work off to one side presses on the bed there, not at the middle
            bool aside = pair.Off.X > 0 && split;
            Vector moment = aside ? pair.LowerMoment - (_off * Vector.Across).Cross(pair.LowerForce) : pair.LowerMoment;
            var onNodes = new List<NodalLoad>();
            var onBeams = new List<MemberLoad>();
            die.Lay(pair.UpperForce, pair.UpperMoment, 0, CrownMid, onCrown, onNodes, onBeams);
            die.Lay(pair.LowerForce, moment, aside ? _off : 0, aside ? BedAside : BedMid, onBed, onNodes, onBeams);
            return new LoadCase(pair.Name, onNodes, onBeams);
        }
    }

    /// <summary>The crown and where it is looked at.</summary>
    /// <param name="face">Where its clear span starts, m from the end.</param>
    /// <param name="there">What stands there: <c>at the upright</c>.</param>
    public PlanPart Crown(double face, string there) => new(_crown, [.. CrownLeft, .. CrownRight], 2 * _half,
    [
        .. _plan.At(CrownLeft, face, there, PlanCut.Joint, false),
        .. _plan.At(CrownLeft, _half, "under the cylinder", PlanCut.Openings, true),
        .. _plan.At(CrownRight, 0, "under the cylinder", PlanCut.Openings, true),
        .. _plan.At(CrownRight, _half - face, there, PlanCut.Joint, false),
    ]);

    /// <summary>The bed and where it is looked at.</summary>
    /// <inheritdoc cref="Crown"/>
    public PlanPart Bed(double face, string there)
    {
        var stations = new List<PlanStation>(
        [
            .. _plan.At(BedLeft, face, there, PlanCut.Joint, false),
            .. _plan.At(BedLeft, _half, "under the work", PlanCut.Openings, true),
            .. _plan.At(BedRight, _half - _off - face, there, PlanCut.Joint, false),
            .. _plan.At(BedRight, 0, "under the work", PlanCut.Openings, true),
        ]);
        if (_off > 0)
        {
            stations.AddRange(_plan.At(BedMiddle, 0, "under the work", PlanCut.Openings, true));
            stations.AddRange(_plan.At(BedMiddle, _off, "under the work", PlanCut.Openings, true));
        }

        return new PlanPart(_bed, [.. BedLeft, .. BedMiddle, .. BedRight], 2 * _half, stations);
    }
}
