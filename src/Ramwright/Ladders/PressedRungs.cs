using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What happens right under the cylinder and under the dies: webs crushed, faces dented, plates bent over the gap of a pair.</summary>
internal static class PressedRungs
{
    private static readonly Citation Statics = Citation.Mechanics("stress of a straight beam");

    /// <summary>A place where the ram force comes onto a part.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Where">In words.</param>
    /// <param name="Along">Length of the bearing along the part, m; 0 where not known.</param>
    /// <param name="Across">Width across it, m.</param>
    /// <param name="End">From the force to the free end of the part, m; infinity between uprights.</param>
    private readonly record struct Bearing(string Part, string Where, double Along, double Across, double End);

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        foreach (Bearing bearing in Bearings(rig))
        {
            PlanPart part = response.Plan.Parts.First(p => p.Member.Part == bearing.Part);
            Web(rungs, rig, response, part, bearing, factors);
        }

        foreach ((string id, string name, string path, RigMember over, double? thickness, double l, double across, double along, Steel steel) in Plates(rig))
        {
            if (thickness is not { } t)
                continue;
            double span = BetweenWebs(over), fy = steel.Fy(t);
            if (SpanningPlate.Yields(span, l, t, across, along, fy, factors) is not { } limit)
                continue;
            new Worst(limit, "", "centred", w =>
            {
                w.Note($"The {name} spans the gap of the {over.Part}, from web to web ({path}).");
                SpanningPlate.Yields(span, l, t, across, along, fy, factors, w);
            }).Into(rungs, new Words(id, name, $"bends over the gap of the {over.Part}", $"bends over the gap of the {over.Part}"), RungGroup.Frame,
                Factoring.Load(rig), SpanningPlate.Source);
        }
    }

    /// <summary>What would have to be said for these checks to be complete.</summary>
    public static IEnumerable<string> Missing(Rig rig, UnitSystem units)
    {
        foreach ((_, string name, string path, RigMember over, double? thickness, double l, double across, double along, Steel steel) in Plates(rig))
        {
            if (thickness is not null || !(l > 0))
                continue;
            double span = BetweenWebs(over);
            double t = SpanningPlate.Thickness(rig.Wanted * rig.Factors.Load, span, across, SpanningPlate.Carrying(l, along, span), steel.Fy(0.04));
            yield return $"Nothing is said of the {name} that spans the gap of the {over.Part}, and it is not on the ladder ({path}). "
                + $"For the wanted force about {Readout.Text(t, Dimension.Length, units, 2)} of plain steel is needed.";
        }

        foreach (RigMember member in Bearings(rig).Select(b => Members(rig).First(m => m.Part == b.Part)))
        {
            if (member.Shape.Strands[0].Shape is CircularHollow or Turned or Angle or Tee)
                yield return $"How the wall of the {member.Part} ({member.Shape.Name}) takes the force where it is pressed is not checked: weld a stiff saddle to it.";
        }
    }

    private static void Web(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanPart part, Bearing bearing, PartialFactors factors)
    {
        RigMember member = part.Member;
        Shape strand = member.Shape.Strands[0].Shape;
        SectionProperties s = strand.Properties;
        string id = Rung.IdOf(member.Part);
        var runs = new StrandRuns(response, part);
        double fy = member.Fy;
        PlanStation[] there = double.IsInfinity(bearing.End)
            ? [.. part.Stations.Where(p => p.Cut == PlanCut.Openings)]
            : [.. part.Stations.Select(p => p with { X = response.Solutions[0].Length(p.Beam), Where = "" })];

        var places = Places.Of(response, there);
        void Add(string suffix, string what, Citation source, Func<double, Actions, Working?, Limit?> check, string? factor = null) =>
            (Worst.Case(places, (solution, station, a, w) => check(runs.Force(solution, station), a, w)) is { } worst ? worst with { Where = bearing.Where } : null)
                ?.Into(rungs, new Words($"{id}-{suffix}", member.Part, what, what), RungGroup.Frame, factor ?? Factoring.Load(rig), source);

        switch (strand)
        {
            case ISection i:
                Open(new PressedBeam(i.H, i.B, i.Tw, i.Tf, fy, fy), 1, (i.B - i.Tw) / 2, true);
                break;
            case Channel c:
                Open(new PressedBeam(c.H, c.B, c.Tw, c.Tf, fy, fy), 1, c.B - c.Tw, false);
                break;
            case Box b:
                Open(new PressedBeam(b.H, b.B / 2, b.Tw, b.Tf, fy, fy), 2, (b.B - 2 * b.Tw) / 2, false);
                break;
            case RectangularHollow r:
                Add("face", "is dented or crushed", HollowCrushing.Source, (f, a, w) => f < 1 / Limit.Farthest ? null
                    : HollowCrushing.Crushes(r, bearing.Along, bearing.Across, fy, f, Bent(a, w), factors, w));
                break;
            case Flat flat when bearing.Along > 0:
                Add("edge", "is crushed at its edge", Contact.Source, (f, _, w) =>
                {
                    if (f < 1 / Limit.Farthest)
                        return null;
                    w?.Step("A", "area that bears", "t s_s", flat.T * bearing.Along, Dimension.Area, Statics,
                        ("t", flat.T, Dimension.Length), ("s_s", bearing.Along, Dimension.Length));
                    return Contact.PadYields(f, flat.T * bearing.Along, fy, factors, w);
                });
                break;
        }

        double Bent(Actions a, Working? w)
        {
            double eta1 = Math.Abs(a.N) / (s.A * fy) + Math.Abs(a.My) / (s.Wely * fy) + Math.Abs(a.Mz) / (s.Welz * fy);
            w?.Step("η_1", "share of the yield strength used by bending and push there, per newton",
                "abs(N) / (A f_y) + abs(M_y) / (W_ely f_y) + abs(M_z) / (W_elz f_y)", eta1, Dimension.Number, Statics,
                ("N", a.N, Dimension.Force), ("A", s.A, Dimension.Area), ("f_y", fy, Dimension.Stress), ("M_y", a.My, Dimension.Moment),
                ("W_ely", s.Wely, Dimension.SectionModulus), ("M_z", a.Mz, Dimension.Moment), ("W_elz", s.Welz, Dimension.SectionModulus));
            return eta1;
        }

        void Open(PressedBeam beam, int webs, double outstand, bool bothSides)
        {
            bool inside = double.IsInfinity(bearing.End);
            double past = inside ? 0 : Math.Max(0, bearing.End - bearing.Along / 2);
            double Plain(Working? w) => inside ? WebCrushing.Inside(beam, bearing.Along, null, w) : WebCrushing.AtEnd(beam, bearing.Along, past, w);
            double plain = Plain(null);
            WebPlate? plate = WebPlate.In(strand);
            RigWeld? fillet = plate is not null && member.StiffenerWeld is { Kind: WeldKind.Fillet } said ? said : null;
            double Welds(Working? w) => StiffenerWeld.Resistance(plate!, fillet!.Throat, member.Fu, member.Steel.BetaW ?? 1, w);
            double? plates = fillet is null || Welds(null) > 0 ? member.Stiffened : null;
            Add("web", plates is not null ? "is crushed in its stiffened web" : "is crushed in its web", plates is not null ? StiffenedWeb.Source : WebCrushing.Source, (f, a, w) =>
            {
                if (f < 1 / Limit.Farthest)
                    return null;
                double R = plates is { } ts ? StiffenedWeb.Resistance(beam, ts, outstand, bothSides, plain, w) : plain;
                if (w is not null && fillet is not null && plates is null)
                    Welds(w);
                if (w is not null && R == plain)
                    Plain(w);
                if (webs > 1)
                    w?.Note("Each of the two webs takes half.");
                return WebCrushing.Crushes(f / webs, R, Bent(a, w), factors, w);
            });
            if (fillet is null || plates is not { } thick || StiffenedWeb.Resistance(beam, thick, outstand, bothSides, plain) <= plain)
                return;
            Add("plates-weld", "tears at the plates beside its web", StiffenerWeld.Difference, (f, _, w) =>
            {
                if (w is not null)
                {
                    w.Take("F_bare", "what the web stands without the plates", plain, Dimension.Force, WebCrushing.Source);
                    Welds(w);
                }

                return StiffenerWeld.Tears(f, plain, factors.M1, Welds(null), factors, w);
            }, Factoring.Break(rig));
        }
    }

    private static IEnumerable<RigMember> Members(Rig rig) => rig.Frame switch
    {
        RigClosedFrame c => [c.Crown, c.Bed],
        RigTieRodFrame { CrownPlate: null, BedPlate: null } t => [t.Crown, t.Bed],
        RigOpenFrontFrame o => [o.UpperArm, o.LowerArm],
        _ => [],
    };

    /// <summary>A plate spreads a force at 45° through its thickness.</summary>
    private static IEnumerable<Bearing> Bearings(Rig rig)
    {
        RigFrame frame = rig.Frame;
        (string? upper, string? lower, double die, double across, double end) = frame switch
        {
            RigClosedFrame c => (c.Crown.Part, c.Bed.Part, c.DieWidth, c.DieDepth, double.PositiveInfinity),
            RigTieRodFrame { CrownPlate: null, BedPlate: null } t => (t.Crown.Part, t.Bed.Part, t.DieWidth, t.DieDepth, double.PositiveInfinity),
            RigOpenFrontFrame o => (o.UpperArm.Part, o.LowerArm.Part, o.DieDepth, o.DieWidth, o.ArmReach - o.Throat),
            _ => (null, null, 0.0, 0.0, 0.0),
        };
        if (upper is not null && rig.Cylinder.Foot is { } foot)
            yield return new Bearing(upper, "under the cylinder", Math.Min(foot.Along, foot.Loaded + 2 * (foot.Thickness ?? 0)), foot.Across, end);
        if (lower is not null)
        {
            yield return frame.Bolster is { } b
                ? new Bearing(lower, "under the bolster", Math.Min(b.Along, die + 2 * b.Thickness), across + 2 * b.Thickness, end)
                : new Bearing(lower, "under the dies", die, across, end);
        }
    }

    /// <summary>Plates that must span the gap of a pair, said or not.</summary>
    private static IEnumerable<(string Id, string Name, string Path, RigMember Over, double? Thickness, double Length, double Across, double Along, Steel Steel)> Plates(Rig rig)
    {
        RigMember[] members = [.. Members(rig)];
        if (members.Length == 0 || rig.Cylinder.Foot is not { } foot)
            yield break;
        if (Gaps(members[0]))
            yield return ("foot-plate", "plate under the cylinder", "cylinder.foot.thickness", members[0], foot.Thickness, foot.Along, foot.Loaded, foot.Loaded, foot.Steel);
        if (!Gaps(members[1]))
            yield break;
        (double along, double across) = rig.Frame is not RigOpenFrontFrame ? (rig.Frame.DieWidth, rig.Frame.DieDepth) : (rig.Frame.DieDepth, rig.Frame.DieWidth);
        RigBolster? bolster = rig.Frame.Bolster;
        yield return ("bolster", "bolster", "frame.bolster.thickness", members[1], bolster?.Thickness, bolster?.Along ?? along, across, along, bolster?.Steel ?? foot.Steel);
    }

    private static bool Gaps(RigMember member) => member.Shape is Pair { Apart: > 0 };

    /// <summary>Between the middles of the two webs of a pair, m.</summary>
    internal static double BetweenWebs(RigMember member)
    {
        var pair = (Pair)member.Shape;
        return pair.Half switch
        {
            Channel c => pair.Apart + (pair.ToesTogether ? 2 * c.B - c.Tw : c.Tw),
            Shape half => pair.Apart + half.Properties.Width,
        };
    }
}
