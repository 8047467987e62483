using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Configurator.Core.Loading;

/// <summary>Turns one file's YAML events into syntax nodes with spans, within <see cref="Limits"/>.</summary>
/// <remarks>Works on events, never on the library's own node tree: that one recurses without a limit.</remarks>
internal sealed class YamlReader
{
    private const string YamlTags = "tag:yaml.org,2002:";

    private readonly SourceText _source;
    private readonly Parser _parser;
    private readonly List<Diagnostic> _diagnostics = [];
    private int _nodes;

    private YamlReader(SourceText source)
    {
        _source = source;
        _parser = new(new StringReader(source.Text));
    }

    /// <summary>The document's root, or null where nothing sound could be read; and all that is wrong with the
    /// file.</summary>
    public static (MappingSyntax? Root, ImmutableArray<Diagnostic> Diagnostics) Read(SourceText source)
    {
        var reader = new YamlReader(source);
        var root = reader.ReadRoot();
        return (root, [.. reader._diagnostics]);
    }

    private MappingSyntax? ReadRoot()
    {
        try
        {
            return Document();
        }
        catch (TooMuchException)
        {
            return null;
        }
        catch (YamlException error)
        {
            _diagnostics.Add(
                LoadingDiagnostics.CannotRead(Reason(error), TabIndent(error) ?? SpanOf(error.Start, error.End))
            );
            return null;
        }
        catch (InvalidOperationException)
        {
            // The parser gives up so on some lists and maps that are not closed. What it read last is where it was.
            _diagnostics.Add(
                LoadingDiagnostics.CannotRead(
                    "the text is no YAML from here on",
                    _parser.Current is { } last ? SpanOf(last) : SourceSpan.FileStart(_source.Path)
                )
            );
            return null;
        }
    }

    private MappingSyntax? Document()
    {
        _parser.Consume<StreamStart>();
        if (_parser.TryConsume<StreamEnd>(out _))
        {
            _diagnostics.Add(LoadingDiagnostics.IsEmpty(_source.Path));
            return null;
        }

        _parser.Consume<DocumentStart>();
        var root = Node(depth: 1);
        _parser.Consume<DocumentEnd>();
        if (!_parser.TryConsume<StreamEnd>(out _))
        {
            _diagnostics.Add(LoadingDiagnostics.HasSeveral(SpanOf(_parser.Current!)));
            return null;
        }

        return AsDefinition(root);
    }

    private MappingSyntax? AsDefinition(SyntaxNode root)
    {
        if (root is MappingSyntax { Entries.Length: > 0 } mapping)
        {
            return mapping;
        }

        if (root is not (RefusedSyntax or MappingSyntax { IsWhole: false }))
        {
            _diagnostics.Add(
                root is ScalarSyntax { IsEmpty: true }
                    ? LoadingDiagnostics.IsEmpty(_source.Path)
                    : LoadingDiagnostics.IsNotMapping(root.Span)
            );
        }

        return null;
    }

    private SyntaxNode Node(int depth)
    {
        var current = _parser.Current!;
        if (depth > Limits.DepthMax)
        {
            throw Stop(LoadingDiagnostics.IsTooDeep(SpanOf(current)));
        }

        if (++_nodes > Limits.NodesMax)
        {
            throw Stop(LoadingDiagnostics.HasTooMany(SpanOf(current)));
        }

        RefuseProperties(current);
        return current switch
        {
            Scalar => ReadScalar(),
            SequenceStart => ReadSequence(depth),
            MappingStart => ReadMapping(depth),
            _ => ReadAlias(),
        };
    }

    private ScalarSyntax ReadScalar()
    {
        var scalar = _parser.Consume<Scalar>();
        if (ControlCharacters.InValue(scalar.Value) is { } hidden)
        {
            _diagnostics.Add(LoadingDiagnostics.HasControl(hidden, SpanOf(scalar)));
        }

        return new(scalar.Value, scalar.Style == ScalarStyle.Plain, SpanOf(scalar));
    }

    private SequenceSyntax ReadSequence(int depth)
    {
        var start = _parser.Consume<SequenceStart>();
        var items = ImmutableArray.CreateBuilder<SyntaxNode>();
        while (!_parser.TryConsume<SequenceEnd>(out _))
        {
            items.Add(Node(depth + 1));
        }

        return new(items.DrainToImmutable(), StartOf(start));
    }

    private MappingSyntax ReadMapping(int depth)
    {
        var start = _parser.Consume<MappingStart>();
        var entries = ImmutableArray.CreateBuilder<EntrySyntax>();
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        var isWhole = true;
        while (!_parser.TryConsume<MappingEnd>(out _))
        {
            var key = Node(depth + 1);
            var value = Node(depth + 1);
            if (AcceptedKey(key, value, first) is { } accepted)
            {
                entries.Add(new(accepted, value));
            }
            else
            {
                isWhole = false;
            }
        }

        var span = entries.Count > 0 && start.Style != MappingStyle.Flow ? entries[0].Key.Span : StartOf(start);
        return new(entries.DrainToImmutable(), span, isWhole);
    }

