using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using CsCheck;
using Ramwright.Files.Binding;
using Ramwright.Files.Yaml;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Tests;

/// <summary>Presses of random valid values, written in random layout, read back as they were.</summary>
public sealed class ReadsBackTest
{
    [Fact]
    public void ARandomPressReadsBack() =>
        Gen.Int.Sample(seed =>
        {
            var writer = new RandomPress(new Random(seed));
            Press written = writer.Press();
            string text = writer.Text;

            // The binder alone: random values rarely fit together.
            var faults = new FaultList("random", new SourceText(text));
            Node top = YamlTree.Read(faults, out int broken)!;
            Press? read = new Binding.Binder(faults, new SourceMap(), TestShelf.Shelf, broken == 0, Quantities.UnitSystem.Metric).Bind(top);

            Assert.True(faults.Count == 0, FaultText.All(faults.InOrder()) + text);
            Assert.Null(Difference(written, read, ""));
        }, iter: 500, threads: 1);

    /// <summary>What rules and resolver let through, the power study takes: whatever cannot be is a fault with a place, never a stray refusal.</summary>
    [Fact]
    public void ARandomPumpAndCylinderAreStudiedOrRefusedWithAPlace()
    {
        int studied = 0;
        Gen.Int.Sample(seed =>
        {
            var random = new Random(seed);
            // some say little, some nearly everything: what says much clashes often
            double saying = Math.Pow(random.NextDouble(), 2);
            Press press = new RandomPress(random, saying).Press() with { Frame = new ClosedFrame { Daylight = 0.6, Width = 0.5, Section = "HEB 160" } };
            if (PressRules.Of(press, TestShelf.Shelf).Any())
                return;
            try
            {
                Rig rig = Resolver.Resolve(press, TestShelf.Shelf);
                PowerReport power = PowerStudy.Of(rig.Cylinder, rig.Pump, rig.Lines, rig.Oil, new PressStroke(rig.Loading.PressingPart, rig.Loading.PressingForce, rig.Wanted));
                Assert.NotEmpty(PowerFailing.Of(rig, power));
                Interlocked.Increment(ref studied);
            }
            catch (PressFaultsException unbuildable)
            {
                Assert.All(unbuildable.Faults, f => Assert.NotEmpty(f.Path));
            }
        }, iter: 1500, threads: 1);

        Assert.True(studied > 150, $"only {studied} of 1500 were studied");
    }

    [Fact]
    public void TheComparisonSeesADifference()
    {
        var a = new Press { Lines = [new Line { Bore = 1 }], Cylinder = new DoubleActing { Bore = 1 } };

        Assert.Null(Difference(a, a with { Lines = [new Line { Bore = 1 }] }, ""));
        Assert.Equal(".Lines[0].Bore", Difference(a, a with { Lines = [new Line { Bore = 1.0000001 }] }, ""));
        Assert.Equal(".Cylinder", Difference(a, a with { Cylinder = new SingleActing { Bore = 1 } }, ""));
        Assert.Equal(".Oil", Difference(a, a with { Oil = new Oil() }, ""));
    }

    private static string? Difference(object? a, object? b, string path)
    {
        if (a is null || b is null || a.GetType() != b.GetType() && a is not IList)
            return a is null && b is null ? null : path;
        switch (a)
        {
            case double x:
                return Math.Abs(x - (double)b) <= 1e-12 * Math.Abs(x) ? null : path;
            case string or bool or Enum:
                return a.Equals(b) ? null : path;
            case IList list:
                var other = (IList)b;
                return list.Count != other.Count
                    ? path
                    : Enumerable.Range(0, list.Count).Select(i => Difference(list[i], other[i], $"{path}[{i}]")).FirstOrDefault(d => d is not null);
            default:
                return a.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Select(p => Difference(p.GetValue(a), p.GetValue(b), $"{path}.{p.Name}")).FirstOrDefault(d => d is not null);
        }
    }

    /// <param name="random">What chooses.</param>
    /// <param name="saying">The share of the keys that need not be there and still are.</param>
    internal sealed class RandomPress(Random random, double saying = 0.5)
    {
        private readonly StringBuilder _text = new();

        public string Text => _text.ToString();

        public Press Press() => (Press)Record(RecordShape.Of(typeof(Press)), 0, flow: false);

        private object Record(RecordShape shape, int indent, bool flow)
        {
            if (shape.Kinds.Count > 0)
                shape = shape.Kinds[random.Next(shape.Kinds.Count)];
            object record = Activator.CreateInstance(shape.Type)!;
            KeyShape[] keys = [.. shape.Keys.Where(k => k.IsNeeded || random.NextDouble() < saying)];
            random.Shuffle(keys);
            bool first = true;
            if (flow)
                _text.Append("{ ");
            if (shape.Kind is not null)
                Line(indent, flow, ref first, $"kind: {shape.Kind}");
            foreach (KeyShape key in keys)
            {
                Line(indent, flow, ref first, key.Key + ":");
                key.Property.SetValue(record, Value(key, indent, flow));
            }

