using System.Reflection;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Binding;

/// <summary>What may stand behind a key.</summary>
internal enum KeyForm
{
    /// <summary>A number with a unit.</summary>
    Measure,
    /// <summary>A name from stock.</summary>
    StockName,
    /// <summary>Any text.</summary>
    Text,
    /// <summary>Yes or no.</summary>
    Flag,
    /// <summary>One of a few words.</summary>
    Word,
    /// <summary>Further keys.</summary>
    Record,
    /// <summary>A list of records.</summary>
    Records,
    /// <summary>A list of texts.</summary>
    Texts,
}

/// <summary>One key of a press file: the property it fills and what its attributes say.</summary>
internal sealed class KeyShape
{
    private WordShape[]? _words;

    public KeyShape(PropertyInfo property)
    {
        Property = property;
        Key = KeyNames.Written(property.Name);
        foreach (object attribute in property.GetCustomAttributes(inherit: true))
        {
            switch (attribute)
            {
                case SaysAttribute says:
                    Says = says.Text;
                    break;
                case MeasureAttribute measure:
                    Measure = measure;
                    break;
                case StockNameAttribute stock:
                    Stock = stock;
                    break;
                case NeededAttribute:
                    IsNeeded = true;
                    break;
            }
        }

        (Form, Element) = FormOf(property);
    }

    /// <summary>As it is written: <c>rated-pressure</c>.</summary>
    public string Key { get; }
    public PropertyInfo Property { get; }
    public string Says { get; } = "";
    public bool IsNeeded { get; }
    public MeasureAttribute? Measure { get; }
    public StockNameAttribute? Stock { get; }
    public KeyForm Form { get; }

    /// <summary>The record or enum behind the key, or that of the list's items; otherwise the property's own type.</summary>
    public Type Element { get; }

    /// <summary>The words of an enum key.</summary>
    public IReadOnlyList<WordShape> Words => _words ??= WordShape.Of(Element);

    /// <summary>How a person would write the value, without the key, whose tape is metric.</summary>
    public string Example => ExampleIn(UnitSystem.Metric);

    /// <summary>How a person would write the value, without the key.</summary>
    /// <param name="tape">What they measure in.</param>
    public string ExampleIn(UnitSystem tape) => Form switch
    {
        KeyForm.Measure => ExampleSize.In(Measure!.Example, Measure.Dimension, tape),
        KeyForm.StockName => tape == UnitSystem.Imperial ? InchStock.Of(Stock!.Example) : Stock!.Example,
        KeyForm.Flag => "yes",
        KeyForm.Word => Words[0].Word,
        KeyForm.Record => RecordShape.Of(Element).ExampleIn(tape),
        KeyForm.Records => $"[{RecordShape.Of(Element).ExampleIn(tape)}]",
        KeyForm.Texts => "[my-stock.csv]",
        _ => "a text",
    };

    /// <summary>How a person would write key and value.</summary>
    /// <param name="tape">What they measure in.</param>
    public string ExampleLine(UnitSystem tape) => $"{Key}: {ExampleIn(tape)}";

    private (KeyForm Form, Type Element) FormOf(PropertyInfo property)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        if (Measure is not null && type == typeof(double))
            return (KeyForm.Measure, type);
        if (type == typeof(string))
            return (Stock is null ? KeyForm.Text : KeyForm.StockName, type);
        if (type == typeof(bool))
            return (KeyForm.Flag, type);
        if (type.IsEnum)
            return (KeyForm.Word, type);
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            Type item = type.GetGenericArguments()[0];
            return (item == typeof(string) ? KeyForm.Texts : KeyForm.Records, item);
        }

        return type.IsClass
            ? (KeyForm.Record, type)
            : throw new NotSupportedException($"a press file has no form for {property.DeclaringType?.Name}.{property.Name}");
    }
}
