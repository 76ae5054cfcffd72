using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>One thing on a sheet. Millimetres of paper, x to the right, y up from the lower left corner.</summary>
/// <param name="Part">The part of the press it belongs to, or empty.</param>
public abstract record Mark(string Part);

/// <summary>A filled shape with its edge.</summary>
/// <param name="Part">The part of the press it belongs to, or empty.</param>
/// <param name="Outline">Its edge.</param>
/// <param name="Pen">Line of its edge.</param>
/// <param name="Fill">Colour as <c>#rrggbb</c>; empty leaves it open.</param>
public sealed record Area(string Part, Outline Outline, Pen Pen, string Fill = "") : Mark(Part);

/// <summary>A run of straight lines.</summary>
/// <param name="Part">The part of the press it belongs to, or empty.</param>
/// <param name="Points">Its corners.</param>
/// <param name="Pen">The line.</param>
public sealed record Line(string Part, IReadOnlyList<(double X, double Y)> Points, Pen Pen) : Mark(Part);

/// <summary>A word or a figure.</summary>
/// <param name="Part">The part of the press it belongs to, or empty.</param>
/// <param name="Text">What it says.</param>
/// <param name="X">Where it stands.</param>
/// <param name="Y">Its base line.</param>
/// <param name="Height">Height of a capital letter, mm.</param>
/// <param name="At">Which end of it stands there.</param>
/// <param name="Upward">Whether it reads upward.</param>
/// <param name="Bold">Whether it is heavy.</param>
public sealed record Lettering(
    string Part, string Text, double X, double Y, double Height = Lettering.Usual, Anchor At = Anchor.Left, bool Upward = false, bool Bold = false)
    : Mark(Part)
{
    /// <summary>Usual height of a capital letter, mm; ISO 3098-1.</summary>
    public const double Usual = 2.5;

    /// <summary>Mean advance of a letter over its height, for keeping texts apart.</summary>
    private const double Advance = 0.8;

    /// <summary>About how wide it is, mm.</summary>
    public double Width => Text.Length * Advance * Height;
}

/// <summary>Which end of a text its place names.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Left,
    /// <summary>Its middle.</summary>
    Middle,
    /// <summary>Its end.</summary>
    Right,
}

/// <summary>A line's width and dashes; ISO 128-2 widths.</summary>
public enum Pen
{
    /// <summary>No line.</summary>
    None,
    /// <summary>Visible edges, 0.35 mm.</summary>
    Edge,
    /// <summary>Dimension and leader lines, 0.18 mm.</summary>
    Thin,
    /// <summary>Hidden edges, dashed.</summary>
    Hidden,
    /// <summary>Centre lines, long dash and dot.</summary>
    Centre,
    /// <summary>A moved place of a moving part, long dash and two dots.</summary>
    Moved,
    /// <summary>The sheet's frame, 0.7 mm.</summary>
    Frame,
}
