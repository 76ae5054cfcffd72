using System.Text;

namespace Ramwright.Presses;

/// <summary>How the names of properties and words are written in a press file: <c>RatedPressure</c> is <c>rated-pressure</c>.</summary>
public static class KeyNames
{
    /// <summary>The written form of a property or enum name.</summary>
    public static string Written(string name)
    {
        var text = new StringBuilder(name.Length + 4);
        foreach (char c in name)
        {
            if (char.IsUpper(c) && text.Length > 0)
                text.Append('-');
            text.Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
