namespace Ramwright.Files.Drawings;

/// <summary>A sheet of paper with what is drawn on it.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Marks">Everything on it, the farthest first.</param>
public sealed record Sheet(string Title, double Width, double Height, IReadOnlyList<Mark> Marks)
{
    /// <summary>What is to be known of the drawing, a line each.</summary>
    public IReadOnlyList<string> Facts { get; init; } = [];
}
