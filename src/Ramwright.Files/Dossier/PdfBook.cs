using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Ramwright.Files.Dossier;

/// <summary>Writes a book as PDF on A4, faces embedded, the same bytes for the same book and day.</summary>
public static class PdfBook
{
    /// <summary>Writes it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="day">The day that stands in it, if any.</param>
    public static byte[] Write(Book book, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(book);
        var pages = new Dictionary<Chapter, int>();
        int front = LaidFront(book, pages).Count;
        var body = new Typesetter();
        foreach (Chapter chapter in book.Chapters)
            pages[chapter] = front + body.Begin(chapter);

        return Drawn(book, [.. LaidFront(book, pages), .. body.Leaves], pages, day);
    }

    /// <summary>Writes one sheet at its true size, on paper of just that size.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="day">The day that stands in it, if any.</param>
    public static byte[] Write(Drawings.Sheet sheet, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var document = New(sheet.Title, day);
        PdfPage page = document.AddPage();
        page.Width = XUnit.FromMillimeter(sheet.Width);
        page.Height = XUnit.FromMillimeter(sheet.Height);
        using (var on = XGraphics.FromPdfPage(page))
            PdfSheet.Draw(on, sheet, 0, 0);
        return Settled(document);
    }

    private static IReadOnlyList<Leaf> LaidFront(Book book, Dictionary<Chapter, int> pages)
    {
        var front = new Typesetter();
        front.Front(book, c => pages.GetValueOrDefault(c));
        return front.Leaves;
    }

    private static byte[] Drawn(Book book, IReadOnlyList<Leaf> leaves, Dictionary<Chapter, int> pages, DateOnly? day)
    {
        using var document = New($"{book.Title}: {book.Subtitle}", day);
        for (int i = 0; i < leaves.Count; i++)
        {
            Leaf leaf = leaves[i];
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromPoint(leaf.Width);
            page.Height = XUnit.FromPoint(leaf.Height);
            Foot(leaf, book, i + 1, leaves.Count);
            using var on = XGraphics.FromPdfPage(page);
            leaf.Draw(on);
        }

        foreach (Chapter chapter in book.Chapters)
            document.Outlines.Add(chapter.Name, document.Pages[pages[chapter] - 1]);
        return Settled(document);
    }

    private static void Foot(Leaf leaf, Book book, int number, int of)
    {
        double y = leaf.Height - 24, right = leaf.Width - Leaf.Right;
        // a sheet of its own goes to the paper's edge: its foot stands in the margin
        leaf.Text(book.Stamp, Leaf.Left, leaf.Landscape ? leaf.Height - 8 : y, 6.8, grey: true);
        leaf.Text($"page {number} of {of}", right, leaf.Landscape ? leaf.Height - 8 : y, 6.8, right: true);
        if (leaf.Chapter.Length > 0 && !leaf.Landscape)
        {
            leaf.Text(book.Title, Leaf.Left, 32, 6.8, grey: true);
            leaf.Text(leaf.Chapter, right, 32, 6.8, grey: true, right: true);
        }
    }

    /// <summary>What a PDF must say where nobody names a day.</summary>
    private static readonly DateOnly Undated = new(2000, 1, 1);

    private static PdfDocument New(string title, DateOnly? day)
    {
        var document = new PdfDocument();
        document.Info.Title = title;
        document.Info.Creator = "Ramwright";
        document.Info.CreationDate = document.Info.ModificationDate = (day ?? Undated).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Language = "en";
        return document;
    }

    private static byte[] Settled(PdfDocument document)
    {
        using var all = new MemoryStream();
        document.Save(all, closeStream: false);
        return PdfSettling.Of(all.ToArray());
    }
}
