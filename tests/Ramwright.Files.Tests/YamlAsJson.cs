using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Ramwright.Files.Tests;

/// <summary>A YAML text as an editor's schema check sees it: YAML 1.2 core types.</summary>
internal static class YamlAsJson
{
    public static JsonNode? Of(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents.Count == 0 ? null : Node(stream.Documents[0].RootNode);
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } plain => Plain(plain.Value!),
        YamlScalarNode quoted => JsonValue.Create(quoted.Value),
        _ => null,
    };

    private static JsonNode? Plain(string value) => value switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when long.TryParse(value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long whole) => JsonValue.Create(whole),
        _ when double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            && !char.IsLetter(value[^1]) => JsonValue.Create(number),
        _ => JsonValue.Create(value),
    };
}
