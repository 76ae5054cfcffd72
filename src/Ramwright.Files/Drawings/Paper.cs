namespace Ramwright.Files.Drawings;

/// <summary>What a press is drawn on.</summary>
/// <param name="Wide">mm.</param>
/// <param name="Tall">mm.</param>
/// <param name="Margin">Left free all round, mm.</param>
/// <param name="HasTitle">Whether it has a frame and a title; else its facts are for the page it stands on to tell.</param>
public sealed record Paper(double Wide, double Tall, double Margin, bool HasTitle)
{
    /// <summary>A sheet on its own, lying.</summary>
    public static readonly Paper A4 = new(297, 210, 8, true);

    /// <summary>A figure on a page: smaller, so that its letters are larger where it fills the page's width, and no taller than what is on it.</summary>
    public static readonly Paper Figure = new(245, 140, 2, false);

    /// <summary>A figure in a narrow column, as on a phone: the side below the front.</summary>
    public static readonly Paper Column = new(150, 250, 2, false) { IsStacked = true };

    /// <summary>Whether views stand one below the other.</summary>
    public bool IsStacked { get; init; }
}
