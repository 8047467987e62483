using System.Collections.Immutable;
using System.Text;

namespace Configurator.Core.Sources;

/// <summary>A file's text with LF line ends, and its lines for printing beside a diagnostic.</summary>
public sealed class SourceText
{
    private readonly Lazy<ImmutableArray<string>> _lines;

    public SourceText(string path, string text)
    {
        Path = path;
        Text = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        _lines = new(() => [.. Text.Split('\n')]);
    }

    public string Path { get; }

    public string Text { get; }

    /// <summary>Number of lines; a final line end does not start another one.</summary>
    public int LineCount => Text.EndsWith('\n') ? _lines.Value.Length - 1 : _lines.Value.Length;

    /// <summary>The line's characters, or an empty string where there is no such line.</summary>
    /// <param name="line">Counts from 1.</param>
    public string Line(int line) => line >= 1 && line <= _lines.Value.Length ? _lines.Value[line - 1] : "";

    /// <summary>Strict UTF-8, with a byte-order mark dropped; null where the bytes are no such text.</summary>
    public static SourceText? Decode(SourceFile file)
    {
        var bytes = file.Bytes.Span;
        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        try
        {
            return new(file.Path, StrictUtf8.GetString(bytes));
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static readonly UTF8Encoding StrictUtf8 = new(
        encoderShouldEmitUTF8Identifier: false,
        throwOnInvalidBytes: true
    );
}
