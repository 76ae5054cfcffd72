using System.Text.Json;
using Ramwright.Files;
using Ramwright.Presses;

namespace Ramwright.Tests.Cli;

/// <summary>Springs of joints are kept beside the press file, taken from there, and left when the joint changes.</summary>
public class JointsFileTest
{
    [Fact]
    public void WhatSolidKeepsCheckTakes()
    {
        string folder = Directory.CreateTempSubdirectory().FullName, file = Path.Combine(folder, "shop.press.yaml");
        File.Copy(Run.Example("railing-shop.press.yaml"), file);
        RigSprings? before = PressOnDisk.Open(file).Rig!.Springs;

        Assert.Contains("shop.joints.json is written", Run.Command("solid", file, "--cell", "40 mm", "--keep-joints").Text.ReplaceLineEndings(" "));
        RigSprings kept = PressOnDisk.Open(file).Rig!.Springs!;
        JsonElement check = JsonDocument.Parse(Run.Command("check", file, "--json").Text).RootElement;
        JsonElement other = JsonDocument.Parse(Run.Command("check", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;

        Assert.Null(before);
        Assert.True(kept.Upper.Beam is > 1e6 and < 1e9, $"{kept.Upper.Beam:G4} N·m/rad");
        Assert.NotEqual(other.ToString(), check.ToString());

        File.WriteAllText(file, File.ReadAllText(file).Replace("leg: 8 mm", "leg: 7 mm", StringComparison.Ordinal));
        Assert.Null(PressOnDisk.Open(file).Rig!.Springs);       // another weld, another joint: the rules again
    }

    [Theory, InlineData(""), InlineData("not json"), InlineData("{}"), InlineData("{\"joints\": [{}]}"), InlineData("{\"joints\": 3}")]
    public void AFileThatHoldsNothingIsPassedOver(string text)
    {
        string folder = Directory.CreateTempSubdirectory().FullName, file = Path.Combine(folder, "shop.press.yaml");
        File.Copy(Run.Example("railing-shop.press.yaml"), file);
        File.WriteAllText(JointsFile.PathOf(file), text);

        Assert.Null(PressOnDisk.Open(file).Rig!.Springs);
        Assert.InRange(Run.Command("check", file).Code, 0, 1);
    }
}
