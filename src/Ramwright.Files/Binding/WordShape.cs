using System.Reflection;
using Ramwright.Presses;

namespace Ramwright.Files.Binding;

/// <summary>One word of an enum as a press file writes it.</summary>
internal sealed record WordShape(string Word, string Says, object Value)
{
    /// <summary>The words of an enum, in its order.</summary>
    public static WordShape[] Of(Type type)
    {
        FieldInfo[] fields = type.GetFields(BindingFlags.Public | BindingFlags.Static);
        var words = new WordShape[fields.Length];
        for (int i = 0; i < fields.Length; i++)
        {
            var says = (SaysAttribute?)Attribute.GetCustomAttribute(fields[i], typeof(SaysAttribute));
            words[i] = new WordShape(KeyNames.Written(fields[i].Name), says?.Text ?? "", fields[i].GetValue(null)!);
        }

        return words;
    }
}
