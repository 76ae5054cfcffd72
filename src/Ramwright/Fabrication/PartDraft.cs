using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>The list of parts while it is drawn up.</summary>
internal sealed class PartDraft(Rig rig)
{
    private readonly List<Part> _parts = [];
    private readonly List<Assumed> _assumed = [];
    private readonly List<string> _undecided = [];

    public Rig Rig { get; } = rig;

    /// <summary>The steel where it stands.</summary>
    public FrameBody Body { get; } = FrameBody.Of(rig);

    /// <summary>The joints where they stand.</summary>
    public FramePlan Plan { get; } = FramePlan.Of(rig);

    public IReadOnlyList<Part> Parts => _parts;

    public void Add(Part part) => _parts.Add(part);

    /// <summary>Notes a value that was taken.</summary>
    public double Assume(string what, double si, Dimension dimension, string why)
    {
        _assumed.Add(new AssumedMeasure(what, si, dimension, why));
        return si;
    }

    /// <summary>Notes what the builder decides.</summary>
    public void Undecided(string what)
    {
        if (!_undecided.Contains(what))
            _undecided.Add(what);
    }

    public PartList Finish()
    {
        Part[] parts = [.. Marked(_parts.OfType<PlatePart>(), "P"), .. Marked(_parts.OfType<LengthPart>(), "L"), .. Marked(_parts.OfType<BoughtPart>(), "B")];
        return new PartList { Parts = parts, Assumed = _assumed, Undecided = _undecided, Lifting = LiftingPoint.Of(parts, this) };
    }

    private static IEnumerable<Part> Marked(IEnumerable<Part> parts, string letter) =>
        parts.Select((part, i) => part.Mark.Length > 0 ? part : part with { Mark = $"{letter}{i + 1}" });
}
