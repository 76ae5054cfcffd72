using System.Globalization;
using Ramwright.Files;

namespace Ramwright.Web;

/// <summary>What was asked for on the command line: <c>[FILE|FOLDER] [--port N] [--lan] [--no-browser]</c>.</summary>
/// <param name="Folder">The folder whose presses are on the bench.</param>
/// <param name="Press">The press to show first, by its name; null for the list.</param>
/// <param name="Port">The port; null for the usual one, or any that is free.</param>
/// <param name="Browser">Whether to open a browser.</param>
/// <param name="Lan">Whether other machines on the same net may use it, with a key.</param>
internal sealed record BenchArguments(string Folder, string? Press, int? Port, bool Browser, bool Lan)
{
    /// <summary>The port where nobody says otherwise.</summary>
    public const int UsualPort = 8370;

    /// <summary>Reads the words of a command line.</summary>
    /// <returns>What they ask for, or why they cannot be followed.</returns>
    public static (BenchArguments? Arguments, string Fault) Read(IReadOnlyList<string> words)
    {
        string? place = null;
        int? port = null;
        bool browser = true, lan = false;
        for (int i = 0; i < words.Count; i++)
        {
            string word = words[i];
            if (word == "--no-browser")
            {
                browser = false;
            }
            else if (word == "--lan")
            {
                lan = true;
            }
            else if (word == "--port" || word.StartsWith("--port=", StringComparison.Ordinal))
            {
                string said = word == "--port" ? i + 1 < words.Count ? words[++i] : "" : word["--port=".Length..];
                if (!int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out int n) || n is < 0 or > 65535)
                    return (null, $"--port {said}: a whole number from 0 to 65535 is wanted; 0 takes any free port");
                port = n;
            }
            else if (word.StartsWith('-') || place is not null)
            {
                return (null, $"\"{word}\" is not understood; write: ramwright open [FILE|FOLDER] [--port N] [--lan] [--no-browser]");
            }
            else
            {
                place = word;
            }
        }

        place ??= ".";
        if (Directory.Exists(place))
            return (new BenchArguments(place, null, port, browser, lan), "");
        if (!File.Exists(place))
            return (null, $"{place}: there is no such file or folder");
        string name = Path.GetFileName(place);
        return name.EndsWith(PressFile.Ending, StringComparison.Ordinal)
            ? (new BenchArguments(Path.GetDirectoryName(Path.GetFullPath(place))!, name[..^PressFile.Ending.Length], port, browser, lan), "")
            : (null, $"{place}: the bench opens press files, NAME{PressFile.Ending}");
    }
}
