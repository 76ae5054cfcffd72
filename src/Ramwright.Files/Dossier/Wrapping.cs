namespace Ramwright.Files.Dossier;

/// <summary>Breaks text into lines of a width.</summary>
internal static class Wrapping
{
    public static IReadOnlyList<string> Lines(string text, double width, double size, bool heavy = false)
    {
        var lines = new List<string>();
        foreach (string paragraph in text.Split('\n'))
        {
            string line = "";
            foreach (string word in Faces.Fit(paragraph).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                string tried = line.Length == 0 ? word : line + " " + word;
                if (Faces.Width(tried, size, heavy) <= width)
                {
                    line = tried;
                    continue;
                }

                if (line.Length > 0)
                    lines.Add(line);
                line = word;
                // a word longer than the line, such as a hash, is broken where it must be
                while (Faces.Width(line, size, heavy) > width && line.Length > 1)
                {
                    int n = line.Length - 1;
                    while (n > 1 && Faces.Width(line[..n], size, heavy) > width)
                        n--;
                    lines.Add(line[..n]);
                    line = line[n..];
                }
            }

            lines.Add(line);
        }

        return lines;
    }
}
