using System.Globalization;
using System.Reflection;
using System.Text;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests;

/// <summary>Makes presses up: each described property unsaid, at a bound, or anywhere between.</summary>
internal sealed class MadeUpPress(uint seed, Shelf shelf)
{
    private static readonly string[] Sections =
    [
        "HEB 160", "HEM 300", "IPE 80", "UPN 200", "2 x UPN 220", "2 x UPN 120 toes together", "flat 200x30", "flat 20x2", "flat 600x100",
        "round 60", "square 50", "box 200x150x12", "SHS 100x100x6", "RHS 120x80x6 cold", "CHS 88.9x5", "HEB 160 turned", "2 x flat 150x20", "W8x31",
    ];

    // cast iron is refused, rightly, and would hide all else
    private Steel[] Steels => field ??= [.. shelf.Steels.Where(s => s.Refused.Length == 0)];

    private readonly Random _random = new((int)seed);

    /// <summary>A press whose clashing keys are taken back, or said anew where they are needed, as long as that helps.</summary>
    public Press ThatCouldBe()
    {
        var press = (Press)Record(typeof(Press));
        for (int i = 0; i < 60 && Clash(press) is { } clash; i++)
            press = Mended(press, _random.Next(3) == 0 && clash.Against is { } other ? other : clash.Path);
        return press;
    }

