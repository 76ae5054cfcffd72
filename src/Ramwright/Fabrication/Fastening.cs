using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Fabrication;

/// <summary>One bolt or pin of a joint where it stands.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="At">Where, global, m.</param>
/// <param name="Hole">Hole, m.</param>
/// <param name="For">In words: <c>bolt M24</c>.</param>
/// <param name="OnlyOnto">A hole in the part that runs on only: at other heights of the bed.</param>
internal sealed record Fastening(PlanJoint Joint, Vector At, double Hole, string For, bool OnlyOnto = false)
{
    /// <summary>Play of a pin in its hole, m: as the net sections are reckoned with.</summary>
    private const double PinPlay = 1e-3;

    /// <summary>Every bolt and pin of a frame's joints.</summary>
    public static IEnumerable<Fastening> Of(PartDraft draft)
    {
        foreach (PlanJoint joint in draft.Plan.Joints)
        {
            switch (joint.Joint)
            {
                case RigBoltedJoint bolts:
                    foreach (Vector at in joint.Places(bolts))
                        yield return new Fastening(joint, at, bolts.Hole, $"bolt {bolts.Thread.Name}");
                    break;
                case RigPinnedJoint pin:
                    string word = $"pin, {Quantities.Readout.Text(pin.Diameter, Quantities.Dimension.Length, draft.Units)}";
                    yield return new Fastening(joint, joint.Centre, pin.Diameter + PinPlay, word);
                    if (joint.Key == "frame.bed-joint" && draft.Rig.Frame is RigClosedFrame { BedPins: { } rows })
                    {
                        for (int i = 1; i < rows.Count; i++)
                            yield return new Fastening(joint, joint.Centre + i * rows.Pitch * Vector.Up, pin.Diameter + PinPlay, word, OnlyOnto: true);
                    }

                    break;
            }
        }
    }

    /// <summary>Whether a piece is one of the two parts that are joined and this goes through it.</summary>
    /// <param name="piece">The piece.</param>
    public bool Concerns(Piece piece) => piece is not GussetPlate
        && (piece.Member.Part == Joint.Onto.Part || (piece.Member.Part == Joint.Beam.Part && !OnlyOnto && Joint.Joint.Fit == BeamFit.Lapped));

    /// <summary>The walls of a piece that it goes through: all of a lap, the one at the joint's face where an end plate stands against it.</summary>
    /// <param name="piece">The piece.</param>
    public IReadOnlyList<WallMet> Walls(Piece piece)
    {
        IReadOnlyList<WallMet> all = WallsMet.Of(piece, At, Joint.Normal);
        if (Joint.Joint.Fit == BeamFit.Lapped || all.Count == 0)
            return all;
        return [all.MinBy(w => Math.Min(Math.Abs(w.From), Math.Abs(w.To)))];
    }
}
