using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication;

/// <summary>The arm that keeps the ram from turning, its rollers and its guide, sized for the torque.</summary>
/// <remarks>
/// The torque over the arm's length is the push on the guide. Arm and guide are taken as flats that must not yield under it with the
/// press's own load factor, the guide as a beam on its two ends with the push in its middle.
/// </remarks>
internal static class AntiTwistParts
{
    /// <summary>Thickness whose strength is taken, m.</summary>
    private const double Usual = 0.02;

    public static void Draw(PartDraft draft)
    {
        Rig rig = draft.Rig;
        if (rig.Ram?.AntiTwist is { } said)
        {
            Draw(draft, said.Length, said.Depth, said.Height, said.Steel, said.Twist, said.GuideDepth > 0 ? (said.GuideWidth, said.GuideDepth, said.GuideSpan) : null, PartOrigin.Described, "");
            return;
        }

        if (!draft.WorksBetweenDies)
            return;
        Steel? steel = rig.Cylinder.Mount?.Steel;
        if (steel is null)
        {
            draft.Undecided("What keeps the ram from turning: the file has no anti-twist under ram.");
            return;
        }

        (double past, double height, _) = draft.Sold.Arm;
        double twist = rig.Loading.SideLoad * Math.Max(rig.Loading.Across, rig.Loading.Deep), length = rig.Cylinder.Rod / 2 + past;
        double needs = ArmDepth(rig, twist, length, height, steel, null);
        if (draft.Sold.Flats.FirstOrDefault(f => f >= needs) is not (> 0 and { } depth))
        {
            draft.Undecided($"What keeps the ram from turning: the torque of {Readout.Text(twist * rig.Wanted, Dimension.Moment, draft.Units)} asks for more than a flat bar.");
            return;
        }

        Draw(draft, length, depth, height, steel, twist, null, PartOrigin.Proposed,
            $"a roller {Readout.Text(past, Dimension.Length, draft.Units)} past the ram's surface; the side load acting as far off centre as the work may stand gives the torque, {Readout.Text(twist * rig.Wanted, Dimension.Moment, draft.Units)}; "
                + $"depth of at least {Readout.Text(needs, Dimension.Length, draft.Units)}; say anti-twist under ram to have it checked");
    }

    private static void Draw(PartDraft draft, double length, double depth, double height, Steel steel, double twist, (double Wide, double Deep, double Span)? guide, PartOrigin origin, string rule)
    {
        Rig rig = draft.Rig;
        double push = PlateSize.Push(rig.Wanted, twist, length), rod = rig.Cylinder.Rod;
        draft.Add(new LengthPart
        {
            Name = "anti-twist arm",
            Of = "anti-twist arm",
            Count = 1,
            Steel = steel,
            Section = TradeSizes.FlatOf(height, depth, draft.Units),
            Length = length - rod / 2,
            Origin = origin,
            Rule = rule.Length > 0 ? rule : "from the ram's surface to the roller",
            Work = w => ArmDepth(rig, twist, length, height, steel, w),
            Notes = ["Never weld to the ram itself: weld the arm to a collar and clamp that on.", "Add what the roller's axle needs at the outer end."],
        });
        double outside = Math.Ceiling(1.6 * rod / draft.Sold.Step) * draft.Sold.Step;
        PlateHole[] bore = [new PlateHole(0, 0, rod, "the ram")];
        draft.Add(new PlatePart
        {
            Name = "collar of the anti-twist arm",
            Of = "anti-twist arm",
            Count = 1,
            Steel = steel,
            Thickness = height,
            Blank = PlateShape.Disc(outside),
            Holes = bore,
            Origin = PartOrigin.Proposed,
            Rule = "a ring 1.6 times the ram wide and as high as the arm, to be split and drawn together by two screws; common practice",
            Notes = ["Bore it to the ram you have before it is split."],
        });
        draft.Add(new BoughtPart
        {
            Name = "roller of the anti-twist arm",
            Of = "anti-twist arm",
            Count = 2,
            Ask = $"track roller or cam follower, static load rating at least {Readout.Text(Math.Max(rig.Factors.Load * push, 1000), Dimension.Force, draft.Units)}",
            Rule = $"one on either side of the guide: each alone takes the whole push of {Readout.Text(push, Dimension.Force, draft.Units)} times the load factor",
            Origin = PartOrigin.Proposed,
        });
        (_, double guideWide, double ends) = draft.Sold.Arm;
        double span = rig.Cylinder.Stroke + 2 * ends;
        string guideRule = "as the file says";
        PartOrigin from = PartOrigin.Described;
        if (guide is null)
        {
            double needs = GuideDepth(rig, push, span, guideWide, steel, null);
            if (draft.Sold.Flats.FirstOrDefault(f => f >= needs) is not (> 0 and { } deep))
            {
                draft.Undecided("The guide of the anti-twist arm: a flat bar between two fixings is too weak for it; hold it in the middle as well.");
                return;
            }

            guide = (guideWide, deep, span);
            guideRule = $"the stroke and {Readout.Text(ends, Dimension.Length, draft.Units)} at either end; at least {Readout.Text(needs, Dimension.Length, draft.Units)} deep where the roller pushes it in the middle; common practice";
            from = PartOrigin.Proposed;
        }

        (double wide, double d, double free) = guide.Value;
        draft.Add(new LengthPart
        {
            Name = "guide of the anti-twist arm",
            Of = "anti-twist arm",
            Count = 1,
            Steel = steel,
            Section = TradeSizes.FlatOf(wide, d, draft.Units),
            Length = free + 2 * ends,
            Origin = from,
            Rule = $"{guideRule}; {Readout.Text(ends, Dimension.Length, draft.Units)} at either end to fix it by",
            Work = w => GuideDepth(rig, PlateSize.Push(rig.Wanted, twist, length, w), free, wide, steel, w),
        });
    }

    private static double ArmDepth(Rig rig, double twist, double length, double height, Steel steel, Working? w) => PlateSize.Thickness(
        PlateSize.AtTheRam(PlateSize.Push(rig.Wanted, twist, length, w), length, rig.Cylinder.Rod / 2, w), height, steel.Fy(Usual), rig.Factors.Load, w);

    private static double GuideDepth(Rig rig, double push, double span, double wide, Steel steel, Working? w) =>
        PlateSize.Thickness(PlateSize.InTheMiddle(push, span, w), wide, steel.Fy(Usual), rig.Factors.Load, w);
}
