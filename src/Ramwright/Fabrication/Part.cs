using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication;

/// <summary>One kind of part of the press, and how many alike it takes. SI.</summary>
public abstract record Part
{
    /// <summary>What is scribed on it: <c>P1</c> a plate, <c>L1</c> a length, <c>B1</c> bought.</summary>
    public string Mark { get; init; } = "";

    /// <summary>What it is: <c>crown, one half</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The part of the press it belongs to, in the ladder's words: <c>crown</c>.</summary>
    public required string Of { get; init; }

    /// <summary>How many alike.</summary>
    public required int Count { get; init; }

    /// <summary>Its steel; null where that is not ours to say.</summary>
    public Steel? Steel { get; init; }

    /// <summary>Who gave its dimensions.</summary>
    public PartOrigin Origin { get; init; }

    /// <summary>By what rule it was dimensioned, where the file does not.</summary>
    public string Rule { get; init; } = "";

    /// <summary>Centres of gravity of those whose place in the press is known, m, about the frame's own origin; the rest are not placed.</summary>
    public IReadOnlyList<Vector> Places { get; init; } = [];

    /// <summary>Writes down how its size was reckoned; null where nothing was.</summary>
    public Action<Working>? Work { get; init; }

    /// <summary>What else the maker of it must know.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Mass of one, kg; null where it is not known.</summary>
    public abstract double? Mass { get; }
}

/// <summary>Who gave a part's dimensions.</summary>
public enum PartOrigin
{
    /// <summary>They follow from what the press file says of the machine.</summary>
    Described,
    /// <summary>A rule of common practice, stated with the part: a proposal, to be looked at before it is cut.</summary>
    Proposed,
    /// <summary>The file's own list of parts.</summary>
    Listed,
}

/// <summary>A part cut from plate.</summary>
public sealed record PlatePart : Part
{
    /// <summary>Thickness, m.</summary>
    public required double Thickness { get; init; }

    private Outline? _outline;

    /// <summary>Its edge, flat, and openings that are not round, m.</summary>
    public required Outline Blank
    {
        get;
        init => (field, _outline) = (value, null);
    }

    /// <summary>Its round holes.</summary>
    public IReadOnlyList<PlateHole> Holes
    {
        get;
        init => (field, _outline) = (value, null);
    } = [];

    /// <summary>All that is cut, flat, m: its edge, then every opening and every hole that is not only marked.</summary>
    public Outline Outline => _outline ??= PlateShape.Drilled(Blank, Holes);

    /// <summary>Where it is bent; <see cref="Outline"/> is then the flat pattern.</summary>
    public IReadOnlyList<PlateBend> Bends { get; init; } = [];

    /// <inheritdoc/>
    public override double? Mass => Outline.Area() * Thickness * Steel.Density;
}

/// <summary>A round hole in a plate.</summary>
/// <param name="Y">Its centre across, m.</param>
/// <param name="Z">Its centre up, m.</param>
/// <param name="Diameter">As it is cut or drilled, m; of a threaded hole the tap drill's.</param>
/// <param name="For">What goes through: <c>bolt M20</c>.</param>
public sealed record PlateHole(double Y, double Z, double Diameter, string For)
{
    /// <summary>The thread that is cut in it; null in a plain hole.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Whether it is only centre-marked, to be drilled: too fine for a torch.</summary>
    public bool MarkOnly { get; init; }
}

/// <summary>A bend, on the flat pattern.</summary>
/// <param name="From">One end of the middle of the bent zone, m.</param>
/// <param name="To">The other end.</param>
/// <param name="Angle">How far it is bent, rad; a right angle is π/2.</param>
/// <param name="Radius">Inside radius, m.</param>
/// <param name="Up">Towards whoever looks at the flat pattern.</param>
/// <param name="Width">Width of the bent zone on the flat pattern, m.</param>
public sealed record PlateBend(Corner From, Corner To, double Angle, double Radius, bool Up, double Width);

/// <summary>A part sawn from a bar or a section.</summary>
public sealed record LengthPart : Part
{
    /// <summary>The section.</summary>
    public required Shape Section { get; init; }

    /// <summary>Finished length, m.</summary>
    public required double Length { get; init; }

    /// <summary>How its first end is made.</summary>
    public EndCut First { get; init; } = EndCut.Square;

    /// <summary>How its second end is made.</summary>
    public EndCut Second { get; init; } = EndCut.Square;

    /// <summary>Holes and slots, measured from the first end.</summary>
    public IReadOnlyList<LengthHole> Holes { get; init; } = [];

    /// <inheritdoc/>
    /// <remarks>From end to end, holes not taken off: on the safe side for lifting.</remarks>
    public override double? Mass => Section.Properties.A * Length * Steel.Density;
}

/// <summary>How an end is made.</summary>
/// <param name="Words">As it is told: <c>square</c>.</param>
public sealed record EndCut(string Words)
{
    /// <summary>Sawn square.</summary>
    public static readonly EndCut Square = new("square");

    /// <summary>Thread on the end; null for none.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>Length of that thread, m.</summary>
    public double Threaded { get; init; }
}

/// <summary>A hole or slot in a length.</summary>
/// <param name="Along">Its centre from the first end, m.</param>
/// <param name="Aside">Its centre from the section's middle line on that face, m.</param>
/// <param name="Face">Which wall it goes through: <c>web</c>.</param>
/// <param name="Diameter">Diameter of a hole, m; for a slot its size along.</param>
/// <param name="Across">Size of a slot across, m; 0 for a round hole.</param>
/// <param name="Wall">Steel it goes through, m, all walls added.</param>
/// <param name="For">What goes through: <c>bolt M24</c>.</param>
public sealed record LengthHole(double Along, double Aside, string Face, double Diameter, double Across, double Wall, string For);

/// <summary>A part that is bought.</summary>
public sealed record BoughtPart : Part
{
    /// <summary>What to ask for: <c>bolt M24 x 90, 8.8, nut and two washers</c>.</summary>
    public required string Ask { get; init; }

    /// <summary>Mass of one where it is known or can be reckoned, kg.</summary>
    public double? Weighs { get; init; }

    /// <inheritdoc/>
    public override double? Mass => Weighs;
}
