using System.Text;

namespace Configurator.Core.Documents.StructuredText;

/// <summary>Text of IEC 61131-3 declarations in plain ASCII, which every controller's import takes.</summary>
/// <remarks>Source: IEC 61131-3, textual declarations; from memory.</remarks>
internal sealed class Declarations
{
    private readonly StringBuilder _text = new();

    /// <summary>The line that names the revision of the definitions.</summary>
    public static string Of(string definitions) =>
        $"Revision of the definitions: {(definitions.Length > 0 ? definitions : "not stated")}";

    /// <summary>A comment of its own on a line.</summary>
    public Declarations Comment(string text) => Line(0, Commented(text));

    public Declarations Line(int level, string text)
    {
        _text.Append(' ', 2 * level).Append(text).Append('\n');
        return this;
    }

    public Declarations Gap() => Line(0, "");

    /// <summary><c>name : TYPE; (* comment *)</c>.</summary>
    public Declarations Member(int level, string name, string declared, string comment) =>
        Line(level, $"{name} : {declared};{(comment.Length > 0 ? " " + Commented(comment) : "")}");

    public override string ToString() => _text.ToString();

    /// <summary>Nothing in it may end the comment or start another one.</summary>
    private static string Commented(string text) =>
        $"(* {Ascii(text).Replace("(*", "( *", StringComparison.Ordinal).Replace("*)", "* )", StringComparison.Ordinal)} *)";

    private static string Ascii(string text) => string.Concat(text.Select(c => c is >= ' ' and <= '~' ? c : '?'));
}
