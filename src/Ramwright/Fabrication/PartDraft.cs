using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>The list of parts while it is drawn up.</summary>
internal sealed class PartDraft(Rig rig, UnitSystem units)
{
    private readonly List<Part> _parts = [];
    private readonly List<Assumed> _assumed = [];
    private readonly List<string> _undecided = [];
    private readonly List<string> _misfits = [];

    public Rig Rig { get; } = rig;

    /// <summary>Units of what is said in words.</summary>
    public UnitSystem Units { get; } = units;

    /// <summary>What proposed parts are made of.</summary>
    public TradeSizes Sold { get; } = TradeSizes.Of(units);

    /// <summary>The steel where it stands.</summary>
    public FrameBody Body { get; } = FrameBody.Of(rig);

    /// <summary>The joints where they stand.</summary>
    public FramePlan Plan { get; } = FramePlan.Of(rig);

    public IReadOnlyList<Part> Parts => _parts;

    /// <summary>Adds a part; holes that do not fit on a plate are left off it, and said.</summary>
    public void Add(Part part)
    {
        if (part is PlatePart { Holes.Count: > 0 } plate && PlateFit.Misfit(plate, Units) is { } misfit)
        {
            Misfit(misfit);
            part = plate with { Holes = [] };
        }

        _parts.Add(part);
    }

    /// <summary>The part of a name, however its capitals stand; null for none.</summary>
    public Part? Named(string name) => _parts.Find(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Puts one part in another's place.</summary>
    public void Replace(Part old, Part part)
    {
        int at = _parts.IndexOf(old);
        Add(part);
        Part added = _parts[^1];
        _parts.RemoveAt(_parts.Count - 1);
        _parts[at] = added;
    }

    /// <summary>Whether any job of the press works metal or timber between dies.</summary>
    public bool WorksBetweenDies => Rig.Ram?.DieHolder is not null || Rig.Jobs.Any(j => j is RigHotSqueeze or RigClosedDie or RigVBend);

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

    /// <summary>Notes what will not go together as it is described.</summary>
    public void Misfit(string what)
    {
        if (!_misfits.Contains(what))
            _misfits.Add(what);
    }

    public PartList Finish()
    {
        Part[] parts = [.. Marked(_parts.OfType<PlatePart>(), "P"), .. Marked(_parts.OfType<LengthPart>(), "L"), .. Marked(_parts.OfType<BoughtPart>(), "B")];
        return new PartList { Parts = parts, Assumed = _assumed, Undecided = _undecided, Misfits = _misfits, Lifting = LiftingPoint.Of(parts, this) };
    }

    private static IEnumerable<Part> Marked(IEnumerable<Part> parts, string letter) =>
        parts.Select((part, i) => part.Mark.Length > 0 ? part : part with { Mark = $"{letter}{i + 1}" });
}
