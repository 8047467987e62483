using System.Xml;

namespace Configurator.Site.Downloads;

/// <summary>Text that XML can hold.</summary>
internal static class XmlText
{
    /// <summary>What XML 1.0 does not allow becomes the replacement character.</summary>
    public static string Of(string text) =>
        text.All(XmlConvert.IsXmlChar) ? text : string.Concat(text.EnumerateRunes().Select(Shown));

    private static string Shown(System.Text.Rune rune) =>
        rune.Value > char.MaxValue || XmlConvert.IsXmlChar((char)rune.Value) ? rune.ToString() : "\uFFFD";
}
