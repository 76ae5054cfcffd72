using Ramwright.Files.Binding;
using Ramwright.Presses;

namespace Ramwright.Files.Tests;

/// <summary>In every list that a press file can hold, an item that cannot be read is a fault, and never trips a rule about its neighbours.</summary>
public sealed class BrokenItemsTest
{
    public static TheoryData<string, string, string> Lists()
    {
        var lists = new TheoryData<string, string, string>();
        Collect(RecordShape.Of(typeof(Press)), "", "", "", lists);
        return lists;
    }

    [Theory, MemberData(nameof(Lists))]
    public void EndInFaults(string path, string before, string after)
    {
        string[] lists = ["\"\"", "{}", "\"\", {}", "{}, \"\", {}", "[]", "{}, {}, {}, \"\"", "\"\", \"\", \"\", \"\""];
        Assert.All(lists, list =>
        {
            PressReading reading = PressFile.Read($"{before}[ {list} ]{after}\n", "any.press.yaml", TestShelf.Shelf);

            Assert.Null(reading.Press);
            if (list != "{}")
                Assert.Contains(reading.Faults, f => f.Path.StartsWith(path, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void ThereAreMany() => Assert.True(Lists().Count >= 12);

    private static void Collect(RecordShape shape, string path, string before, string after, TheoryData<string, string, string> lists)
    {
        foreach (RecordShape kind in shape.Kinds)
            Collect(kind, path, $"{before}kind: {kind.Kind}, ", after, lists);
        string dot = path.Length == 0 ? "" : ".";
        foreach (KeyShape key in shape.Keys)
        {
            string open = $"{before}{key.Key}: ";
            switch (key.Form)
            {
                case KeyForm.Record:
                    Collect(RecordShape.Of(key.Element), path + dot + key.Key, open + "{ ", " }" + after, lists);
                    break;
                case KeyForm.Records:
                    lists.Add(path + dot + key.Key, open, after);
                    Collect(RecordShape.Of(key.Element), $"{path}{dot}{key.Key}.0", open + "[ { ", " } ]" + after, lists);
                    break;
                case KeyForm.Texts:
                    lists.Add(path + dot + key.Key, open, after);
                    break;
            }
        }
    }
}
