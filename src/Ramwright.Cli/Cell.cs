using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>A text that stands at a place of its line and, where it is too long, goes on below itself.</summary>
/// <param name="At">The character it begins at.</param>
/// <param name="Text">What it says.</param>
/// <param name="Width">How many characters it may take; 0: up to the edge of the screen.</param>
/// <param name="Style">How it looks; plain if left out.</param>
/// <param name="Right">Whether it ends at the right of its width, as numbers do.</param>
internal sealed record Cell(int At, string Text, int Width = 0, Style? Style = null, bool Right = false);
