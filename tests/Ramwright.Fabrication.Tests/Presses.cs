using System.Text.RegularExpressions;
using Ramwright.Files;
using Ramwright.Ladders;

namespace Ramwright.Tests;

/// <summary>Presses to try things on: the examples, changed where a test says so.</summary>
internal static class Presses
{
    /// <summary>An example with pieces of its text replaced; what it says of welding, costs and papers is left out, so that a test can say its own.</summary>
    public static PressOnDisk Open(string example, params (string Old, string New)[] changes)
    {
        string path = Path.Combine(Repository.Folder("examples"), example + ".press.yaml"), text = File.ReadAllText(path);
        text = Regex.Replace(text, @"^(welding|costs|papers):.*\n(?:[ #].*\n)*", "", RegexOptions.Multiline);
        foreach ((string old, string changed) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, changed, StringComparison.Ordinal);
        }

        PressOnDisk press = PressOnDisk.Read(text, path, example);
        Assert.True(press.Rig is not null, string.Join("; ", press.Faults.Select(f => $"{f.Line} {f.Path}: {f.Found}")));
        return press;
    }

    /// <summary>The same, checked.</summary>
    public static PressCheck Check(string example, params (string Old, string New)[] changes) => PressCheck.Of(Open(example, changes).Rig!);

    /// <summary>The railing shop's press with arms of a steel that has papers.</summary>
    public static (string, string)[] ArmsOf(string steel) => [("steel: unknown", "steel: " + steel)];
}
