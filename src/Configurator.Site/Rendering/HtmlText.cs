using System.Buffers;
using System.Text;

namespace Configurator.Site.Rendering;

/// <summary>
/// Text for elements and quoted attributes. Only what HTML gives a meaning is encoded, so that pages stay readable in a
/// review: ü stays ü, and a designation <c>+A1</c> keeps its plus.
/// </summary>
internal static class HtmlText
{
    private static readonly SearchValues<char> Special = SearchValues.Create("&<>\"'");

    public static string? Encode(string? text)
    {
        if (text is null || text.AsSpan().IndexOfAny(Special) < 0)
        {
            return text;
        }

        var encoded = new StringBuilder(text.Length + 16);
        foreach (var character in text)
        {
            _ = character switch
            {
                '&' => encoded.Append("&amp;"),
                '<' => encoded.Append("&lt;"),
                '>' => encoded.Append("&gt;"),
                '"' => encoded.Append("&quot;"),
                '\'' => encoded.Append("&#39;"),
                _ => encoded.Append(character),
            };
        }

        return encoded.ToString();
    }
}
