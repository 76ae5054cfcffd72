namespace Ramwright.Files.Editing;

/// <summary>Writes a value so that YAML reads back just that text.</summary>
internal static class Quoting
{
    private const string Starts = "-?:,[]{}#&*!|>'\"%@`";
    private static readonly string[] Voids = ["", "~", "null", "Null", "NULL"];

    /// <summary>The value, in quotes where it would not be read back as it is.</summary>
    /// <param name="value">The text; line ends become spaces.</param>
    /// <param name="flow">Whether it stands inside brackets, where a comma or a bracket ends it.</param>
    public static string Written(string value, bool flow)
    {
        value = value.ReplaceLineEndings(" ");
        bool plain = !Voids.Contains(value) && value.Trim() == value
            && !(Starts.Contains(value[0]) && !(value[0] is '-' && value.Length > 1 && value[1] != ' '))
            && !value.Contains(": ") && !value.EndsWith(':') && !value.Contains(" #")
            && !(flow && value.AsSpan().IndexOfAny(",[]{}") >= 0) && !value.Any(char.IsControl) && !value.StartsWith("---", StringComparison.Ordinal);
        return plain ? value : $"'{string.Concat(value.Where(c => !char.IsControl(c))).Replace("'", "''", StringComparison.Ordinal)}'";
    }
}
