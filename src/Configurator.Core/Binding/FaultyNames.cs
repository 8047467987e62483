using System.Collections.Immutable;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Loading;

namespace Configurator.Core.Binding;

/// <summary>Names that exist as files but could not be read: to mention one is not a second fault.</summary>
internal sealed record FaultyNames(ImmutableHashSet<(string Kind, string Id)> Names)
{
    public static FaultyNames Of(SyntaxSet syntax, ImmutableArray<DefinitionFile> files)
    {
        var read = files.Select(file => file.Id.Span.Path).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<SyntaxFile> unbound = [.. syntax.Definitions.Where(file => !read.Contains(file.Path))];
        var byPlace = unbound
            .Select(file => file.Path)
            .Concat(syntax.Unread)
            .SelectMany(path => Kind.All.Select(kind => (kind.Name, Place: kind.Match(path))))
            .Where(match => match.Place is { IsEmpty: false })
            .Select(match => (match.Name, match.Place!.Value[^1]));
        var byFirstLine = unbound
            .Select(file => file.Root.Entries[0])
            .Where(first => first.Value is ScalarSyntax)
            .Select(first => (first.Key.Text, ((ScalarSyntax)first.Value).Text));
        return new([.. byPlace, .. byFirstLine]);
    }

    public IEnumerable<string> Of(string kind) => Names.Where(name => name.Kind == kind).Select(name => name.Id);
}
