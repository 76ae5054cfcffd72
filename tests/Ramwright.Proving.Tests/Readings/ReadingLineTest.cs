using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Tests.Readings;

public class ReadingLineTest
{
    private static Reading Good(string line)
    {
        Reading? reading = ReadingLine.Read(line, 7, "x.readings", out PlacedFault? fault);
        Assert.True(reading is not null, fault?.Found);
        Assert.Null(fault);
        return reading;
    }

    private static PlacedFault Bad(string line)
    {
        Assert.Null(ReadingLine.Read(line, 7, "x.readings", out PlacedFault? fault));
        Assert.Equal(7, fault!.Line);
        Assert.Equal(line, fault.Source);
        Assert.InRange(fault.Column, 1, line.Length + 1);
        Assert.NotEqual("", fault.Wanted);
        return fault;
    }

    [Fact]
    public void AWholeLineIsRead()
    {
        Reading r = Good("2026-03-14T10:12 Mara dial 0.62 mm at=Opening pressure=105 bar way=up step=4 instrument=D1 ambient=14 °C note=\"read twice, = sign inside\"  # checked");
        Assert.Equal(new DateOnly(2026, 3, 14), r.Day);
        Assert.Equal(new TimeOnly(10, 12), r.Time);
        Assert.Equal("Mara", r.Who);
        Assert.Equal(ReadingKind.Dial, r.Kind);
        Near.Relative(0.62e-3, r.Value, 1e-12);
        Near.Relative(105e5, r.Pressure!.Value, 1e-12);
        Assert.Equal(Way.Up, r.Way);
        Assert.Equal(4, r.Step);
        Assert.Equal("opening", r.At);
        Assert.Equal("D1", r.Instrument);
        Near.Relative(14, r.Ambient!.Value, 1e-12);
        Assert.Equal("read twice, = sign inside", r.Note);
        Assert.Equal(7, r.Line);
    }

    [Fact]
    public void UnitsAreThePersonsOwn()
    {
        Near.Relative(3000 * 6894.757, Good("2026-03-14 Mara top-pressure 3000 psi").Value, 1e-6);
        Near.Relative(4.921 * 0.0254, Good("2026-03-14 Mara bore 4.921\"").Value, 1e-9);
        Near.Relative(0.0254 * 4.875, Good("2026-03-14 Mara bore 4-7/8 in").Value, 1e-9);
        Near.Relative(600, Good("2026-03-14 Mara leak-down 3 bar over=10 min").Over!.Value, 1e-9);
    }

    [Fact]
    public void TimeMayStandApartAndNamesInQuotes()
    {
        Reading r = Good("2026-03-14 10:12 \"Mara of the yard\" oil 41 °C");
        Assert.Equal("Mara of the yard", r.Who);
        Assert.Equal(new TimeOnly(10, 12), r.Time);
    }

    [Fact]
    public void AnInstrumentSaysHowFarItMayBeOff()
    {
        Reading r = Good("2026-03-14 Mara instrument G1 measures=pressure range=400 bar class=1.6 resolution=5 bar calibrated=2026-01-02");
        Assert.Equal(Dimension.Pressure, r.Measures);
        Near.Relative(400e5, r.Range!.Value, 1e-12);
        Assert.Equal(new DateOnly(2026, 1, 2), r.Calibrated);
        Near.Relative(0.02e-3, Good("2026-03-14 Mara instrument D1 limit=0.02 mm measures=length").Limit!.Value, 1e-12);
        Assert.Contains("how far", Bad("2026-03-14 Mara instrument G1 measures=pressure range=400 bar").Found, StringComparison.Ordinal);
        Assert.Contains("measures=", Bad("2026-03-14 Mara instrument G1 limit=0.02 mm").Wanted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "ends before")]
    [InlineData("yesterday Mara bore 125 mm", "no day")]
    [InlineData("2026-13-40 Mara bore 125 mm", "no day")]
    [InlineData("2026-03-14", "who read it")]
    [InlineData("2026-03-14 Mara", "what was read")]
    [InlineData("2026-03-14 Mara boer 125 mm", "nothing that is read is called")]
    [InlineData("2026-03-14 Mara bore", "no value")]
    [InlineData("2026-03-14 Mara bore 125", "unit")]
    [InlineData("2026-03-14 Mara bore 125 bar", "bar")]
    [InlineData("2026-03-14 Mara bore -125 mm", "below zero")]
    [InlineData("2026-03-14 Mara bore 0 mm", "zero")]
    [InlineData("2026-03-14 Mara bore 125 mm travel=3 mm", "takes no travel")]
    [InlineData("2026-03-14 Mara dial 0.2 mm at=bed", "needs pressure=")]
    [InlineData("2026-03-14 Mara dial 0.2 mm at=bed pressure=", "no value")]
    [InlineData("2026-03-14 Mara dial 0.2 mm at=bed at=crown pressure=3 bar", "stands twice")]
    [InlineData("2026-03-14 Mara dial 0.2 mm at=bed pressure=3 bar way=sideways", "cannot be")]
    [InlineData("2026-03-14 Mara look fine at=welds", "cannot be")]
    [InlineData("2026-03-14 Mara note \"never closed", "not closed")]
    [InlineData("2026-03-14 Mara squeezes 3.5 pressure=100 bar", "whole")]
    public void WhatCannotBeReadIsSaid(string line, string found) => Assert.Contains(found, Bad(line).Found, StringComparison.Ordinal);

    [Fact]
    public void TheNearestWordIsOffered() => Assert.Equal("top-pressure", Bad("2026-03-14 Mara top-presure 210 bar").Nearest);

    [Fact]
    public void EveryKindsOwnExampleCanBeRead()
    {
        foreach (ReadingForm form in ReadingForm.All)
        {
            string keys = string.Concat(form.Needs.Select(n => " " + n + "=" + n switch
            {
                "at" => "crown",
                "pressure" => "100 bar",
                "travel" => "200 mm",
                "over" => "10 min",
                "width" => "4.8 mm",
                "bore" => "125 mm",
                "measures" => "pressure limit=2 bar",
                _ => "1",
            }));
            Reading r = Good($"2026-03-14 Mara {form.Name} {form.Example}{keys}");
            Assert.Equal(form.Kind, r.Kind);
            Assert.Same(form, ReadingForm.Of(form.Kind));
        }
    }

    [Fact]
    public void WhateverStandsInALineItIsReadOrSaid()
    {
        var random = new Random(5);
        const string Signs = "abz =\"#-/°0159.:\t,;é∛\u0301\ud83d\ude00";
        string[] starts = ["2026-03-14 Mara dial 0.2 mm at=bed pressure=3 bar ", "2026-03-14T09:00 M look ok at=", "", "2026-03-14 Mara instrument X measures=time limit="];
        for (int i = 0; i < 5000; i++)
        {
            string line = starts[i % starts.Length] + new string([.. Enumerable.Range(0, random.Next(40)).Select(_ => Signs[random.Next(Signs.Length)])]);
            Reading? reading = ReadingLine.Read(line, 1, "x", out PlacedFault? fault);
            Assert.True(reading is null != fault is null, line);
            if (reading is not null)
                Assert.True(double.IsFinite(reading.Value) && (reading.Pressure is not { } p || double.IsFinite(p)), line);
        }
    }
}
