using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Ramwright.Files.Dossier;

/// <summary>
/// Takes chance out of a PDF: the marks that its writer draws at random (the document's id, the tags of font subsets) are made from the content instead, each as
/// long as before so that no place in the file moves.
/// </summary>
internal static partial class PdfSettling
{
    public static byte[] Of(byte[] pdf)
    {
        // bytes stand for themselves in this encoding, so that streams come through untouched
        string text = Encoding.Latin1.GetString(pdf);
        var tags = new Dictionary<string, string>();
        text = SubsetTag().Replace(text, m =>
        {
            if (!tags.TryGetValue(m.Groups[1].Value, out string? tag))
                tags[m.Groups[1].Value] = tag = $"RAMW{(char)('A' + tags.Count / 26)}{(char)('A' + tags.Count % 26)}";
            return $"/{tag}+";
        });
        var ids = new Dictionary<string, string>();
        text = Uuid().Replace(text, m => ids.TryGetValue(m.Value, out string? id) ? id : ids[m.Value] = $"00000000-0000-4000-8000-{ids.Count:000000000000}");
        string blank = Id().Replace(text, m => $"/ID{m.Groups[1].Value}[<{new string('0', 32)}>{m.Groups[3].Value}<{new string('0', 32)}>]");
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(blank)))[..32];
        return Encoding.Latin1.GetBytes(Id().Replace(text, m => $"/ID{m.Groups[1].Value}[<{hash}>{m.Groups[3].Value}<{hash}>]"));
    }

    [GeneratedRegex(@"/([A-Z]{6})\+")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID(\s*)\[<([0-9A-Fa-f]{32})>(\s*)<[0-9A-Fa-f]{32}>\]")]
    private static partial Regex Id();
}
