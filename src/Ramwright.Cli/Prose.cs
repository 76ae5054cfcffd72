using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The few shapes that the answers on a terminal are made of.</summary>
internal static class Prose
{
    private static readonly Style Bold = new(decoration: Decoration.Bold);

    /// <summary>The name of what follows, and what is to be said of it in the same breath.</summary>
    public static void Heading(this IAnsiConsole screen, string name, string remark = "")
    {
        if (remark.Length == 0)
            screen.Write(new Lines(new Cell(0, name, Style: Bold)));
        else
            screen.Write(new Lines(new Cell(0, name, name.Length, Bold), new Cell(name.Length + 1, remark)));
    }

    /// <summary>A sentence or more from a margin to the edge.</summary>
    public static void Paragraph(this IAnsiConsole screen, string text, int margin = 0, Style? style = null) =>
        screen.Write(new Lines(new Cell(margin, text, Style: style)));

    /// <summary>A command to be copied: left whole, so that the terminal itself breaks it where it must and it is copied as one.</summary>
    public static void Line(this IAnsiConsole screen, string text) => JsonOut.Write(screen, text);

    /// <summary>The same, so that it is not overlooked.</summary>
    public static void Loud(this IAnsiConsole screen, string text, int margin = 0) => screen.Paragraph(text, margin, Bold);

    /// <summary>A mark and a text that hangs beside it.</summary>
    public static void Bullet(this IAnsiConsole screen, string mark, string text) =>
        screen.Write(new Lines(new Cell(2, mark, mark.Length), new Cell(3 + mark.Length, text)));

    /// <summary>What a value is called, the value, and a remark on it.</summary>
    public static void Fact(this IAnsiConsole screen, string what, string value, string remark) =>
        screen.Write(new Lines(new Cell(2, what, 15), new Cell(18, value, 18, Bold), new Cell(38, remark)));
}