    private ScalarSyntax? AcceptedKey(SyntaxNode key, SyntaxNode value, Dictionary<string, SourceSpan> first)
    {
        if (key is not ScalarSyntax { IsEmpty: false } scalar)
        {
            if (key is not RefusedSyntax)
            {
                // The library gives a key that is not written no place of its own.
                _diagnostics.Add(LoadingDiagnostics.HasBadKey(key is ScalarSyntax ? value.Span : key.Span));
            }

            return null;
        }

        if (scalar is { Text: "<<", IsPlain: true })
        {
            _diagnostics.Add(LoadingDiagnostics.HasMergeKey(scalar.Span));
            return null;
        }

        if (!first.TryAdd(scalar.Text, scalar.Span))
        {
            _diagnostics.Add(LoadingDiagnostics.IsDuplicate(scalar, first[scalar.Text]));
            return null;
        }

        return scalar;
    }

    private RefusedSyntax ReadAlias()
    {
        var alias = _parser.Consume<AnchorAlias>();
        _diagnostics.Add(LoadingDiagnostics.HasAnchor(alias.Value.Value, isAlias: true, SpanOf(alias)));
        return new(SpanOf(alias));
    }

    private void RefuseProperties(ParsingEvent current)
    {
        if (current is not NodeEvent node)
        {
            return;
        }

        if (!node.Anchor.IsEmpty)
        {
            _diagnostics.Add(LoadingDiagnostics.HasAnchor(node.Anchor.Value, isAlias: false, WordAt(node, '&')));
        }

        if (!node.Tag.IsEmpty)
        {
            _diagnostics.Add(LoadingDiagnostics.HasTag(Shorthand(node.Tag.Value), WordAt(node, '!')));
        }
    }

    private TooMuchException Stop(Diagnostic diagnostic)
    {
        _diagnostics.Add(diagnostic);
        return new();
    }

    /// <summary>As it is written: <c>!!str</c> for a tag of YAML itself.</summary>
    private static string Shorthand(string tag) =>
        tag.StartsWith(YamlTags, StringComparison.Ordinal) ? "!!" + tag[YamlTags.Length..] : tag;

    /// <summary>The word with that first character where a node starts; anchor and tag stand in either order.</summary>
    private SourceSpan WordAt(ParsingEvent what, char first)
    {
        var start = StartOf(what);
        var line = _source.Line(start.Line);
        var column = start.Column - 1;
        if (column < line.Length && line[column] != first && line.IndexOf(' ', column) is var space and >= 0)
        {
            var second = line.Length - line.AsSpan(space).TrimStart(' ').Length;
            column = second < line.Length && line[second] == first ? second : column;
        }

        var end = line.IndexOf(' ', Math.Min(column, line.Length));
        return start with { Column = column + 1, Length = (end < 0 ? line.Length : end) - column };
    }

    private SourceSpan StartOf(ParsingEvent what) => new(_source.Path, (int)what.Start.Line, (int)what.Start.Column, 1);

    private SourceSpan SpanOf(ParsingEvent what) => SpanOf(what.Start, what.End);

    /// <summary>One line at most: what goes on over several lines is marked to the end of its first.</summary>
    private SourceSpan SpanOf(Mark start, Mark end)
    {
        var line = Math.Clamp((int)start.Line, 1, Math.Max(1, _source.LineCount));
        var column = line == start.Line ? (int)start.Column : _source.Line(line).Length + 1;
        var room = Math.Max(0, _source.Line(line).Length + 1 - column);
        var length = end.Line == start.Line ? (int)(end.Column - start.Column) : room;
        return new(_source.Path, line, column, Math.Clamp(length, 0, room));
    }

    /// <summary>The tab that the library complains of; it names only where the map around it begins.</summary>
    private SourceSpan? TabIndent(YamlException error)
    {
        if (!error.Message.Contains(" tab ", StringComparison.Ordinal))
        {
            return null;
        }

        var line = Enumerable
            .Range((int)error.Start.Line, _source.LineCount)
            .FirstOrDefault(line => _source.Line(line).TrimStart(' ').StartsWith('\t'));
        return line == 0
            ? null
            : new(_source.Path, line, _source.Line(line).IndexOf('\t', StringComparison.Ordinal) + 1, 1);
    }

    private static string Reason(YamlException error)
    {
        var text = error.Message;
        var colon = text.StartsWith('(') ? text.IndexOf("): ", StringComparison.Ordinal) : -1;
        var reason = (colon < 0 ? text : text[(colon + 3)..]).TrimEnd('.', ' ');
        return reason.Length == 0 ? "the text is not YAML" : char.ToLowerInvariant(reason[0]) + reason[1..];
    }

    /// <summary>Leaves a file that is beyond its limits; the diagnostic is already recorded.</summary>
    private sealed class TooMuchException : Exception;
}