            // A record must not be empty where nothing was chosen.
            if (first)
                _text.Append(flow ? "" : $"{new string(' ', indent)}{{}}");
            _text.Append(flow ? " }" : "\n");
            return record;
        }

        private void Line(int indent, bool flow, ref bool first, string text)
        {
            _text.Append(first ? "" : flow ? ", " : "\n").Append(flow ? "" : new string(' ', indent)).Append(text);
            first = false;
        }

        private object Value(KeyShape key, int indent, bool flow)
        {
            switch (key.Form)
            {
                case KeyForm.Record:
                    bool inner = flow || random.Next(2) == 0;
                    _text.Append(inner ? " " : "\n");
                    return Record(RecordShape.Of(key.Element), indent + 2, inner);
                case KeyForm.Records or KeyForm.Texts:
                    Array items = Array.CreateInstance(key.Element, random.Next(1, 4));
                    _text.Append(flow ? " [" : "");
                    for (int i = 0; i < items.Length; i++)
                    {
                        _text.Append(flow ? i > 0 ? ", " : "" : $"\n{new string(' ', indent)}  - ");
                        items.SetValue(key.Form == KeyForm.Records ? Record(RecordShape.Of(key.Element), 0, flow: true) : Scalar($"table {i}.csv", flow), i);
                    }

                    _text.Append(flow ? "]" : "");
                    return items;
            }

            _text.Append(' ');
            switch (key.Form)
            {
                case KeyForm.Measure:
                    return Measure(key.Measure!, flow);
                case KeyForm.StockName:
                    return Scalar(Name(key.Stock!.What), flow);
                case KeyForm.Flag:
                    bool yes = random.Next(2) == 0;
                    Scalar(yes ? "yes" : "no", flow);
                    return yes;
                case KeyForm.Word:
                    WordShape word = key.Words[random.Next(key.Words.Count)];
                    Scalar(word.Word, flow);
                    return word.Value;
                default:
                    return Scalar($"the \"{random.Next()}\" it's: # {{x}}, ½ é 😀", flow, quoted: true);
            }
        }

        private double Measure(MeasureAttribute measure, bool flow)
        {
            Assert.True(QuantityText.TryRead(measure.Example, measure.Dimension, out Quantity example, out _));
            double low = double.IsNaN(measure.From) ? measure.Above : measure.From;
            double high = double.IsFinite(measure.UpTo) ? measure.UpTo : low + 10;
            double si = low + (high - low) * (0.001 + 0.998 * random.NextDouble());
            if (measure.Dimension == Dimension.Count)
                si = Math.Round(si);
            double value = Math.Round(example.Unit.FromSi(si), 9);
            string number = value.ToString("0.#########", CultureInfo.InvariantCulture);
            if (value >= 1000 && !flow && random.Next(2) == 0)
                number = value.ToString("#,##0.#########", CultureInfo.InvariantCulture);
            Scalar($"{number} {example.Unit.Symbol}".Trim(), flow);
            return example.Unit.ToSi(value);
        }

        private string Name(StockKind what)
        {
            Shelf shelf = TestShelf.Shelf;
            IReadOnlyList<string> names = what switch
            {
                StockKind.Steel => [.. shelf.Steels.Select(s => s.Name)],
                StockKind.PropertyClass => [.. shelf.Classes.Select(c => c.Name)],
                StockKind.Thread => [.. shelf.Threads.Select(t => t.Name), "M36x2"],
                StockKind.Oil => [.. shelf.Oils.Select(o => o.Name)],
                StockKind.Port => [.. shelf.Ports.Select(p => p.Name)],
                StockKind.Hose => [.. shelf.Hoses.Select(h => h.Type)],
                _ => [.. shelf.Sections.Select(s => s.Name), "2 x UPN 200", "flat 200x40", "round 60"],
            };
            return names[random.Next(names.Count)];
        }

        private string Scalar(string value, bool flow, bool quoted = false)
        {
            bool plain = !quoted && !(flow && value.AsSpan().ContainsAny(",{}[]")) && value[0] is not ('"' or '\'');
            _text.Append((plain ? random.Next(3) : random.Next(1, 3)) switch
            {
                0 => value,
                1 => $"'{value.Replace("'", "''")}'",
                _ => $"\"{value.Replace("\\", "\\\\").Replace("\"", "\\\"")}\"",
            });
            return value;
        }
    }
}
