using System.Text;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Review.Printing;

/// <summary>Text of ours, with words of others in it, as Markdown that says just that: no markup, link, mention or
/// command of theirs comes through. Names in backticks stay code.</summary>
internal static class MarkdownText
{
    private const string Special = "\\`*_{}[]()<>#+-.!|~&$^=\"'";

    /// <summary>Keeps two characters apart without being seen.</summary>
    private const string Apart = "&#8203;";

    /// <param name="lengthMax">What goes beyond is cut.</param>
    public static string Of(string text, int lengthMax = 400)
    {
        var line = Printable.Of(Cut(text.Replace('\n', ' ').Replace('\r', ' ').Replace('\t', ' '), lengthMax));
        var parts = line.Split('`');
        var markdown = new StringBuilder();
        for (var i = 0; i < parts.Length; i++)
        {
            var isCode = i % 2 == 1 && i < parts.Length - 1;
            _ = isCode ? AppendCode(markdown, parts[i]) : AppendWords(markdown, parts[i], isLone: i % 2 == 1);
        }

        return markdown.ToString();
    }

    private static string Cut(string text, int lengthMax) =>
        text.Length <= lengthMax ? text : text[..(lengthMax - 4)].TrimEnd('\uD83D') + " ...";

    /// <summary>A bar would end the cell of a table, code or not.</summary>
    private static StringBuilder AppendCode(StringBuilder markdown, string code) =>
        string.IsNullOrWhiteSpace(code)
            ? AppendWords(markdown, code, isLone: false)
            : markdown.Append('`').Append(code.Replace("|", "\\|", StringComparison.Ordinal)).Append('`');

    /// <param name="isLone">A backtick without a partner stands before it.</param>
    private static StringBuilder AppendWords(StringBuilder markdown, string words, bool isLone)
    {
        _ = isLone ? markdown.Append("\\`") : markdown;
        for (var i = 0; i < words.Length; i++)
        {
            var c = words[i];
            _ = c switch
            {
                '@' => markdown.Append('@').Append(Apart),
                ':' when i + 1 < words.Length && words[i + 1] is '/' or ':' => markdown.Append(':').Append(Apart),
                '.' when IsWeb(words, i) => markdown.Append("&#46;"),
                '(' or ')' or '-' or '+' or '.' or '\'' or '"' or '=' or '{' or '}' or '!' when markdown.Length > 0 =>
                    markdown.Append(c),
                _ when Special.Contains(c, StringComparison.Ordinal) => markdown.Append('\\').Append(c),
                _ => markdown.Append(c),
            };
        }

        return markdown;
    }

    /// <summary>Readers of Markdown make links of what starts so.</summary>
    private static bool IsWeb(string words, int dot) =>
        dot >= 3 && words.AsSpan(dot - 3, 3).Equals("www", StringComparison.OrdinalIgnoreCase);
}
