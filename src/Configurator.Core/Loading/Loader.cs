using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

/// <summary>First stage: bytes to text and syntax. Each file on its own, so in parallel.</summary>
public static class Loader
{
    public static Outcome<SyntaxSet> Load(SourceSet sources)
    {
        var read = new Loaded[sources.Files.Length];
        Parallel.For(0, read.Length, i => read[i] = Read(sources.Files[i]));
        var set = new SyntaxSet(
            [.. read.Select(file => file.Definition).OfType<SyntaxFile>()],
            [.. Texts(read, ".md")],
            [.. Texts(read, ".cshtml")],
            [.. read.Where(file => file.Kind == FileKind.Asset).Select(file => file.File)],
            [
                .. read.Where(file => file is { Kind: FileKind.Definition, Definition: null })
                    .Select(file => file.File.Path),
                .. sources.Refused.Select(file => file.Path).Where(path => KindOf(path) == FileKind.Definition),
            ]
        );
        return new(
            set,
            [.. sources.Refused.Select(LoadingDiagnostics.IsRefused), .. read.SelectMany(file => file.Diagnostics)]
        );
    }

    private static IEnumerable<SourceText> Texts(IEnumerable<Loaded> read, string ending) =>
        read.Where(file => file.File.Path.EndsWith(ending, StringComparison.Ordinal))
            .Select(file => file.Text)
            .OfType<SourceText>();

    private static Loaded Read(SourceFile file)
    {
        var kind = KindOf(file.Path);
        if (kind == FileKind.Asset)
        {
            return new(file, kind);
        }

        if (file.Bytes.Length > Limits.FileBytesMax)
        {
            return new(file, kind) { Diagnostics = [LoadingDiagnostics.IsTooLarge(file.Path, file.Bytes.Length)] };
        }

        if (SourceText.Decode(file) is not { } text)
        {
            return new(file, kind) { Diagnostics = [LoadingDiagnostics.IsNotText(file.Path)] };
        }

        ImmutableArray<Diagnostic> hidden = [.. ControlCharacters.In(text)];
        return kind == FileKind.Text || hidden.Length > 0
            ? new(file, kind) { Text = hidden.Length > 0 ? null : text, Diagnostics = hidden }
            : Parse(file, text);
    }

    private static Loaded Parse(SourceFile file, SourceText text)
    {
        var (root, diagnostics) = YamlReader.Read(text);
        return new(file, FileKind.Definition)
        {
            Text = text,
            Definition = root is null ? null : new(text, root),
            Diagnostics = diagnostics,
        };
    }

    private static FileKind KindOf(string path) =>
        path.EndsWith(".yaml", StringComparison.Ordinal) ? FileKind.Definition
        : path.EndsWith(".md", StringComparison.Ordinal) || path.EndsWith(".cshtml", StringComparison.Ordinal)
            ? FileKind.Text
        : FileKind.Asset;

    private enum FileKind
    {
        Definition,
        Text,
        Asset,
    }

    private sealed record Loaded(SourceFile File, FileKind Kind)
    {
        public SourceText? Text { get; init; }

        public SyntaxFile? Definition { get; init; }

        public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];
    }
}
