using Ramwright.Files.Binding;
using Ramwright.Files.Yaml;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Tests;

/// <summary>The example of every key, on an inch tape: it may be written in its place, and is not metric.</summary>
public sealed class InchExampleTest
{
    [Fact]
    public void EveryExampleMayStandInItsPlace()
    {
        KeyShape[] keys = [.. Keys(RecordShape.Of(typeof(Press)), []).Where(k => k.Form is KeyForm.Measure or KeyForm.StockName)];
        Assert.True(keys.Length > 150, $"{keys.Length} keys");
        foreach (KeyShape key in keys)
        {
            string example = key.ExampleIn(UnitSystem.Imperial), line = key.ExampleLine(UnitSystem.Imperial);
            var faults = new FaultList("x", new SourceText(line));
            object? read = new ValueReader(faults, StockTables.Built, UnitSystem.Imperial).Read(new TextNode(new Place(1, key.Key.Length + 3, key.Key.Length + 2, example.Length), example, true, false), key, key.Key);

            Assert.True(read is not null && faults.Count == 0, $"{line}: {FaultText.All(faults.InOrder())}");
            Assert.DoesNotMatch(@"\d ?(mm|m|bar|kN|N|kg|L|mL|MPa|GPa|°C|L/min|cm2|m2|kW|N·m|mm/s|mm/m|N/mm|cm3/rev|t)$|^(UPN|HEB|M\d)|^S\d\d\d$", example);
        }
    }

    private static IEnumerable<KeyShape> Keys(RecordShape shape, HashSet<Type> seen)
    {
        if (!seen.Add(shape.Type))
            return [];
        return shape.Kinds.SelectMany(k => Keys(k, seen))
            .Concat(shape.Keys.SelectMany(k => k.Form is KeyForm.Record or KeyForm.Records ? Keys(RecordShape.Of(k.Element), seen) : [k]));
    }
}
