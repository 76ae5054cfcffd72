using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication;

/// <summary>What the work stands on and what the dies are held by: bolster, die shoes, keepers.</summary>
internal static class DieParts
{
    /// <summary>A bed narrower than this carries no die by itself, m; common practice.</summary>
    private const double Narrow = 0.08;

    public static void Draw(PartDraft draft)
    {
        Bolster(draft);
        if (!draft.WorksBetweenDies)
            return;
        if (!(draft.Rig.Frame.DieWidth > 0))
        {
            draft.Undecided("Die shoes and keepers: the file gives no die-width under frame.");
            return;
        }

        Shoes(draft);
    }

    private static RigMember? Bed(RigFrame frame) => frame switch
    {
        RigClosedFrame closed => closed.Bed,
        RigOpenFrontFrame open => open.LowerArm,
        RigTieRodFrame rods => rods.Bed,
        _ => null,
    };

    private static void Bolster(PartDraft draft)
    {
        RigFrame frame = draft.Rig.Frame;
        if (Bed(frame) is not { } bed)
            return;
        double across = Math.Max(bed.Shape.Properties.Width, frame.DieDepth);
        Vector at = draft.Body.WorkFace;
        if (frame.Bolster is { } said)
        {
            draft.Add(new PlatePart
            {
                Name = "bolster",
                Of = "bolster",
                Count = 1,
                Steel = said.Steel,
                Thickness = said.Thickness,
                Blank = PlateShape.Rectangle(said.Along, across),
                Rule = "as wide from front to back as what it lies on, or as the dies where they are deeper",
                Places = [at + said.Thickness / 2 * Vector.Up],
            });
            return;
        }

        double gap = bed.Shape is Pair pair ? pair.Apart : 0;
        if (frame is RigTieRodFrame || (gap <= 0 && bed.Shape.Properties.Width >= Narrow))
            return;

        // a bridge over the gap, or an overhang on both sides of a narrow bed: the middle of it carries F l/4 or F l/8
        double span = gap > 0 ? gap : Math.Max(Math.Max(frame.DieDepth, frame.DieWidth), 0.1);
        double along = Math.Max(frame.DieWidth, span / 2) + span;
        double needs = Needs(null);
        double t = draft.Sold.Plates.FirstOrDefault(s => s >= needs);
        if (t == 0)
        {
            draft.Undecided($"The bolster: a plain plate would have to be {Readout.Text(needs, Dimension.Length, draft.Units)} thick to carry the wanted force over {Readout.Text(span, Dimension.Length, draft.Units)}; say bolster under frame.");
            return;
        }

        draft.Add(new PlatePart
        {
            Name = "bolster",
            Of = "bolster",
            Count = 1,
            Steel = bed.Steel,
            Thickness = t,
            Blank = PlateShape.Rectangle(along, gap > 0 ? across : span),
            Origin = PartOrigin.Proposed,
            Rule = $"plate bent as a beam by the wanted force in the middle of {Readout.Text(span, Dimension.Length, draft.Units)}{(gap > 0 ? "" : ", half of it on either side of the narrow bed")}, "
                + $"{Readout.Text(along, Dimension.Length, draft.Units)} of it counted: at least {Readout.Text(needs, Dimension.Length, draft.Units)} thick in {bed.Steel.Name}; say bolster under frame to have it checked",
            Places = [at + t / 2 * Vector.Up],
            Work = w => Needs(w),
        });

        double Needs(Working? w)
        {
            double moment = gap > 0 ? PlateSize.InTheMiddle(draft.Rig.Wanted, span, w) : PlateSize.OverNarrow(draft.Rig.Wanted, span, w);
            return PlateSize.Thickness(moment, along, bed.Steel.Fy(0.04), draft.Rig.Factors.Load, w);
        }
    }

    private static void Shoes(PartDraft draft)
    {
        Rig rig = draft.Rig;
        double die = rig.Frame.DieWidth, deep = rig.Frame.DieDepth > 0 ? rig.Frame.DieDepth : die;
        (double shoe, double keeperWide, double keeperThick, double play) = draft.Sold.Keeper;
        double wide = die + 2 * (keeperWide + play), row = die / 2 + play + keeperWide / 2;
        Steel? steel = rig.Cylinder.Mount?.Steel ?? Bed(rig.Frame)?.Steel;
        (ScrewThread thread, double clear, _) = draft.Sold.KeeperScrew;
        string screw = $"keeper screw {thread.Name}";
        PlateHole[] taps =
        [
            .. PlateShape.Grid((2, 2 * row), (2, deep / 2), thread.D - thread.P, screw).Select(h => h with { Thread = thread, MarkOnly = true }),
        ];
        var middle = rig.Ram?.DieHolder?.Screws is { } screws
            ? new PlateHole(0, 0, ScrewThread.UsualHole(screws.Thread.D), $"screw {screws.Thread.Name} into the ram")
            : null;
        string Said(double si) => Readout.Text(si, Dimension.Length, draft.Units);
        string rule = $"a die stands in a shoe {Said(shoe)} thick between two keepers, {Said(play)} of play on either side, each held by two screws {thread.Name}; common practice, not checked in the ladder";
        Add("upper die shoe", middle is { } m && rig.Ram!.DieHolder!.Screws!.Count == 1 ? [.. taps, m] : taps, draft.Body.RamFace);
        Add("lower die shoe", taps, draft.Body.WorkFace);
        if (rig.Ram?.DieHolder?.Screws is { Count: > 1 })
            draft.Undecided("Where the screws of the die holder stand: the file gives how many, not their circle.");
        draft.Undecided("How the lower die shoe is held on the bed: clamped, pinned or bolted.");
        draft.Add(new LengthPart
        {
            Name = "keeper",
            Of = "dies",
            Count = 4,
            Steel = steel,
            Section = TradeSizes.FlatOf(keeperWide, keeperThick, draft.Units),
            Length = deep,
            Holes = [new LengthHole(deep / 4, 0, "flat", clear, 0, keeperThick, screw), new LengthHole(3 * deep / 4, 0, "flat", clear, 0, keeperThick, screw)],
            Origin = PartOrigin.Proposed,
            Rule = rule,
        });

        void Add(string name, PlateHole[] holes, Vector at) => draft.Add(new PlatePart
        {
            Name = name,
            Of = "dies",
            Count = 1,
            Steel = steel,
            Thickness = shoe,
            Blank = PlateShape.Rectangle(wide, deep),
            Holes = holes,
            Origin = PartOrigin.Proposed,
            Rule = rule,
            Places = [at],
        });
    }
}
