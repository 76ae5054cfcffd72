using System.Text.Json;
using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Tests.Cli;

/// <summary>Springs of joints are kept beside the press file, taken from there, and left when the joint changes.</summary>
public sealed class JointsFileTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-joints-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public void WhatSolidKeepsCheckTakes()
    {
        string file = Path.Combine(_folder, "shop.press.yaml");
        File.Copy(Run.Example("railing-shop.press.yaml"), file);
        RigSprings? before = PressOnDisk.Open(file).Rig!.Springs;

        Assert.Contains("shop.joints.json is written", Run.Command("solid", file, "--cell", "40 mm", "--keep-joints").Text.ReplaceLineEndings(" "));
        RigSprings kept = PressOnDisk.Open(file).Rig!.Springs!;
        JsonElement check = JsonDocument.Parse(Run.Command("check", file, "--json").Text).RootElement;
        JsonElement other = JsonDocument.Parse(Run.Command("check", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;

        Assert.Null(before);
        Assert.True(kept.Upper.Beam is > 1e6 and < 1e9, $"{kept.Upper.Beam:G4} N·m/rad");
        Assert.NotEqual(other.ToString(), check.ToString());
        Assert.Equal(4, kept.Upper.Toes.Count);
        Assert.All(kept.Upper.Toes, t => Assert.NotEmpty(t.Lines));
        // the arms are bars on edge, the column's flange is a face
        Assert.All(kept.Upper.Toes, t => Assert.Equal(t.OnBeam, t.OnEdge));
        string[] Ids(JsonElement of) => [.. of.GetProperty("rungs").EnumerateArray().Select(r => r.GetProperty("id").GetString()!)];
        Assert.Equal(["lower-arm-face-hot-spot-fatigue", "lower-arm-toe-hot-spot-fatigue", "upper-arm-face-hot-spot-fatigue", "upper-arm-toe-hot-spot-fatigue"],
            Ids(check).Except(Ids(other)).Order(StringComparer.Ordinal));
        Assert.Contains("hot-spot stress in the frame's plane", Run.Command("explain", file, "upper-arm-toe-hot-spot-fatigue").Text.ReplaceLineEndings(" "));
        Assert.Contains("at 4, 8 and 12 mm, on an edge", string.Join(" ", Run.Command("explain", file, "upper-arm-toe-hot-spot-fatigue").Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

        File.WriteAllText(file, File.ReadAllText(file).Replace("leg: 8 mm", "leg: 7 mm", StringComparison.Ordinal));
        Assert.Null(PressOnDisk.Open(file).Rig!.Springs);       // another weld, another joint: the rules again
        Assert.Contains("shop.joints.json is of other joints than the press has now and is not used", Plain(Run.Command("check", file).Text));
    }

    [Theory, InlineData(""), InlineData("not json"), InlineData("{}"), InlineData("[]"), InlineData("{\"method\": \"one\"}"), InlineData("{\"method\": #}"), InlineData("{\"method\": #, \"joints\": [{}]}")]
    [InlineData("{\"method\": #, \"joints\": 3}"), InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"toes\": 3}]}"), InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\"}]}")]
    [InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"toes\": [{\"on\": \"beam\", \"side\": \"inner\", \"thicknessMm\": 10, \"places\": [{\"paPerNm\": \"much\"}]}]}]}")]
    [InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"toes\": [{\"on\": \"beam\", \"side\": \"inner\", \"thicknessMm\": -10, \"places\": []}]}]}")]
    [InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"beamTurningNmPerRad\": -1, \"toes\": []}]}"), InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"beamTurningNmPerRad\": 0, \"toes\": []}]}")]
    [InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"beamTurningNmPerRad\": 1e-300, \"toes\": []}]}"), InlineData("{\"method\": #, \"joints\": [{\"joint\": \"x\", \"alongUprightNPerM\": null, \"toes\": []}]}")]
    public void AFileThatHoldsNothingIsPassedOverAndToldOf(string text)
    {
        string file = Path.Combine(_folder, "shop.press.yaml");
        File.Copy(Run.Example("railing-shop.press.yaml"), file);
        File.WriteAllText(JointsFile.PathOf(file), text.Replace("#", LocalToes.Method.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal));

        Assert.Null(PressOnDisk.Open(file).Rig!.Springs);
        (int code, string said) = Run.Command("check", file);
        Assert.Equal(Run.Command("check", Run.Example("railing-shop.press.yaml")).Code, code);     // as without them
        Assert.Contains("shop.joints.json cannot be read and is not used", Plain(said));
    }

    [Fact]
    public void WhereNoneCanBeFoundNobodyIsSentToLook()
    {
        Assert.EndsWith("They cannot be found anew: a pin turns freely.", JointsFile.OfOthers("shop.joints.json", "a pin turns freely"), StringComparison.Ordinal);
        Assert.Contains("--keep-joints", JointsFile.OfOthers("shop.joints.json", null), StringComparison.Ordinal);
    }

    private static string Plain(string said) => string.Join(' ', said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void AFileOfAnEarlierWayIsToldOfAndFoundAnew()
    {
        string file = Path.Combine(_folder, "shop.press.yaml");
        File.Copy(Run.Example("railing-shop.press.yaml"), file);
        Run.Command("solid", file, "--cell", "40 mm", "--keep-joints");
        string path = JointsFile.PathOf(file), text = File.ReadAllText(path);
        File.WriteAllText(path, text.Replace($"\"method\": {LocalToes.Method}", "\"method\": 0", StringComparison.Ordinal));
        Assert.Null(PressOnDisk.Open(file).Rig!.Springs);
        Assert.Contains("was found by an earlier way of solving joints", Plain(Run.Command("check", file).Text));

        Run.Command("solid", file, "--cell", "40 mm", "--keep-joints");

        Assert.Equal(text, File.ReadAllText(path));
    }
}
