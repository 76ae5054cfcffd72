using CsCheck;
using Ramwright.Files.Editing;

namespace Ramwright.Files.Tests.Editing;

/// <summary>Changing a value changes that value and nothing else.</summary>
public class TextEditTest
{
    private const string Press = """
        # the yard's press
        name: Yard   # painted green
        wanted: 20 t

        cylinder: { kind: double-acting, bore: 100 mm }   # from the seller
        pump:
          kind: electric
          motor: 3 hp      # old
        lines:
          - { duty: pressure, bore: 10 mm }
          - duty: return   # thick
            bore: 12 mm
        frame:
          kind: closed
          daylight: 600 mm
          width: 500 mm
          crown:
            section: HEB 160

          # uprights from the heap
          upright: { section: HEB 140 }
        """;

    private static readonly string[] Texts = ["1", "9 mm", "a, b", "x: y", "it's", "\"q\"", "- z", "#h", "{k}", "é ½ µ"];

    [Theory]
    [InlineData("wanted", "25 t", "wanted: 20 t", "wanted: 25 t")]
    [InlineData("name", "Yard: new", "name: Yard   #", "name: 'Yard: new'   #")]
    [InlineData("cylinder.bore", "4 in", "bore: 100 mm }", "bore: 4 in }")]
    [InlineData("cylinder.bore", "1,000 mm", "bore: 100 mm }", "bore: '1,000 mm' }")]
    [InlineData("pump.motor", "2.2 kW", "motor: 3 hp      #", "motor: 2.2 kW      #")]
    [InlineData("frame.crown.section", "2 x UPN 200", "section: HEB 160", "section: 2 x UPN 200")]
    [InlineData("lines.1.bore", "1/2 in", "    bore: 12 mm", "    bore: 1/2 in")]
    [InlineData("cylinder.rod", "50 mm", "bore: 100 mm }", "bore: 100 mm, rod: 50 mm }")]
    [InlineData("pump.relief", "210 bar", "motor: 3 hp      # old\n", "motor: 3 hp      # old\n  relief: 210 bar\n")]
    [InlineData("frame.crown.steel", "S355", "section: HEB 160\n", "section: HEB 160\n    steel: S355\n")]
    [InlineData("frame.upright.steel", "S355", "{ section: HEB 140 }", "{ section: HEB 140, steel: S355 }")]
    [InlineData("frame.bed.section", "HEB 180", "{ section: HEB 140 }", "{ section: HEB 140 }\n  bed:\n    section: HEB 180")]
    [InlineData("loading.side-load", "2 %", "{ section: HEB 140 }", "{ section: HEB 140 }\nloading:\n  side-load: 2 %")]
    [InlineData("lines.2.bore", "6 mm", "    bore: 12 mm\n", "    bore: 12 mm\n  - { bore: 6 mm }\n")]
    public void Sets_a_value_and_leaves_the_rest(string path, string value, string was, string now)
    {
        string changed = TextEdit.Set(Press, path, value);
        Assert.Equal(Press.Replace(was, now, StringComparison.Ordinal), changed);
        Assert.Equal(value, TextAt(changed, path));
    }

    [Theory]
    [InlineData("pump.motor", "  motor: 3 hp      # old\n", "  # old\n")]
    [InlineData("frame.width", "  width: 500 mm\n", "")]
    [InlineData("cylinder.bore", ", bore: 100 mm }", " }")]
    [InlineData("cylinder.kind", "{ kind: double-acting, bore", "{ bore")]
    [InlineData("frame.crown", "  crown:\n    section: HEB 160\n", "")]
    [InlineData("lines.1.duty", "- duty: return   # thick\n    bore", "- # thick\n    bore")]
    [InlineData("lines.0", "  - { duty: pressure, bore: 10 mm }\n", "")]
    [InlineData("frame.upright", "\n  upright: { section: HEB 140 }", "")]
    [InlineData("loading.side-load", "", "")]
    public void Removes_a_value_and_leaves_the_rest(string path, string was, string now) =>
        Assert.Equal(was.Length == 0 ? Press : Press.Replace(was, now, StringComparison.Ordinal), TextEdit.Remove(Press, path));

