using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>The springs at a joint of two members, found from what both are made of.</summary>
/// <param name="Beam">At the end of the beam or arm, where it meets the face of the upright or column.</param>
/// <param name="Upright">At the end of the upright or column, where it meets the edge of the beam or arm.</param>
internal readonly record struct JointSprings(EndFixity Beam, EndFixity Upright)
{
    // how near the opening by rule came to solids of frames made up at random, their columns and uprights ending flush with the arms and beams: docs/solids.md
    private const double Plain = 0.05, Boxes = 0.1, Clasped = 0.1, Bolted = 0.25, OpenFront = 0.2, Gusseted = 0.4;

    /// <summary>An end this much of the width between a box's webs hands its force to them and spares the face.</summary>
    private const double NearlyAsWide = 0.9;

    /// <summary>Webs that stand so many flange thicknesses beside each other no longer stand on one another.</summary>
    private const double FarBeside = 3;

    /// <summary>How near the opening of such frames came to solid models.</summary>
    public double Within { get; init; } = 0.05;

    private static readonly JointSprings Rigid = new(EndFixity.Rigid, EndFixity.Rigid);

    /// <summary>Said of frames whose springs do not come from the rules.</summary>
    public const string FromSolids = "The springs at the joints were found from solids of the joints themselves, and are kept beside the press file.";

    /// <summary>Those that were found from a solid.</summary>
    public static JointSprings? Of(RigSpring? spring) => spring is null ? null
        : new JointSprings(EndFixity.Rigid with { My = spring.Beam }, EndFixity.Rigid with { My = spring.Upright, N = spring.Along });

    /// <summary>At the corner of a closed frame; null where no rule is known, and for pins: then centre lines are taken.</summary>
    public static JointSprings? OfCorner(RigJoint joint, RigMember beam, RigMember upright)
    {
        if (joint is RigPinnedJoint || Walls.Of(beam.Shape) is not { } b || Walls.Of(upright.Shape) is not { } u)
            return null;
        if (joint.Fit == BeamFit.Between && BendsFace(beam.Shape, upright.Shape) || joint.Fit == BeamFit.Over && BendsFace(upright.Shape, beam.Shape))
            return null;
        double within = joint.Gusset is not null ? Gusseted : IsBox(beam.Shape) || IsBox(upright.Shape) ? Boxes : Plain;
        SectionProperties B = beam.Shape.Properties, U = upright.Shape.Properties;
        double zb = b.Between(B.Height), zu = u.Between(U.Height);
        switch (joint.Fit)
        {
            case BeamFit.Over:          // the beam's web is the panel and carries the upright's force up
                double panel = JointGive.Panel(b.Web, zb, zu);
                return new JointSprings(
                    EndFixity.Rigid with { My = panel, Vz = JointGive.Shear(B.Asz, U.Height, JointGive.ShearingOver) },
                    EndFixity.Rigid with { My = panel, N = JointGive.Stretch(b.Web * U.Height, B.Height) })
                { Within = within };
            case BeamFit.Lapped:        // both run on, tied over the whole lap
                panel = JointGive.Panel(b.Web + u.Web, zb, zu);
                return new JointSprings(
                    EndFixity.Rigid with { My = panel, Vz = JointGive.Shear(B.Asz, U.Height, JointGive.ShearingLapped) },
                    EndFixity.Rigid with { My = panel, N = JointGive.Stretch(U.A, B.Height) })
                { Within = joint is RigBoltedJoint ? Bolted : Clasped };
            default:
                panel = JointGive.Panel(u.Web, zb, zu);
                return new JointSprings(
                    EndFixity.Rigid with { My = Series(panel, Bedded(B, b, U, u)) },
                    EndFixity.Rigid with { My = panel, N = JointGive.Stretch(U.A, B.Height) })
                { Within = within };
        }
    }

    /// <summary>At the arm of an open-front frame; null where no rule is known.</summary>
    public static JointSprings? OfArm(RigJoint joint, RigMember arm, RigMember column)
    {
        if (joint is RigPinnedJoint)
            return Rigid with { Beam = EndFixity.PinnedY };
        if (Walls.Of(arm.Shape) is not { } a || Walls.Of(column.Shape) is not { } c)
            return null;
        SectionProperties A = arm.Shape.Properties, C = column.Shape.Properties;
        if (A.Height / C.Height is < 0.5 or > 1.5)
            return null;
        double z = c.Between(C.Height);
        if (joint is RigSlottedJoint)
        {
            if (c.Flange == 0)
                return null;
            (double along, double turning) = JointGive.SlotBedding(c.Flange, z);
            return new JointSprings(
                EndFixity.Rigid with { My = JointGive.ThroughSlot(z, A.Height, A.A / A.Height) },
                EndFixity.Rigid with { N = along, My = turning })
            { Within = OpenFront };
        }

        if (BendsFace(arm.Shape, column.Shape))
            return null;
        double panel = JointGive.Panel(c.Web, a.Between(A.Height), z);
        return new JointSprings(
            EndFixity.Rigid with { My = Series(panel, Bedded(A, a, C, c)) },
            EndFixity.Rigid with { My = panel, N = JointGive.Stretch(C.A, A.Height) })
        { Within = joint.Gusset is null ? OpenFront : Gusseted };
    }

    // an end that stands on a face between its webs, or whose halves stand on a flange beside its web, bends it, and webs that hang beside a bar find nothing to stand on: there is no rule for these
    private static bool BendsFace(Shape end, Shape onto) =>
        Inside(onto) is { } clear ? end.Properties.Width < NearlyAsWide * clear
        : onto is Flat bar ? Inside(end) > bar.T
        : Beside(end, onto) is not null;

    /// <summary>How far the webs of a pair stand beside those of what they are joined to, m; null where they stand on one another, or the joint is of another kind.</summary>
    public static double? Beside(RigJoint joint, Shape beam, Shape upright) =>
        joint.Fit switch { BeamFit.Between => Beside(beam, upright), BeamFit.Over => Beside(upright, beam), _ => null };

    private static double? Beside(Shape end, Shape onto) =>
        end is Pair && Inside(onto) is null && Walls.Of(onto) is { Flange: > 0 } walls && Math.Abs(WebAt(end) - WebAt(onto)) is var off && off > FarBeside * walls.Flange ? off : null;

    // from the middle of a shape to the middle of its web, or of each of a pair's
    private static double WebAt(Shape shape) => shape switch
    {
        Pair { Half: Channel c, ToesTogether: true } p => p.Apart / 2 + c.B - c.Tw / 2,
        Pair { Half: Channel c } p => (p.Apart + c.Tw) / 2,
        Pair p => (p.Apart + p.Half.Properties.Width) / 2,
        _ => 0,
    };

    // between the webs of a box
    private static double? Inside(Shape shape) => shape switch
    {
        Box b => b.B - 2 * b.Tw,
        RectangularHollow r => r.B - 2 * r.T,
        _ => null,
    };

    private static bool IsBox(Shape shape) => Inside(shape) is not null;

    /// <summary>The end of one member on the face of another.</summary>
    private static double Bedded(SectionProperties E, Walls e, SectionProperties T, Walls t)
    {
        if (t.Flange == 0)
            return JointGive.OnEdge(t.Web, E.Height);
        var onto = new FlangeBed(T.Height, t.Web, t.Flange, t.Width);
        return e.Flange == 0 ? JointGive.OnFlange(onto, E.Height) : JointGive.ProfileOnFace(onto, E.Height, e.Flange);
    }

    private static double Series(double a, double b) => 1 / (1 / a + 1 / b);
}