    private Fault? Clash(Press press)
    {
        if (PressRules.Of(press, shelf).FirstOrDefault() is { } clash)
            return clash;
        try
        {
            Resolver.Resolve(press, shelf);
            return null;
        }
        catch (PressFaultsException cannot)
        {
            return cannot.Faults[0];
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private Press Mended(Press press, string path)
    {
        object? at = press;
        string[] parts = path.Split('.');
        for (int i = 0; i < parts.Length && at is not null; i++)
        {
            if (PressKeys.Of(at.GetType()).FirstOrDefault(k => k.Name == parts[i]) is not { } key)
                return press;
            object? value = key.Property.GetValue(at);
            bool leaf = i == parts.Length - 1 || key.Property.PropertyType.IsGenericType;
            if (!leaf)
            {
                at = value;
                continue;
            }

            bool keep = value is null || key.Property.IsDefined(typeof(NeededAttribute));
            return PressKeys.With(press, string.Join('.', parts[..(i + 1)]), keep ? Value(key) : null);
        }

        return press;
    }

    private int _names;

    // some presses say little, some nearly everything: what says much clashes often
    private readonly double _saying = Math.Pow(new Random((int)seed ^ 0x5eed).NextDouble(), 2);

    private object Record(Type type)
    {
        Type[] kinds = type.IsAbstract ? [.. type.Assembly.GetTypes().Where(t => t.BaseType == type).OrderBy(t => t.Name, StringComparer.Ordinal)] : [type];
        Type kind = kinds[_random.Next(kinds.Length)];
        // points and bars at random seldom make a frame
        if (kind == typeof(FreeFrame) && _random.Next(8) > 0)
            kind = typeof(ClosedFrame);
        object record = Activator.CreateInstance(kind)!;
        foreach (PressKey key in PressKeys.Of(record.GetType()))
        {
            bool needed = key.Property.IsDefined(typeof(NeededAttribute));
            if (!needed && _random.NextDouble() > _saying)
                continue;
            key.Property.SetValue(record, Value(key));
        }

        // a frame with no section at all is refused before anything is computed
        return record is PressFrame { Section: null } frame ? WithSection(frame) : record;
    }

    private PressFrame WithSection(PressFrame frame)
    {
        typeof(PressFrame).GetProperty(nameof(PressFrame.Section))!.SetValue(frame, Sections[_random.Next(Sections.Length)]);
        return frame;
    }

    private object? Value(PressKey key)
    {
        Type type = Nullable.GetUnderlyingType(key.Property.PropertyType) ?? key.Property.PropertyType;
        if (key.Measure is { } measure && type == typeof(double))
            return Size(measure);
        if (key.Stock is { } stock)
            return Name(stock.What);
        if (type == typeof(bool))
            return _random.Next(2) == 0;
        if (type.IsEnum)
            return Enum.GetValues(type).GetValue(_random.Next(Enum.GetValues(type).Length));
        if (type == typeof(string))
            return $"made up {++_names}";
        if (type.IsGenericType)
        {
            Type item = type.GetGenericArguments()[0];
            if (item == typeof(string))
                return null;
            Array items = Array.CreateInstance(item, _random.Next(1, 3));
            for (int i = 0; i < items.Length; i++)
                items.SetValue(Record(item), i);
            return items;
        }

        return Record(type);
    }

    private double Size(MeasureAttribute measure)
    {
        double least = double.IsNaN(measure.From) ? Math.Max(measure.Above, 0) : measure.From;
        double most = double.IsPositiveInfinity(measure.UpTo) ? 1e6 : measure.UpTo;
        if (measure.Dimension == Dimension.Count)
            return Math.Floor(least + _random.NextDouble() * Math.Min(most - least, 8) + 0.999);
        double example = QuantityText.TryRead(measure.Example, measure.Dimension, out Quantity read, out _) ? read.Si : most / 2;
        double size = _random.Next(10) switch
        {
            0 => most,
            1 => double.IsNaN(measure.From) ? least + 1e-6 * (most - least) : least,
            2 or 3 => least + (most - least) * Math.Pow(_random.NextDouble(), 3),
            // mostly what a person might build
            _ => example * Math.Exp((_random.NextDouble() - 0.5) * 1.5),
        };
        return Math.Clamp(size, double.IsNaN(measure.From) ? Math.BitIncrement(least) : least, most);
    }

    private string Name(StockKind kind) => kind switch
    {
        StockKind.Section => Sections[_random.Next(Sections.Length)],
        StockKind.Steel => Steels[_random.Next(Steels.Length)].Name,
        StockKind.Port => shelf.Ports[_random.Next(shelf.Ports.Count)].Name,
        StockKind.PropertyClass => shelf.Classes[_random.Next(shelf.Classes.Count)].Name,
        StockKind.Thread => shelf.Threads[_random.Next(shelf.Threads.Count)].Name,
        StockKind.Oil => shelf.Oils[_random.Next(shelf.Oils.Count)].Name,
        _ => shelf.Hoses[_random.Next(shelf.Hoses.Count)].Type,
    };

    /// <summary>A press as a file would say it.</summary>
    public static string Text(Press press)
    {
        var text = new StringBuilder();
        Write(text, press, 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object record, int indent)
    {
        foreach (PressKey key in PressKeys.Of(record.GetType()))
        {
            if (key.Property.GetValue(record) is not { } value)
                continue;
            text.Append(' ', indent).Append(key.Name).Append(':');
            if (value is System.Collections.IEnumerable items and not string)
            {
                text.Append('\n');
                foreach (object item in items)
                {
                    int at = text.Length;
                    Write(text, item, indent + 4);
                    if (text.Length > at)
                        text[at + indent + 2] = '-';
                }
            }
            else if (PressKeys.IsRecord(value.GetType()))
            {
                text.Append('\n');
                if (value.GetType().GetCustomAttribute<KindAttribute>() is { } kind)
                    text.Append(' ', indent + 2).Append("kind: ").Append(kind.Word).Append('\n');
                Write(text, value, indent + 2);
            }
            else
                text.Append(' ').Append(One(value, key)).Append('\n');
        }
    }

    private static string One(object value, PressKey key) => value switch
    {
        double si => Readout.Text(si, key.Measure!.Dimension, UnitSystem.Metric, 12),
        bool yes => yes ? "yes" : "no",
        Enum word => KeyNames.Written(word.ToString()),
        _ => string.Create(CultureInfo.InvariantCulture, $"\"{value}\""),
    };
}