    [Fact]
    public void Begins_an_empty_file() => Assert.Equal("cylinder:\n  bore: 100 mm\n", TextEdit.Set("", "cylinder.bore", "100 mm"));

    [Fact]
    public void Keeps_the_line_ends_of_windows()
    {
        string file = Press.ReplaceLineEndings("\r\n");
        string changed = TextEdit.Set(TextEdit.Remove(file, "frame.width"), "frame.width", "500 mm");
        Assert.DoesNotContain("\n", changed.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal("500 mm", TextAt(changed, "frame.width"));
    }

    [Fact]
    public void Refuses_a_path_through_a_value() =>
        Assert.Throws<ArgumentException>(() => TextEdit.Set(Press, "wanted.force", "1 t"));

    [Fact]
    public void Whatever_the_layout_only_the_value_changes() =>
        Gen.Select(Gen.Int, Gen.Int, Gen.Int[0, Texts.Length - 1].Select(i => Texts[i])).Sample((seed, pick, value) =>
        {
            string text = RandomText(seed);
            var before = Values(text);
            string[] paths = [.. before.Keys.Where(p => !p.EndsWith("kind", StringComparison.Ordinal))];
            string path = paths[(uint)pick % paths.Length];
            string changed = TextEdit.Set(text, path, value);
            var after = Values(changed);
            Assert.Equal(value, after[path]);
            foreach ((string other, string said) in before.Where(b => b.Key != path))
                Assert.Equal(said, after[other]);
            Assert.Equal(before.Count, after.Count);
            // and nothing outside its place: what is left without the value is the same text
            SourceMap.Spot spot = PressFile.Read(text, "", shelf: null).Map.Spots[path], put = PressFile.Read(changed, "", shelf: null).Map.Spots[path];
            Assert.Equal(text[..spot.Value.Offset] + text[(spot.Value.Offset + spot.Value.Length)..],
                changed[..put.Value.Offset] + changed[(put.Value.Offset + put.Value.Length)..]);
        }, iter: 300, threads: 1);

    [Fact]
    public void Whatever_the_layout_only_the_key_goes() =>
        Gen.Select(Gen.Int, Gen.Int).Sample((seed, pick) =>
        {
            string text = RandomText(seed);
            var before = Values(text);
            string[] paths = [.. before.Keys.Where(p => !p.EndsWith("kind", StringComparison.Ordinal) && !char.IsDigit(p[^1]))];
            string path = paths[(uint)pick % paths.Length];
            var after = Values(TextEdit.Remove(text, path));
            Assert.False(after.ContainsKey(path));
            foreach ((string other, string said) in before.Where(b => b.Key != path))
                Assert.Equal(said, after[other]);
        }, iter: 300, threads: 1);

    private static string RandomText(int seed)
    {
        var writer = new ReadsBackTest.RandomPress(new Random(seed));
        writer.Press();
        return writer.Text;
    }

    private static string? TextAt(string text, string path) => Values(text).GetValueOrDefault(path);

    // every value that was written, as YAML reads it
    private static Dictionary<string, string> Values(string text)
    {
        PressReading read = PressFile.Read(text, "", shelf: null);
        return read.Map.Spots.Where(s => s.Value.IsText && s.Value.Value.Length > 0)
            .ToDictionary(s => s.Key, s => Plain(read.Text.Substring(s.Value.Value.Offset, s.Value.Value.Length)));
    }

    private static string Plain(string raw) => raw.Length > 1 && raw[0] is '\'' or '"'
        ? new YamlDotNet.Serialization.DeserializerBuilder().Build().Deserialize<string>(raw)
        : raw;
}
