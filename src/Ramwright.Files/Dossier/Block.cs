using Ramwright.Files.Drawings;

namespace Ramwright.Files.Dossier;

/// <summary>One thing on the pages of a book, be they paper or screen.</summary>
public abstract record Block;

/// <summary>A heading.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Level">2 within a chapter, 3 within that; a chapter's own heading is made from its name.</param>
public sealed record Heading(string Text, int Level = 2) : Block;

/// <summary>A paragraph.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Tone">How loud.</param>
public sealed record Prose(string Text, Tone Tone = Tone.Plain) : Block;

/// <summary>How loud a paragraph is.</summary>
public enum Tone
{
    /// <summary>As usual.</summary>
    Plain,
    /// <summary>A remark beside.</summary>
    Quiet,
    /// <summary>The answer.</summary>
    Loud,
    /// <summary>A caution: a bar stands beside it, so that it is seen without colour.</summary>
    Warn,
}

/// <summary>A list.</summary>
/// <param name="Texts">Its items.</param>
/// <param name="Mark">What stands before each.</param>
public sealed record Items(IReadOnlyList<string> Texts, ItemMark Mark = ItemMark.Dash) : Block;

/// <summary>What stands before an item.</summary>
public enum ItemMark
{
    /// <summary>A dash.</summary>
    Dash,
    /// <summary>Its number.</summary>
    Number,
    /// <summary>A box to be ticked by hand.</summary>
    Box,
}

/// <summary>A table.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, a cell for each column; an empty cell of a ruled table is there to be filled in.</param>
public sealed record Grid(IReadOnlyList<GridColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block
{
    /// <summary>What stands above it.</summary>
    public string Caption { get; init; } = "";
    /// <summary>Whether every cell has its box, with room for a pen.</summary>
    public bool Ruled { get; init; }
    /// <summary>Rows that are set heavy, by their number.</summary>
    public IReadOnlySet<int> Heavy { get; init; } = new HashSet<int>();
}

/// <summary>A column.</summary>
/// <param name="Head">What stands above it.</param>
/// <param name="Share">Its share of the width.</param>
/// <param name="Right">Whether its cells stand to the right, as figures do.</param>
public sealed record GridColumn(string Head, double Share, bool Right = false);

/// <summary>Names with their values.</summary>
/// <param name="Rows">Name, value, and a remark.</param>
public sealed record Facts(IReadOnlyList<(string Name, string Value, string Remark)> Rows) : Block;

/// <summary>A drawing. One as large as a page has a page of its own.</summary>
/// <param name="Sheet">What is drawn.</param>
/// <param name="Caption">What stands below it; empty for nothing.</param>
public sealed record Picture(Sheet Sheet, string Caption = "") : Block
{
    /// <summary>Whether it is made smaller to stand among text; a drawing without a scale may be.</summary>
    public bool Shrinks { get; init; }

    /// <summary>Whether it takes a page of its own.</summary>
    public bool OwnPage => !Shrinks && (Sheet.Width > 180 || Sheet.Height > 200);
}

/// <summary>A step of working.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Formula">Its formula; empty for a value that was looked up.</param>
/// <param name="With">What was put in, as it is written.</param>
/// <param name="Result">What came out, as it is written.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StepLine(int Number, string Meaning, string Symbol, string Formula, string With, string Result, string Source) : Block;

/// <summary>What follows begins on a new page of paper.</summary>
public sealed record NewPage : Block;

/// <summary>A chapter.</summary>
/// <param name="Name">Its name, for the contents.</param>
/// <param name="Blocks">What it holds.</param>
public sealed record Chapter(string Name, IReadOnlyList<Block> Blocks);

/// <summary>A book: one content for paper and for the screen.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Subtitle">What it is.</param>
/// <param name="Stamp">What stands at the foot of every page: file, hash, date.</param>
/// <param name="Front">What stands on the first page above the contents.</param>
/// <param name="Chapters">The chapters.</param>
public sealed record Book(string Title, string Subtitle, string Stamp, IReadOnlyList<Block> Front, IReadOnlyList<Chapter> Chapters);
