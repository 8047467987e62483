using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>The first stage alone, on one file of marked text.</summary>
internal static class CheckLoading
{
    private const string Path = "options/small/film.yaml";

    /// <summary>Exactly these diagnostics, at the marked places.</summary>
    public static void Says(string marked, params string[] expected)
    {
        var marks = CheckMarks.Read(Path, marked);
        CheckWords.Same(expected, marks.Places, marks.NotePlaces, Load(Encoding.UTF8.GetBytes(marks.Text)).Diagnostics);
    }

    /// <summary>Exactly this diagnostic, on the file as a whole.</summary>
    public static void SaysOfFile(byte[] bytes, string expected) =>
        CheckWords.Same([expected], [SourceSpan.FileStart(Path)], [], Load(bytes).Diagnostics);

    /// <summary>The one diagnostic, wherever it stands.</summary>
    public static Diagnostic OnlyDiagnostic(string text) => Assert.Single(Load(Encoding.UTF8.GetBytes(text)).Diagnostics);

    /// <summary>The root of a file in which nothing is wrong.</summary>
    public static MappingSyntax Root(byte[] bytes)
    {
        var loaded = Load(bytes);
        CheckWords.Same([], [], [], loaded.Diagnostics);
        return Assert.Single(loaded.Value.Definitions).Root;
    }

    public static MappingSyntax Root(string text) => Root(Encoding.UTF8.GetBytes(text));

    /// <summary>Every key and every scalar of a sound file stands where it is marked, and nothing else is marked.</summary>
    public static void ScalarsStand(string marked)
    {
        var marks = CheckMarks.Read(Path, marked);
        Assert.Equal(marks.Places, Scalars(Root(marks.Text)).Select(scalar => scalar.Span).Order());
    }

    /// <summary>Every key and scalar in the order of the text.</summary>
    public static IEnumerable<ScalarSyntax> Scalars(SyntaxNode node) => node switch
    {
        ScalarSyntax scalar => [scalar],
        SequenceSyntax list => list.Items.SelectMany(Scalars),
        MappingSyntax map => map.Entries.SelectMany(entry => Scalars(entry.Value).Prepend(entry.Key)),
        _ => [],
    };

    public static Outcome<SyntaxSet> Load(byte[] bytes) => Loader.Load(SourceSet.Of([new(Path, bytes)]));

    public static Outcome<SyntaxSet> Load(params (string Path, string Text)[] files) =>
        Loader.Load(SourceSet.Of(files.Select(file => new SourceFile(file.Path, Encoding.UTF8.GetBytes(file.Text)))));

    public static ImmutableArray<byte> Utf8(string text) => [.. Encoding.UTF8.GetBytes(text)];
}
