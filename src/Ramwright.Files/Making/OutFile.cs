using System.Text;

namespace Ramwright.Files.Making;

/// <summary>A file to be carried to the workshop, not yet written.</summary>
/// <param name="Name">Its name within the folder, with <c>/</c> between folders: <c>plates/P1-gusset.dxf</c>.</param>
/// <param name="Bytes">All it holds.</param>
public sealed record OutFile(string Name, byte[] Bytes)
{
    /// <summary>A file of text, UTF-8.</summary>
    public static OutFile OfText(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    /// <summary>Words made fit for a file's name on every system: letters, figures and dashes.</summary>
    public static string Slug(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var slug = new StringBuilder();
        foreach (char c in words.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
            if (slug.Length == 40)
                break;
        }

        return slug.ToString().Trim('-');
    }
}
