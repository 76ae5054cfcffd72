using System.Collections.Concurrent;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Ramwright.Files.Dossier;

/// <summary>The two faces that everything on paper is set in. Their figures are all of one width, so that columns of numbers stand straight.</summary>
internal static class Faces
{
    private const string Family = "Ramwright Text";
    private static readonly Lock Gate = new();
    private static bool _ready;
    private static readonly ConcurrentDictionary<(double, bool), XFont> Made = new();
    private static readonly FaceWidths[] Widths = [new(FaceFile.Regular), new(FaceFile.SemiBold)];

    /// <summary>A font.</summary>
    /// <param name="size">Points.</param>
    /// <param name="heavy">Whether it is the heavy face.</param>
    public static XFont Font(double size, bool heavy = false)
    {
        Ready();
        return Made.GetOrAdd((size, heavy), static key => new XFont(Family, key.Item1, key.Item2 ? XFontStyleEx.Bold : XFontStyleEx.Regular,
            new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset)));
    }

    /// <summary>Width of a text, points.</summary>
    public static double Width(string text, double size, bool heavy = false) => Widths[heavy ? 1 : 0].Of(text) * size;

    /// <summary>Text with what the faces lack put in other words.</summary>
    public static string Fit(string text)
    {
        FaceWidths face = Widths[0];
        if (text.All(face.Has))
            return text;
        var fit = new StringBuilder(text.Length + 8);
        foreach (char c in text)
        {
            if (face.Has(c))
                fit.Append(c);
            else
                fit.Append(c switch { '∛' => "³√", '⁻' => "^−", '⌀' => "Ø", '☐' or '□' => "[ ]", '\u2062' or '\u200b' or '\ufe0f' => "", '\u0304' => "", _ => char.IsSurrogate(c) ? "" : "?" });
        }

        return fit.ToString();
    }

    private static void Ready()
    {
        if (_ready)
            return;
        lock (Gate)
        {
            if (!_ready && GlobalFontSettings.FontResolver is null)
                GlobalFontSettings.FontResolver = new Resolver();
            _ready = true;
        }
    }

    private sealed class Resolver : IFontResolver
    {
        public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? FaceFile.SemiBold : FaceFile.Regular);

        public byte[]? GetFont(string faceName) => FaceFile.Bytes(faceName);
    }
}

/// <summary>The files of the faces, as they lie in the program.</summary>
internal static class FaceFile
{
    public const string Regular = "text-regular", SemiBold = "text-semibold";

    public static byte[] Bytes(string name)
    {
        using Stream stream = typeof(FaceFile).Assembly.GetManifestResourceStream($"Fonts/{name}.ttf") ?? throw new FileNotFoundException($"the face {name} is missing from the program");
        using var all = new MemoryStream();
        stream.CopyTo(all);
        return all.ToArray();
    }
}
