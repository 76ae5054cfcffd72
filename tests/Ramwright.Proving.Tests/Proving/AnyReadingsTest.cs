using System.Globalization;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

/// <summary>Whatever is written down, every answer is a number or is left out, and no page falls over.</summary>
public class AnyReadingsTest
{
    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    public void NoReadingsBreakTheAnswers(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        var random = new Random(example.Length);
        for (int turn = 0; turn < 15; turn++)
        {
            string[] lines = [.. Enumerable.Range(0, random.Next(1, 40)).Select(_ => Line(random))];
            ReadingLog log = ReadingLog.Read(string.Concat(lines.Select(l => l + "\n")), "x");
            var proof = new Proof(check, log, turn % 2 == 0 ? UnitSystem.Metric : UnitSystem.Imperial, new DateOnly(2027, 1, 1));
            string json = ProveJson.Text(proof), record = Certificate.Html(proof), sheet = PlanSheet.Html(proof);
            foreach (string text in new[] { json, record, sheet })
            {
                Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
            }
        }
    }

    private static readonly string[] Places = ["opening", "crown", "bed", "throat", "crown-joint", "nowhere"];

    private static string Line(Random random)
    {
        ReadingForm form = ReadingForm.All[random.Next(ReadingForm.All.Count)];
        string value = form.Measures is { } d ? Value(d, random) : form.Words.Count > 0 ? form.Words[random.Next(form.Words.Count)] : "X" + random.Next(3).ToString(CultureInfo.InvariantCulture);
        string keys = string.Concat(form.Needs.Concat(form.Takes.Where(_ => random.Next(2) == 0)).Concat(random.Next(3) == 0 ? ["instrument", "step"] : []).Select(k => $" {k}={Key(k, random)}"));
        return $"2026-{random.Next(1, 13):00}-{random.Next(1, 28):00} W {form.Name} {value}{keys}";
    }

    private static string Key(string key, Random random) => ReadingForm.KeyMeasures(key) is { } d ? Value(d, random) : key switch
    {
        "at" => Places[random.Next(Places.Length)],
        "way" => random.Next(2) == 0 ? "up" : "down",
        "instrument" => "X" + random.Next(3).ToString(CultureInfo.InvariantCulture),
        "measures" => "pressure",
        "calibrated" => "2026-01-01",
        "range" or "limit" or "resolution" => Value(Dimension.Pressure, random),
        _ => "w",
    };

    // mostly sensible, now and then absurd
    private static string Value(Dimension d, Random random)
    {
        double size = random.Next(8) switch { 0 => 0, 1 => 1e-12, 2 => 1e12, 3 => 1, _ => 1 + 300 * random.NextDouble() };
        if (d == Dimension.Count)
            size = Math.Floor(size);
        string unit = Readout.UnitFor(d, UnitSystem.Metric).Symbol;
        return string.Create(CultureInfo.InvariantCulture, $"{size:0.############} {unit}").TrimEnd();
    }

    [Fact]
    public void AFallOfTheReceiverIsFreeAir()
    {
        var row = new Reference("PU-27", "mass balance, isothermal: 77.8 L/min mean of 350 L/min, 100 L receiver", Trust.FromMemoryAndRecomputed);
        // the receiver drops 0.62 bar in 40 s while 258 of the 350 L/min come from the compressor
        var w = new Working();
        row.Near("free air, L", (350 - 258) * 40 / 60.0, Compared.FreeAir(0.1, 0.62e5, w) * 1e3, 0.01);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void WhatLiesApartIsSaid()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        IReadOnlyList<Compared> all = Compared.Of(check, ProvedPress.Book(check, "bore 125.02 mm", "relief 190 bar", "time-back 4 s travel=200 mm", "time-out 8 s travel=200 mm"));
        Assert.False(all.Single(c => c.What == "bore").IsApart);
        Assert.False(all.Single(c => c.What == "approach").IsApart);
        Assert.True(all.Single(c => c.What == "relief valve opens").IsApart);
    }
}
