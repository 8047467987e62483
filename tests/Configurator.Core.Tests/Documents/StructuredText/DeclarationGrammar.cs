using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Configurator.Core.Tests.Documents.StructuredText;

/// <summary>
/// Takes declarations apart by a small grammar of IEC 61131-3 (from memory) and throws where a text does not follow it:
/// <c>file = { type | constants }</c>, <c>type = TYPE name : STRUCT member { member } END_STRUCT ; END_TYPE</c>,
/// <c>member = name : declared ;</c>, <c>constants = VAR_GLOBAL CONSTANT constant { constant } END_VAR</c>,
/// <c>constant = name : declared := value ;</c>, <c>declared = elementary | ARRAY [ n .. n ] OF elementary</c>.
/// </summary>
internal sealed class DeclarationGrammar
{
    private static readonly string[] Elementary =
        ["BOOL", "BYTE", "SINT", "INT", "DINT", "LINT", "USINT", "UINT", "UDINT", "ULINT", "REAL"];

    private static readonly Regex Identifier = new("^[A-Za-z][A-Za-z0-9]*(_[A-Za-z0-9]+)*$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);

    private static readonly Regex Token = new(@"^(:=|\.\.|[:;\[\]]|[0-9]+|[A-Za-z_][A-Za-z0-9_]*)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);

    private readonly ImmutableArray<string> _tokens;
    private readonly List<string> _comments = [];
    private int _at;

    private DeclarationGrammar(string text) => _tokens = [.. Tokens(text)];

    public List<(string Name, List<(string Name, string Declared)> Members)> Types { get; } = [];

    public List<(string Name, string Declared, string Value)> Constants { get; } = [];

    public IEnumerable<string> Comments => _comments;

    public static DeclarationGrammar Read(string text)
    {
        var read = new DeclarationGrammar(text);
        while (read._at < read._tokens.Length)
        {
            read.Declaration();
        }

        return read;
    }

    /// <summary>Letters, digits and single underscores, a letter first, none last: identifiers of any controller.</summary>
    public static bool IsIdentifier(string text) => Identifier.IsMatch(text) && !ReservedWords.All.Contains(text);

    private IEnumerable<string> Tokens(string text)
    {
        var at = 0;
        while (at < text.Length)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
            }
            else if (text.AsSpan(at).StartsWith("(*"))
            {
                at = Comment(text, at);
            }
            else
            {
                var match = Token.Match(text, at, text.Length - at);
                Assert.True(match.Success, $"no token at `{text[at..Math.Min(at + 40, text.Length)]}`");
                yield return match.Value;
                at += match.Length;
            }
        }
    }

    /// <summary>Older controllers know no comment within a comment, so none may be begun.</summary>
    private int Comment(string text, int at)
    {
        var end = text.IndexOf("*)", at, StringComparison.Ordinal);
        Assert.True(end > 0, "a comment has no end");
        var comment = text[at..(end + 2)];
        Assert.Equal(0, comment.LastIndexOf("(*", StringComparison.Ordinal));
        _comments.Add(comment);
        return end + 2;
    }

    private void Declaration()
    {
        if (_tokens[_at] == "TYPE")
        {
            Structure();
            return;
        }

        Take("VAR_GLOBAL", "CONSTANT");
        do
        {
            var name = Name();
            Take(":");
            var declared = Declared();
            Take(":=");
            Constants.Add((name, declared, Next()));
            Take(";");
        }
        while (_tokens[_at] != "END_VAR");

        Take("END_VAR");
    }

    private void Structure()
    {
        Take("TYPE");
        var type = Name();
        Take(":", "STRUCT");
        List<(string, string)> members = [];
        do
        {
            var name = Name();
            Take(":");
            members.Add((name, Declared()));
            Take(";");
        }
        while (_tokens[_at] != "END_STRUCT");

        Take("END_STRUCT", ";", "END_TYPE");
        Types.Add((type, members));
    }

    private string Declared()
    {
        if (_tokens[_at] != "ARRAY")
        {
            return OfElementary();
        }

        Take("ARRAY", "[");
        var (from, _) = (Number(), Take(".."));
        var to = Number();
        Take("]", "OF");
        Assert.True(from <= to);
        return FormattableString.Invariant($"ARRAY [{from}..{to}] OF {OfElementary()}");
    }

    private string OfElementary()
    {
        var declared = Next();
        Assert.Contains(declared, Elementary);
        return declared;
    }

    private int Number() => int.Parse(Next(), System.Globalization.CultureInfo.InvariantCulture);

    private string Name()
    {
        var name = Next();
        Assert.True(IsIdentifier(name), $"`{name}` is no identifier");
        return name;
    }

    private string Next() => _tokens[_at++];

    private bool Take(params string[] expected)
    {
        foreach (var token in expected)
        {
            Assert.Equal(token, Next());
        }

        return true;
    }
}
