using System.Reflection;
using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Web.Forms;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests;

/// <summary>The form holds every key, what the file says of it, and what is wrong.</summary>
public sealed class PressFormTest : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private OpenPress Opened(string text)
    {
        File.WriteAllText(_folder.Path("press"), text);
        return new OpenPress(_folder.Path("press"));
    }

    private static IEnumerable<FormItem> All(PressForm form) => form.Groups.SelectMany(g => g.Items).SelectMany(Down);

    private static IEnumerable<FormItem> Down(FormItem item) => item switch
    {
        FormBox box => [box, .. box.Items.SelectMany(Down)],
        FormList list => [list, .. list.Items.SelectMany(Down)],
        _ => [item],
    };

    public static TheoryData<string> Examples() => ["wherry-yard", "railing-shop", "drainage-mill-puller"];

    [Theory, MemberData(nameof(Examples))]
    public void EveryValueOfTheFileStandsOnTheFormOnceAsItIsWritten(string name)
    {
        PressNow now = Opened(Example.Text(name)).Now;
        PressReading reading = now.Read.Press.Reading;

        var form = All(PressForm.Of(now, UnitSystem.Metric)).ToList();

        var values = form.OfType<FormValue>().ToDictionary(v => v.Path, v => v.Written);
        foreach (FormBox box in form.OfType<FormBox>().Where(b => b.KindSaid))
            values.Add(box.Path + ".kind", box.Kind);
        foreach ((string path, SourceMap.Spot spot) in reading.Map.Spots.Where(s => s.Value.IsText))
            Assert.Equal(reading.Text.Substring(spot.Value.Offset, spot.Value.Length).Trim('\'', '"'), values[path]);
    }

    [Fact]
    public void EveryKeyOfThePressHasItsPlace()
    {
        var paths = All(PressForm.Of(Opened(Example.Text("wherry-yard")).Now, UnitSystem.Metric)).Select(i => i.Path).ToHashSet();

        string[] lost =
        [
            .. Keys(typeof(Press)).Concat(Keys(typeof(PressFrame)).Concat(Keys(typeof(ClosedFrame))).Select(k => "frame." + k)).Where(k => !paths.Contains(k)),
        ];
        Assert.Empty(lost);
    }

    private static IEnumerable<string> Keys(Type record) =>
        record.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(p => p.CanWrite).Select(p => KeyNames.Written(p.Name));

    [Fact]
    public void AnAssumedValueStandsInItsFieldWithTheReason()
    {
        PressNow now = Opened("wanted: 20 t\ncylinder: { kind: double-acting, bore: 100 mm }\npump: { kind: electric, motor: 3 hp }\n"
            + "frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }\n").Now;
        var fields = All(PressForm.Of(now, UnitSystem.Metric)).OfType<FormValue>().ToDictionary(v => v.Path);

        Assert.NotEmpty(now.Check!.Assumed);
        AssumedMeasure rod = now.Check.Assumed.OfType<AssumedMeasure>().Single(a => a.What == "cylinder.rod");
        Assert.Equal("", fields["cylinder.rod"].Written);
        Assert.Equal(rod.Value(UnitSystem.Metric), fields["cylinder.rod"].Assumed);
        Assert.Equal(rod.Why, fields["cylinder.rod"].Why);
    }

    [Fact]
    public void ExamplesAreOfTheReadersTapeAndMembersHaveWhatTheFrameSays()
    {
        PressNow now = Opened("wanted: 20 US ton\ncylinder: { kind: double-acting, bore: 4 in }\npump: { kind: electric, motor: 5 hp }\n"
            + "frame: { kind: closed, daylight: 24 in, width: 20 in, section: W6x16, bed: { section: W8x31 } }\n").Now;
        var fields = All(PressForm.Of(now, UnitSystem.Imperial)).OfType<FormValue>().ToDictionary(v => v.Path);

        Assert.Equal("24 in", fields["frame.daylight"].Example);
        Assert.Equal("5 in", fields["cylinder.barrel-outside"].Example);
        Assert.Empty(fields.Values.Where(v => v.Example.EndsWith(" mm", StringComparison.Ordinal)).Select(v => v.Path));
        Assert.Equal(("W6x16", ""), (fields["frame.crown.section"].Assumed, fields["frame.crown.section"].Written));
        Assert.Equal(("", "W8x31"), (fields["frame.bed.section"].Assumed, fields["frame.bed.section"].Written));
    }

    [Theory, InlineData("12 mm", "1/2 in"), InlineData("8 mm", "5/16 in"), InlineData("60 mm", "2-3/8 in"), InlineData("250 mm", "10 in"), InlineData("1/4 in", "1/4 in"), InlineData("about", "about")]
    public void AnExampleIsRoundedToWhatIsBought(string metric, string imperial) =>
        Assert.Equal(imperial, ExampleSize.In(metric, Dimension.Length, UnitSystem.Imperial));

    [Fact]
    public void AFaultStandsAtItsFieldOrAmongThoseThatHaveNone()
    {
        PressNow now = Opened(Example.Text("wherry-yard").Replace("steel: S275\n", "steel: S275JRR\n", StringComparison.Ordinal) + "colour: green\n").Now;
        var form = PressForm.Of(now, UnitSystem.Metric);

        FormItem steel = All(form).Single(i => i.Path == "frame.steel");
        Assert.Contains("S275JRR", Assert.Single(steel.Faults).Found, StringComparison.Ordinal);
        Assert.Contains("colour", Assert.Single(form.Elsewhere).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherKindTakesOutTheKeysThatItDoesNotKnow()
    {
        OpenPress press = Opened(Example.Text("wherry-yard"));
        string[] foreign = [.. PressForm.Foreign(press.Now, "pump", "hand")];

        PressNow now = press.SetKind("pump", "hand", foreign);
        press.Remove("pump.unload-at");         // a hand pump knows the key, but has no large piston here
        PressNow whole = press.Set("pump.per-stroke", "2.5 mL");

        Assert.Contains("pump.motor", foreign);
        Assert.DoesNotContain("pump.relief", foreign);
        Assert.All(now.Read.Faults, f => Assert.DoesNotContain("motor", f.Path, StringComparison.Ordinal));
        Assert.True(whole.Read.Check is not null, string.Join('\n', whole.Read.Faults));
    }

    [Theory]
    [InlineData("100x50 channel")]
    [InlineData("UPN")]
    public void ALooseWordFindsSections(string typed) =>
        Assert.NotEmpty(StockNames.Fitting(StockTables.Built, StockKind.Section, typed));

    [Theory]
    [InlineData("--port 0 --no-browser", true)]
    [InlineData("", true)]
    [InlineData("--port x", false)]
    [InlineData("--port 70000", false)]
    [InlineData("--lan", true)]
    [InlineData("--wan", false)]
    [InlineData("no-such-file.press.yaml", false)]
    public void WordsOfTheCommandLineAreFollowedOrRefusedWithAReason(string words, bool good)
    {
        (BenchArguments? arguments, string fault) = BenchArguments.Read(words.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(good, arguments is not null);
        Assert.Equal(good, fault.Length == 0);
    }
}
