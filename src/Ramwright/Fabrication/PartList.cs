using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>Every part of a press, to be made or bought, with what they weigh together.</summary>
public sealed record PartList
{
    /// <summary>The parts: plates, lengths, then what is bought, each kind in the order of the frame.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>Values that were taken because the file does not give them.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }

    /// <summary>What neither the file nor a rule says: the builder decides.</summary>
    public required IReadOnlyList<string> Undecided { get; init; }

    /// <summary>What will not go together as it is described.</summary>
    public required IReadOnlyList<string> Misfits { get; init; }

    /// <summary>Where it hangs from, and how to lift it.</summary>
    public required Lifting Lifting { get; init; }

    /// <summary>Parts cut from plate.</summary>
    public IEnumerable<PlatePart> Plates => Parts.OfType<PlatePart>();

    /// <summary>Parts sawn from bars and sections.</summary>
    public IEnumerable<LengthPart> Lengths => Parts.OfType<LengthPart>();

    /// <summary>Parts that are bought.</summary>
    public IEnumerable<BoughtPart> Bought => Parts.OfType<BoughtPart>();

    /// <summary>Mass of everything whose mass is known, kg.</summary>
    public double Mass => Parts.Sum(p => p.Count * (p.Mass ?? 0));

    /// <summary>Draws up the parts of a press.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="units">Units of what is said in words.</param>
    /// <exception cref="NotSupportedException">A kind of frame that has no body yet.</exception>
    public static PartList Of(Rig rig, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var draft = new PartDraft(rig, units);
        EndPlates.Draw(draft);
        MemberParts.Draw(draft);
        Stiffeners.Draw(draft);
        MountParts.Draw(draft);
        DieParts.Draw(draft);
        AntiTwistParts.Draw(draft);
        BoughtIn.Draw(draft);
        StandParts.Draw(draft);
        OwnParts.Put(draft);
        return draft.Finish();
    }
}

/// <summary>What to know before the press is lifted.</summary>
/// <param name="Mass">Mass of everything whose mass is known, kg.</param>
/// <param name="Centre">Centre of gravity of everything whose mass and place are known, m, about the frame's own origin.</param>
/// <param name="Placed">Mass of what that centre counts, kg.</param>
/// <param name="Eye">Where an eye stands above the centre of gravity, m.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record Lifting(double Mass, Vector Centre, double Placed, Vector Eye, IReadOnlyList<string> Cautions)
{
    /// <summary>Height of the lowest steel, which the press stands on, m about the frame's own origin.</summary>
    public required double Floor { get; init; }

    /// <summary>How high the centre of gravity lies above what the press stands on, m.</summary>
    public double Height => Centre.Z - Floor;
}
