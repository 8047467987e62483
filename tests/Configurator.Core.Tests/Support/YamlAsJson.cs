using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Configurator.Core.Tests.Support;

/// <summary>A YAML document as an editor sees it, with the types of YAML 1.2.2, 10.3.2 (core schema).</summary>
internal static class YamlAsJson
{
    private const string Broken = @"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?";
    private const string NotInJson = @"[-+]?\.(inf|Inf|INF)|\.(nan|NaN|NAN)";

    public static JsonNode? Of(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Of(Assert.Single(stream.Documents).RootNode);
    }

    private static JsonNode? Of(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(
            pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Of(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Of)]),
        YamlScalarNode { Style: ScalarStyle.Plain } plain => OfPlain(plain.Value!),
        YamlScalarNode quoted => JsonValue.Create(quoted.Value),
        _ => throw new NotSupportedException(node.GetType().Name),
    };

    private static JsonValue? OfPlain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Is(text, "[-+]?[0-9]+") => JsonValue.Create(decimal.Parse(text, CultureInfo.InvariantCulture)),
        _ when Is(text, "0o[0-7]+") => JsonValue.Create(Convert.ToInt64(text[2..], 8)),
        _ when Is(text, "0x[0-9a-fA-F]+") => JsonValue.Create(Convert.ToInt64(text[2..], 16)),
        _ when Is(text, Broken) => JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture)),
        _ when Is(text, NotInJson) => throw new NotSupportedException($"JSON has no {text}"),
        _ => JsonValue.Create(text),
    };

    private static bool Is(string text, string pattern) =>
        Regex.IsMatch(text, $"^({pattern})$", RegexOptions.NonBacktracking);
}
